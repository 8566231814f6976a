using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Strings, batter boards and stakes for setting out.</summary>
internal static class SiteTakeoff
{
    // Strings that cross batter boards this near to one another are one string.
    private const double SameStringM = 0.01;

    private static readonly Usual<string> BatterBoardSize = new("1x4", "Batter boards are of this size.", Citation.CommonPractice);

    public static void Add(TakeoffDraft draft, Tunnel tunnel)
    {
        ImmutableArray<BatterBoard> boards = tunnel.SetOut.BatterBoards;
        LumberSize lumber = LumberSizes.Find(BatterBoardSize.LumberIn(tunnel.Units).Value)!;
        var section = new BoardSection(lumber.Name, lumber.Thickness, lumber.Width, Treated: false);
        foreach (BatterBoard board in boards)
        {
            draft.Cut(BuildStage.Site, section.Item, section.Size, section,
                PieceNeed.Of(board.Id, board.From.DistanceTo(board.To), tunnel.Units) with { Place = "batter board" },
                [], "Each batter board is a length to cut; they can be used again.", Citation.CommonPractice);
        }
        ImmutableArray<string> all = [.. boards.Select(board => board.Id)];
        // From memory.
        string stake = CountRules.Size("24 in", "600 mm", tunnel.Units);
        draft.Count(BuildStage.Site, Items.Stake, stake, TakeoffDefaults.StakesPerBatterBoard.Value, boards.Length, TakeoffDefaults.StakesPerBatterBoard, all);
        draft.Count(BuildStage.Site, Items.Stake, stake, TakeoffDefaults.CornerStakes.Value, 1, TakeoffDefaults.CornerStakes, ["corners"]);
        draft.Add(BuildStage.Site, MaterialUnit.Metres, Items.StringLine, "", (decimal)StringLength(boards, TakeoffDefaults.StringTie.ValueIn(tunnel.Units)).Metres,
            "Strings from batter board to batter board, with both ends to tie off.", TakeoffDefaults.StringTie.Source, all);
    }

    /// <summary>Every string once: it crosses two batter boards that stand in line with it.</summary>
    /// <param name="boards">The batter boards.</param>
    /// <param name="tie">What each end of a string takes to tie off.</param>
    public static Length StringLength(ImmutableArray<BatterBoard> boards, Length tie)
    {
        double sumM = 0;
        var along = boards.Where(board => Math.Abs(board.To.X.Metres - board.From.X.Metres) > Math.Abs(board.To.Y.Metres - board.From.Y.Metres)).ToList();
        foreach (var line in along.GroupBy(board => Math.Round(board.StringAt.X.Metres / SameStringM)))
            sumM += line.Max(board => board.StringAt.Y.Metres) - line.Min(board => board.StringAt.Y.Metres) + (2 * tie.Metres);
        foreach (var line in boards.Except(along).GroupBy(board => Math.Round(board.StringAt.Y.Metres / SameStringM)))
            sumM += line.Max(board => board.StringAt.X.Metres) - line.Min(board => board.StringAt.X.Metres) + (2 * tie.Metres);
        return Length.FromMetres(sumM);
    }
}
