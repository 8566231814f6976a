using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.CoverSteps;

/// <summary>Plans how the film is put on: which side it is rolled out on, who stands where, which step comes after which.</summary>
public static class FasteningPlanner
{

    /// <summary>Plans it. Never throws for a tunnel.</summary>
    /// <param name="tunnel">The tunnel as laid out.</param>
    /// <param name="cover">Its cover.</param>
    /// <param name="day">What the day must be like.</param>
    public static FasteningPlan Plan(Tunnel tunnel, CoverPlan cover, CoverDayNeeds day)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(day);
        var crew = new CrewSize(tunnel, cover, day);
        RollSide side = RollSideChoice.Of(tunnel);
        int people = crew.In(day.Wind);
        var steps = new StepWriter(tunnel, cover, day, side, people, new StepMaterials(tunnel, cover));
        return new FasteningPlan
        {
            Variant = cover.Layers == 1 ? FilmVariant.Single : cover.Inflation is null ? FilmVariant.Double : FilmVariant.Inflated,
            Day = day,
            RollSide = side,
            RoofFilm = crew.Weight,
            CrewRules = crew.Rules,
            People = people,
            InWind = crew.InWinds,
            Stands = Stands(tunnel, cover, side),
            Ends = [.. tunnel.Ends.Where(end => end.Closing == EndClosing.Framed).Select(end => Hold(tunnel, cover, end))],
            WithFewer = day.Hours.People >= people ? null : Phrase.Of(
                "The plan has {0} people and this sheet takes {1}: get more for this one morning, or pull rope after rope, tie each off to its stake as it comes, and stop in less wind.",
                day.Hours.People.ToString(CultureInfo.InvariantCulture), people.ToString(CultureInfo.InvariantCulture)),
            Steps = steps.All(),
        };
    }

    /// <summary>One to a rope on the far side, two on the roll side at the quarter points.</summary>
    private static ImmutableArray<Stand> Stands(Tunnel tunnel, CoverPlan cover, RollSide side)
    {
        Length before = PastEnd(cover, tunnel.Front);
        ImmutableArray<Stand> pulling =
        [
            .. cover.Ropes.Marks.Select((mark, index) => new Stand(
                FormattableString.Invariant($"P{index + 1}"), Phrase.Of("pulls rope {0}", (index + 1).ToString(CultureInfo.InvariantCulture)), mark - before, !side.IsLeft, index + 1)),
        ];
        return
        [
            .. pulling,
            .. Enumerable.Range(0, CrewSize.Feeders).Select(feeder => new Stand(
                FormattableString.Invariant($"F{feeder + 1}"), Phrase.Of("feeds the film and looks for snags"), tunnel.Length * ((2 * feeder) + 1) / (2 * CrewSize.Feeders), side.IsLeft, 0)),
        ];
    }

    private static EndHold Hold(Tunnel tunnel, CoverPlan cover, EndWall end)
    {
        Length from = end.Bow.LockEdge(tunnel.Left), to = end.Bow.LockEdge(tunnel.Right);
        int pieces = cover.Runs.Where(run => !run.OnWood && run.PieceIds.Length > 1 && run.Id.StartsWith(end.Name + "-", StringComparison.Ordinal)).Sum(cover.TemporaryWiresIn);
        return new EndHold(end.Name, from, to, [.. Enumerable.Range(0, pieces).Select(piece => pieces == 1 ? (from + to) / 2 : from + ((to - from) * piece / (pieces - 1)))]);
    }

    /// <summary>How far the cut roof film reaches out past an end bow: what that end takes, and half of what cutting at a whole step adds.</summary>
    /// <param name="cover">Its cover.</param>
    /// <param name="end">The end.</param>
    public static Length PastEnd(CoverPlan cover, EndWall end)
    {
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(end);
        CoverPiece roof = cover.Pieces.First(piece => piece.Role == CoverRole.Roof);
        Length exact = Length.FromMetres(roof.AlongParts.Sum(part => part.Length.Metres));
        return Length.FromMetres(roof.AlongParts.Where(part => part.Name.Contains(end.Name, StringComparison.Ordinal)).Sum(part => part.Length.Metres)) + ((roof.AlongRoll - exact) / 2);
    }
}
