using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Pricing;
using Hoopwright.Takeoff;

namespace Hoopwright.Orders;

/// <summary>Turns what is needed into what is bought.</summary>
public static class OrderPlanner
{
    // How many unpriced lines a diagnostic names before it says how many more there are.
    private const int Named = 6;

    /// <summary>Makes the order. Never throws for a plan.</summary>
    /// <param name="takeoff">What is needed.</param>
    /// <param name="cuts">The stock lengths chosen, and what the joints take.</param>
    /// <param name="film">The rolls of film chosen.</param>
    /// <param name="plan">The plan: prices, stock on hand, spares, extra lines.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    /// <param name="ownPrices">How many lines of the price book are the plan's own, when those of a price book file come after them; null for all.</param>
    public static OrderList Plan(TakeoffList takeoff, CutSheets cuts, FilmCutPlan film, Plan plan, Answers answers, int? ownPrices = null)
    {
        PriceBook prices = PriceBook.Of(plan);
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        found.AddRange(PriceBookCheck.Of(plan, new TakeoffList([.. takeoff.Lines, .. cuts.JointLines]), ownPrices ?? plan.Prices.Items.Length));
        ImmutableArray<MaterialLine> counted = [.. takeoff.Lines.Concat(cuts.JointLines)];
        ImmutableArray<OrderLine> lines =
        [
            .. StickOrders.Of(counted, cuts, prices)
                .Concat(PackageOrders.Of(counted, plan, prices, answers))
                .Concat(FilmOrders.Of(counted, film, prices))
                .OrderBy(line => line.Item, StringComparer.Ordinal).ThenBy(line => line.Size, StringComparer.Ordinal)
                .ThenBy(line => line.Width?.Metres ?? 0).ThenBy(line => line.Length?.Metres ?? 0).ThenBy(line => line.FromStock),
            .. ExtraOrders.Of(plan, found),
        ];
        var list = new OrderList { Lines = lines, Currency = prices.Currency, PriceNote = prices.Note, Diagnostics = [] };
        Say(list, prices, found);
        return list with { Diagnostics = found.ToImmutable() };
    }

    private static void Say(OrderList list, PriceBook prices, ImmutableArray<Diagnostic>.Builder found)
    {
        int invented = list.Lines.Count(line => line.Origin == PriceOrigin.Example && line.Packages > 0);
        if (invented > 0)
        {
            found.Add(new Diagnostic("orders.prices.example", Severity.Assumption, "prices.currency",
                string.Create(CultureInfo.InvariantCulture, $"{invented} {(invented == 1 ? "line has" : "lines have")} an invented example price."), null,
                "your own prices in prices.items; once prices.currency is given, no example price is used"));
        }
        ImmutableArray<OrderLine> none = list.WithoutPrice;
        if (!none.IsEmpty)
        {
            string names = string.Join(", ", none.Select(line => line.Name).Distinct().Take(Named));
            found.Add(new Diagnostic("orders.lines-without-price", Severity.Warning, "prices.items",
                string.Create(CultureInfo.InvariantCulture, $"{none.Length} {(none.Length == 1 ? "line has" : "lines have")} no price, so the total is without {(none.Length == 1 ? "it" : "them")}."),
                null, $"a price for {names}{(none.Select(line => line.Name).Distinct().Count() > Named ? " and others" : "")}"));
        }
        if (prices.IsOwn && prices.Note.Length == 0)
        {
            found.Add(new Diagnostic("orders.prices.undated", Severity.Warning, "prices.note", "The price book does not say where its prices come from and of what date.", null, "a note, such as \"quotes of March\""));
        }
    }
}
