using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.CoverSteps;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Running;
using Hoopwright.Sheets.Charts;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.Figures;

/// <summary>The drawings of a tunnel, in the order of the packet.</summary>
public static class TunnelFigures
{
    /// <summary>Set-out, bow, sides, ends, door leaves, film, cut lists and strength.</summary>
    /// <param name="planned">What to draw; it must have a tunnel. What was not worked out is left out.</param>
    /// <param name="sheet">Paper, names and units.</param>
    /// <param name="sideBySide">How to draw several at once; null for one after the other.</param>
    public static ImmutableArray<TunnelFigure> Of(PlannedTunnel planned, FigureSheet sheet, SideBySide? sideBySide = null)
    {
        ImmutableArray<FigureOffer> offers = Offers(planned, sheet);
        var drawn = new TunnelFigure[offers.Length];
        (sideBySide ?? InTurn.Run)([.. offers.Select((offer, index) => (Action)(() => drawn[index] =
            new TunnelFigure(string.Create(CultureInfo.InvariantCulture, $"{index + 1:00}-{offer.Name}"), offer.Chapter, offer.Draw())))]);
        return [.. drawn];
    }

    /// <summary>The same drawings before they are drawn, for those who want to see one.</summary>
    /// <param name="planned">What to draw; it must have a tunnel. What was not worked out is left out.</param>
    /// <param name="sheet">Paper, names and units.</param>
    /// <param name="onlyLayout">True for those that need no more than the layout.</param>
    public static ImmutableArray<FigureOffer> Offers(PlannedTunnel planned, FigureSheet sheet, bool onlyLayout = false)
    {
        ArgumentNullException.ThrowIfNull(planned);
        Tunnel tunnel = planned.Tunnel ?? throw new ArgumentException("The plan has errors, so there is nothing to draw.", nameof(planned));
        List<(string Name, FigureChapter Chapter, Func<FigureSheet, string, Drawing> Draw)> wanted =
        [
            ("set-out", FigureChapter.SetOut, (on, number) => SetOutFigure.Draw(tunnel, on, number)),
            ("bow", FigureChapter.SetOut, (on, number) => BowFigure.Draw(tunnel, on, number)),
            ("left-side", FigureChapter.SetOut, (on, number) => SideFigure.Draw(tunnel, on, number, tunnel.Left)),
        ];
        if (HasRightSide(tunnel))
            wanted.Add(("right-side", FigureChapter.SetOut, (on, number) => SideFigure.Draw(tunnel, on, number, tunnel.Right)));
        foreach (EndWall end in tunnel.Ends.Where(end => end.Closing != EndClosing.Open))
        {
            wanted.Add((end.Name + "-end", FigureChapter.Ends, (on, number) => EndFigure.Draw(tunnel, on, number, end)));
            foreach (DoorOpening door in end.Doors.Where(door => !door.Leaves.IsEmpty))
                wanted.Add((door.Id + "-leaf", FigureChapter.Ends, (on, number) => LeafFigure.Draw(tunnel, on, number, end, door, door.Leaves[0])));
        }
        int ofLayout = wanted.Count;
        if (!onlyLayout && planned.Cover is { } detailed)
        {
            var panels = new DetailPanels(planned, tunnel);
            if (!tunnel.GroundPosts.IsEmpty) wanted.Add(("ground-details", FigureChapter.Ends, (on, number) => GroundDetailFigure.Draw(panels, tunnel, on, number)));
            wanted.Add(("side-details", FigureChapter.Ends, (on, number) => SideDetailFigure.Draw(panels, tunnel, detailed, on, number)));
            if (FilmDetailFigure.IsNeeded(tunnel, detailed)) wanted.Add(("film-details", FigureChapter.Cover, (on, number) => FilmDetailFigure.Draw(panels, tunnel, detailed, on, number)));
        }
        if (!onlyLayout && planned.Film is { } film)
        {
            ImmutableArray<Func<string, Drawing>> rolls = FilmFigure.Sheets(film, sheet);
            for (int index = 0; index < rolls.Length; index++)
            {
                Func<string, Drawing> draw = rolls[index];
                wanted.Add((Numbered("film-cuts", index, rolls.Length), FigureChapter.Cover, (_, number) => draw(number)));
            }
        }
        if (!onlyLayout && planned.Cover is { } cover) wanted.Add(("film-pull", FigureChapter.Cover, (on, number) => PullChart.Draw(cover.Pull, null, on, number)));
        if (!onlyLayout && planned is { Cover: { } held, Fastening: { } fastening })
        {
            foreach (EndHold hold in fastening.Ends) wanted.Add((hold.End + "-end-film", FigureChapter.Covering, (on, number) => EndFilmFigure.Draw(tunnel, held, fastening, hold, on, number)));
            wanted.Add(("roof-pull", FigureChapter.Covering, (on, number) => RoofPullFigure.Draw(tunnel, held, fastening, on, number)));
        }
        if (!onlyLayout && planned.Cuts is { } cuts) wanted.AddRange(CutBarsFigure.Sheets(cuts, sheet).Select(each => (FileNames.Of(each.Name), FigureChapter.Cuts, (Func<FigureSheet, string, Drawing>)((_, number) => each.Draw(number)))));
        if (!onlyLayout && planned.Strength is { } strength)
        {
            ImmutableArray<ShownLoad> shown = ShownLoad.Of(strength);
            if (!shown.IsEmpty) wanted.Add(("strength-loads", FigureChapter.Strength, (on, number) => StrengthLoadsFigure.Draw(tunnel, strength, shown, on, number)));
            if (strength.Worst is { } worst) wanted.Add(("strength-bow", FigureChapter.Strength, (on, number) => StrengthBowFigure.Draw(worst, strength, on, number)));
        }
        return
        [
            .. wanted.Select((each, index) => new FigureOffer(
                each.Name, each.Chapter, index >= ofLayout, () => Clear(each.Draw, sheet, sheet.Words.Say(string.Create(CultureInfo.InvariantCulture, $"{index + 1} of {wanted.Count}"))))),
        ];
    }

    /// <summary>Whether the right side differs from the left so that it has a drawing of its own.</summary>
    internal static bool HasRightSide(Tunnel tunnel) => tunnel.Right.Kind != tunnel.Left.Kind || tunnel.Right.HipHeight != tunnel.Left.HipHeight;

    /// <summary>The drawing with its remarks beside their parts; in a column where they would collide there.</summary>
    private static Drawing Clear(Func<FigureSheet, string, Drawing> draw, FigureSheet sheet, string number)
    {
        Drawing beside = draw(sheet, number);
        return Collisions.In(beside).IsEmpty ? beside : draw(sheet with { InColumn = true }, number);
    }

    private static string Numbered(string name, int index, int all) => all == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name}-{index + 1}");
}
