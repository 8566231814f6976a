using System.Collections.Immutable;
using Hoopwright.Cuts;
using Hoopwright.Cutting;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.Tests.Cuts;

/// <summary>Small takeoffs of boards, and the plan that prices them.</summary>
internal static class CutNeeds
{
    internal static readonly BoardSection Board = new("2x6", Length.FromInches(1.5), Length.FromInches(5.5), Treated: false);

    /// <summary>A takeoff of 2x6 boards, each a single piece.</summary>
    internal static TakeoffList Pieces(params ReadOnlySpan<double> feet)
    {
        var draft = new TakeoffDraft();
        int number = 0;
        foreach (double each in feet) Add(draft, FormattableString.Invariant($"piece-{++number}"), Length.FromFeet(each), null);
        return draft.List();
    }

    /// <summary>A takeoff of 2x6 runs of one length that may be joined, off the bows at a spacing.</summary>
    internal static TakeoffList Runs(int count, double feet, double bowsFt, params ReadOnlySpan<double> single)
    {
        var draft = new TakeoffDraft();
        for (int run = 1; run <= count; run++) Add(draft, FormattableString.Invariant($"run-{run}"), Length.FromFeet(feet), OffTheBows(feet, bowsFt));
        int number = 0;
        foreach (double each in single) Add(draft, FormattableString.Invariant($"piece-{++number}"), Length.FromFeet(each), null);
        return draft.List();
    }

    internal static Joining OffTheBows(double feet, double bowsFt)
    {
        Length clear = Length.FromInches(3);
        var none = ImmutableArray.CreateBuilder<NoJoint>();
        for (double at = 0; at <= feet + 1e-9; at += bowsFt) none.Add(new NoJoint(Length.FromFeet(at) - clear, Length.FromFeet(at) + clear));
        return new Joining(none.ToImmutable(), Length.FromFeet(4), [new JointHardware(Items.MendingPlate, "4 x 5 in", 2, "two a joint", Citation.CommonPractice, [])]);
    }

    internal static void Add(TakeoffDraft draft, string id, Length length, Joining? joining) => draft.Cut(
        BuildStage.Ground, Board.Item, Board.Size, Board, new PieceNeed(id, id, length) { Joining = joining }, [], "a piece", Citation.Geometry);

    /// <summary>A plan with prices by length in feet, a saw, and stock on hand.</summary>
    internal static Plan Priced(string kerf, (double Feet, decimal Price)[] sold, params (double Feet, int Count)[] onHand) => new()
    {
        Cuts = new CutRules { Kerf = Written(kerf == "0" ? Length.Zero : Length.FromInches(0.125)) },
        Prices = new Prices
        {
            Currency = "invented",
            Note = "invented",
            Items = [.. sold.Select(each => new PriceLine { Item = Items.Board, Size = Board.Size, Length = Written(Length.FromFeet(each.Feet)), Price = new Written<Money>("", new Money(each.Price)) })],
        },
        Stock = [.. onHand.Select(each => new StockOnHand { Item = Items.Board, Size = Board.Size, Length = Written(Length.FromFeet(each.Feet)), Count = each.Count })],
    };

    internal static CutSheets Cut(TakeoffList takeoff, Plan plan, UnitSystem units = UnitSystem.UsCustomary) =>
        CutPlanner.Plan(takeoff, plan, new Answers(units), CutEffort.Live);

    internal static Written<Length> Written(Length length) => new("", length);
}
