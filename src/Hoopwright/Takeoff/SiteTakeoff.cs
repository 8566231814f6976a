using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Strings, batter boards and stakes for setting out.</summary>
internal static class SiteTakeoff
{
    // Strings that cross batter boards this near to one another are one string.
    private const double SameStringM = 0.01;

    private static readonly BoardSection BatterBoard = new("1x4", Length.FromInches(0.75), Length.FromInches(3.5), Treated: false);

    public static void Add(TakeoffDraft draft, Tunnel tunnel)
    {
        ImmutableArray<BatterBoard> boards = tunnel.SetOut.BatterBoards;
        foreach (BatterBoard board in boards)
        {
            draft.Cut(BuildStage.Site, BatterBoard.Item, BatterBoard.Size, BatterBoard,
                PieceNeed.Of(board.Id, board.From.DistanceTo(board.To), tunnel.Units) with { Place = "batter board" },
                [], "Each batter board is a length to cut; they can be used again.", Citation.CommonPractice);
        }
        ImmutableArray<string> all = [.. boards.Select(board => board.Id)];
        string stake = TakeoffDefaults.StakeSize.Value;
        draft.Count(BuildStage.Site, Items.Stake, stake, TakeoffDefaults.StakesPerBatterBoard.Value, boards.Length, TakeoffDefaults.StakesPerBatterBoard, all);
        draft.Count(BuildStage.Site, Items.Stake, stake, TakeoffDefaults.CornerStakes.Value, 1, TakeoffDefaults.CornerStakes, ["corners"]);
        draft.Add(BuildStage.Site, MaterialUnit.Metres, Items.StringLine, "", (decimal)StringLength(boards).Metres,
            "Strings from batter board to batter board, with both ends to tie off.", TakeoffDefaults.StringTie.Source, all);
    }

    /// <summary>Every string once: it crosses two batter boards that stand in line with it.</summary>
    public static Length StringLength(ImmutableArray<BatterBoard> boards)
    {
        double sumM = 0;
        var along = boards.Where(board => Math.Abs(board.To.X.Metres - board.From.X.Metres) > Math.Abs(board.To.Y.Metres - board.From.Y.Metres)).ToList();
        foreach (var line in along.GroupBy(board => Math.Round(board.StringAt.X.Metres / SameStringM)))
            sumM += line.Max(board => board.StringAt.Y.Metres) - line.Min(board => board.StringAt.Y.Metres) + (2 * TakeoffDefaults.StringTie.Value.Metres);
        foreach (var line in boards.Except(along).GroupBy(board => Math.Round(board.StringAt.Y.Metres / SameStringM)))
            sumM += line.Max(board => board.StringAt.X.Metres) - line.Min(board => board.StringAt.X.Metres) + (2 * TakeoffDefaults.StringTie.Value.Metres);
        return Length.FromMetres(sumM);
    }
}
