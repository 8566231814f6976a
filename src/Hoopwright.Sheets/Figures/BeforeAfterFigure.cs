using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using Hoopwright.Sheets.Fonts;
using Hoopwright.Sheets.Pages;
using Hoopwright.Strength;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>A bow of two plans side by side, to one scale, with the snow and the gust at which each reaches its limit, and where.</summary>
public static class BeforeAfterFigure
{
    private const double LeadMm = 4.8;

    /// <summary>Draws both.</summary>
    /// <param name="before">The first plan, worked out; it must have a tunnel.</param>
    /// <param name="after">The second plan, worked out; it must have a tunnel.</param>
    /// <param name="change">What the second does otherwise, in words; goes over the drawing.</param>
    /// <param name="sheet">Paper, names and units.</param>
    /// <param name="number">Which sheet of how many, as printed.</param>
    public static Drawing Draw(PlannedTunnel before, PlannedTunnel after, string change, FigureSheet sheet, string number)
    {
        Side first = Side.Of(before, "Before"), second = Side.Of(after, "After");
        DrawingBuilder builder = sheet.Start("Bow before and after", $"Two bows to one scale. Before: {first.Says(sheet.Units)} After, with {change}: {second.Says(sheet.Units)}", number);
        double topMm = Words(builder, change), middleMm = builder.Room.Middle.XMm;
        builder.On("panels").Line(new SheetPoint(middleMm, topMm), new SheetPoint(middleMm, builder.Room.BottomMm), LineRole.Dimension);
        (PlanePoint low, PlanePoint high) = (At(Length.Zero, Length.Zero), At(Length.Max(first.Tunnel.Span, second.Tunnel.Span), Length.Max(first.Tunnel.Bow.PeakHeight, second.Tunnel.Bow.PeakHeight)));
        Panel(builder, first, builder.Room with { TopMm = topMm, RightMm = middleMm - 3 }, low, high, sheet.Units);
        Panel(builder, second, builder.Room with { TopMm = topMm, LeftMm = middleMm + 3 }, low, high, sheet.Units);
        return builder.Build();
    }

    private static double Words(DrawingBuilder builder, string words)
    {
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm), atMm = builder.Room.TopMm + 4;
        foreach (string line in TextSetter.Lines(words, builder.Room.WidthMm - 6, emMm, LetterWeight.Bold).Take(3))
        {
            builder.On("words").Text(new SheetPoint(builder.Room.LeftMm + 3, atMm), line, weight: LetterWeight.Bold);
            atMm += LeadMm;
        }
        return atMm;
    }

    private static void Panel(DrawingBuilder builder, Side side, SheetBox panel, PlanePoint low, PlanePoint high, UnitSystem units)
    {
        Tunnel tunnel = side.Tunnel;
        Pen pen = builder.On("words");
        pen.Text(new SheetPoint(panel.LeftMm + 3, panel.TopMm + 4), side.Name, weight: LetterWeight.Bold);
        Lines(pen, panel, panel.TopMm + 4 + LeadMm,
        [
            string.Create(CultureInfo.InvariantCulture, $"{tunnel.Stations.Length} bows, {TapeText.Of(tunnel.Stations[1].Along - tunnel.Stations[0].Along, units)} apart"),
            $"{tunnel.BowTube.Size}, {side.Cost}",
        ]);
        double emMm = Typeface.EmForCapitalsMm(TextMark.LeastCapitalMm);
        ImmutableArray<string> foot = [.. side.Limits(units).Append(side.Verdict).Concat(side.Strength.Worst is null ? [] : ["bands: use of strength under the worst entered combination it carries"])
            .SelectMany(line => TextSetter.Lines(line, panel.WidthMm - 6, emMm, LetterWeight.Regular))];
        Figure figure = builder.Figure(low, high, units, panel.Inset(16, 20, 16, 12 + (LeadMm * foot.Length)));
        figure.On("ground").Line(At(-Length.FromFeet(1), Length.Zero), At(high.Across + Length.FromFeet(1), Length.Zero), LineRole.Cut);
        StrengthReport strength = side.Strength;
        if (strength.Worst is { } worst) UseBands.Draw(figure, worst.Points);
        figure.On("bow").Path(Trace(tunnel.Bow.CentreLine), LineRole.Outline);
        foreach (Member purlin in tunnel.Members.Where(member => member.Role is MemberRole.Purlin or MemberRole.RidgePurlin))
            figure.On("purlins").Circle(At(purlin.Start.X, purlin.Start.Z - tunnel.Stations[0].Base), Length.FromInches(1.5), LineRole.Cut);
        if (tunnel.Members.FirstOrDefault(member => member.Role == MemberRole.Tie) is { } tie)
            figure.On("tie").Line(At(tie.Start.X, tie.Start.Z - tunnel.Stations[1].Base), At(tie.End.X, tie.End.Z - tunnel.Stations[1].Base), LineRole.Outline);
        foreach (var place in Spots(strength, units))
            figure.Callout(place.At, place.Text, Angle.FromDegrees(place.At.Across * 2 < tunnel.Span ? -45 : 225), Angle.FromDegrees(270));
        if (strength.Worst is not null) UseBands.Legend(builder, panel);
        Lines(pen, panel, panel.BottomMm - 8 - (LeadMm * (foot.Length - 1)), foot);
    }

    /// <summary>Where the bow reaches its limits in a storm; one note where both lie in one place.</summary>
    private static ImmutableArray<(PlanePoint At, string Text)> Spots(StrengthReport strength, UnitSystem units)
    {
        List<(PlanePoint At, string Text)> spots = [];
        if (strength.InSnow(StrengthLevel.Storm) is { GroundSnow.Taken.Pascals: >= 1 } snow) spots.Add((At(snow.Across, snow.Up), $"snow limit\n{TapeText.Of(snow.GroundSnow.Taken, units)}"));
        if (strength.InWind(StrengthLevel.Storm) is { Wind.Taken.MetresPerSecond: >= 0.5 } gust) spots.Add((At(gust.Across, gust.Up), $"{strength.WindNoun} limit\n{TapeText.Of(gust.Wind.Taken, units)}"));
        return [.. spots.GroupBy(spot => spot.At).Select(group => (group.Key, string.Join('\n', group.Select(spot => spot.Text))))];
    }

    private static void Lines(Pen pen, SheetBox panel, double fromMm, ImmutableArray<string> lines)
    {
        for (int line = 0; line < lines.Length; line++) pen.Text(new SheetPoint(panel.LeftMm + 3, fromMm + (line * LeadMm)), TapeFractions.Set(lines[line]));
    }

    private sealed record Side(string Name, Tunnel Tunnel, StrengthReport Strength, string Cost)
    {
        public static Side Of(PlannedTunnel planned, string name) => planned is { Tunnel: { } tunnel, Strength: { } strength, Orders: { } orders }
            ? new Side(name, tunnel, strength, $"materials {orders.Total} {orders.Currency}{(orders.Unpriced > 0 ? string.Create(CultureInfo.InvariantCulture, $" and {orders.Unpriced} unpriced") : "")}")
            : throw new ArgumentException("The plan has errors, so there is no bow to draw.", nameof(planned));

        public string Verdict => (Strength.Verdict, Strength.NotChecked) switch
        {
            (_, { }) => "the frame is not checked",
            (StrengthVerdict.NothingEntered, _) => "no loads are entered to hold it against",
            (var verdict, _) => $"under the entered loads: {VerdictWords.Of(verdict)}",
        };

        /// <summary>The limits, one line a level; the storm's with the depth of settled snow.</summary>
        public ImmutableArray<string> Limits(UnitSystem units) => [.. ((StrengthLevel[])[StrengthLevel.Storm, StrengthLevel.Code]).Select(level => Limit(level, units)).Where(line => line.Length > 0)];

        public string Says(UnitSystem units) => $"{string.Join("; ", Limits(units).Append(Verdict))}.";

        private string Limit(StrengthLevel level, UnitSystem units)
        {
            string[] parts =
            [
                Strength.InSnow(level) is { GroundSnow: { } snow } limit ? $"ground snow {TapeText.Of(snow.Taken, units)}{Depth(level, limit, units)}" : "",
                Strength.InWind(level) is { Wind: { } gust } ? $"{Strength.WindNoun} {TapeText.Of(gust.Taken, units)}" : "",
            ];
            string name = level switch { StrengthLevel.Storm => "storm", StrengthLevel.Code => "code" };
            string words = string.Join(", ", parts.Where(part => part.Length > 0));
            return words.Length > 0 ? $"{name}: {words}" : "";
        }

        private static string Depth(StrengthLevel level, StrengthLimit limit, UnitSystem units) =>
            level == StrengthLevel.Storm && limit.Depths is [_, var settled, ..] ? $" ({TapeText.Rough(settled.Depth, units)} settled on roof)" : "";
    }
}
