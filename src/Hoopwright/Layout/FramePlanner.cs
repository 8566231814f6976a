using System.Collections.Immutable;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>Bows, ties, purlins and corner braces.</summary>
internal static class FramePlanner
{
    public static int Bows(LayoutDraft draft)
    {
        Length developed = draft.Bow.CentreLine.Length;
        ImmutableArray<Length> stock = LayoutDraft.StockLengths(draft.Plan.Frame.BowTube.StockLengths);
        Length longest = (stock.IsEmpty ? UsualTubes.StockLengths(draft.Units) : stock).Max();
        // Tube is cut before a bow can be measured: a bow that turned out longer is no longer tube than was planned.
        Length tube = draft.Built?.Planned.Bow.CentreLine.Length ?? developed;
        int least = Math.Max(1, (int)Math.Ceiling((tube / longest) - Tolerances.WholeNumber));
        // Two arcs that meet at a ridge are two bends: their joint belongs at the ridge.
        bool hasRidge = draft.Bow.Kind is BowKind.Gothic or BowKind.Peaked;
        int usual = hasRidge && least % 2 == 1 ? least + 1 : least;
        int pieces = draft.Answers.Take("frame.bowPieces",
            new Usual<int>(usual, "Pieces that one bow is joined from.", Sources.Citation.Geometry), draft.Plan.Frame.BowPieces);
        if (pieces < least)
        {
            draft.Error("frame.bow.pieces-too-long", "frame.bowPieces",
                $"A bow of {draft.Tape(developed)} in {pieces} {(pieces == 1 ? "piece" : "pieces")} needs longer tube than is sold.",
                pieces.ToString(System.Globalization.CultureInfo.InvariantCulture), $"at least {least}, or tube of {draft.Tape(developed / pieces)}");
            pieces = least;
        }

        ImmutableArray<PlanePath> curves =
            [.. Enumerable.Range(0, pieces).Select(piece => draft.Bow.CentreLine.Between(developed * piece / pieces, developed * (piece + 1) / pieces)
                ?? throw new InvalidOperationException("A part of a bow has a length."))];
        foreach (BowStation station in draft.Stations)
        {
            for (int piece = 0; piece < pieces; piece++)
            {
                string bow = FormattableString.Invariant($"bow-{station.Number:00}");
                PlanePath curve = curves[piece];
                draft.Members.Add(new Member
                {
                    Id = pieces == 1 ? bow : FormattableString.Invariant($"{bow}-{piece + 1}"),
                    Role = MemberRole.Bow,
                    Section = draft.BowTube,
                    Start = At(station, curve.Start),
                    End = At(station, curve.End),
                    CutLength = draft.Built is null ? curve.Length : tube / pieces,
                    Curve = curve,
                    Place = FormattableString.Invariant($"bow {station.Number}{(pieces == 1 ? "" : $", piece {piece + 1} from the left")}"),
                    StockLengths = stock,
                });
            }
        }
        return pieces;
    }

    public static void Ties(LayoutDraft draft)
    {
        if (draft.Plan.Frame.Tie is not { } tie) return;
        Length side = draft.Bow.SideHeight, peak = draft.Bow.PeakHeight;
        Length height = draft.Answers.Take("frame.tie.height", LayoutDefaults.TieHeight(side, peak), tie.Height);
        int every = Math.Max(1, draft.Answers.Take("frame.tie.every", LayoutDefaults.TieEvery, tie.Every));
        TubeSection tube = draft.Tube("frame.tie.tube", tie.Tube, LayoutDefaults.LightTube(draft.Units), LayoutDefaults.LightWall(draft.Units));
        Length highest = draft.Bow.CentreLine.Highest() - tube.Outside;
        if (height <= Length.Zero || height >= highest)
        {
            draft.Error("frame.tie.off-the-bow", "frame.tie.height", "A tie at this height does not meet the bow.",
                tie.Height?.Text ?? draft.Tape(height), $"over {draft.Tape(Length.Zero)} and under {draft.Tape(highest)}");
            return;
        }
        Length headRoom = LayoutDefaults.HeadRoom.ValueIn(draft.Units);
        if (height < headRoom)
        {
            draft.Warn("frame.tie.head-height", "frame.tie.height", "A tie this low is at head height; people and machines will meet it.",
                draft.Tape(height), $"{draft.Tape(headRoom)} or more");
        }
        (Length left, Length right) = draft.Bow.CentreLine.AcrossAt(height);
        foreach (BowStation station in draft.Stations.Skip(1).SkipLast(1).Where(station => (station.Number - 1) % every == 0))
        {
            draft.Members.Add(new Member
            {
                Id = FormattableString.Invariant($"tie-{station.Number:00}"),
                Role = MemberRole.Tie,
                Section = tube,
                Start = At(station, new PlanePoint(left, height)),
                End = At(station, new PlanePoint(right, height)),
                CutLength = right - left,
                MaySplice = true,
                Place = FormattableString.Invariant($"bow {station.Number}"),
                StockLengths = LayoutDraft.StockLengths(tie.Tube.StockLengths),
            });
        }
    }

    public static void Purlins(LayoutDraft draft)
    {
        Purlins asked = draft.Plan.Frame.Purlins ?? new Purlins();
        int count = draft.Answers.Take("frame.purlins.count", LayoutDefaults.Purlins(draft.Span), asked.Count);
        if (count == 0)
        {
            draft.Warn("frame.purlins.none", "frame.purlins.count", "With no purlin nothing ties the bows together along the length.", "0", "1 or more");
            return;
        }
        if (count % 2 == 0)
        {
            draft.Error("frame.purlins.even", "frame.purlins.count", "The count includes the ridge purlin and as many on each side, so it is odd.",
                count.ToString(System.Globalization.CultureInfo.InvariantCulture), FormattableString.Invariant($"{count - 1} or {count + 1}"));
            return;
        }
        TubeSection tube = draft.Tube("frame.purlins.tube", asked.Tube, LayoutDefaults.LightTube(draft.Units), LayoutDefaults.LightWall(draft.Units));
        ImmutableArray<Length> stock = LayoutDraft.StockLengths(asked.Tube.StockLengths);

        if (draft.Bow.Underside.Inwards(tube.Outside / 2) is not { } line)
        {
            draft.Error("frame.purlins.too-wide", "frame.purlins.tube.outside", "The purlin does not fit inside the bends of the bow.",
                draft.Tape(tube.Outside), "a narrower tube");
            return;
        }
        draft.Members.Add(GroundPlanner.Lengthwise(draft, "purlin-ridge", MemberRole.RidgePurlin, tube, line.PointAt(line.Length / 2), "under the ridge", true, stock));
        int perSide = (count - 1) / 2;
        Length legs = draft.Bow.SideHeight;
        Length half = (line.Length / 2) - legs;
        for (int step = 1; step <= perSide; step++)
        {
            Length fromRidge = half * step / (perSide + 1);
            foreach (bool left in (ReadOnlySpan<bool>)[true, false])
            {
                PlanePoint at = line.PointAt((line.Length / 2) + (left ? -fromRidge : fromRidge));
                draft.Members.Add(GroundPlanner.Lengthwise(draft, FormattableString.Invariant($"purlin-{GroundPlanner.SideName(left)}-{step}"), MemberRole.Purlin,
                    tube, at, FormattableString.Invariant($"{GroundPlanner.SideName(left)} side, {step} from the ridge"), true, stock));
            }
        }
    }

    public static void Braces(LayoutDraft draft)
    {
        Braces asked = draft.Plan.Frame.Braces ?? new Braces();
        int corners = draft.Answers.Take("frame.braces.corners", LayoutDefaults.BraceCorners, asked.Corners);
        if (corners is not (0 or 2 or 4))
        {
            draft.Error("frame.braces.corners", "frame.braces.corners", "Corners are braced at the front end, or at both ends, on both sides.",
                corners.ToString(System.Globalization.CultureInfo.InvariantCulture), "0, 2 or 4");
            return;
        }
        if (corners == 0)
        {
            draft.Warn("frame.braces.none", "frame.braces.corners", "Without corner braces the bows can lean over one after another in wind.", "0", "4");
            return;
        }
        int bays = draft.Stations.Length - 1;
        int reach = draft.Answers.Take("frame.braces.bays", LayoutDefaults.BraceBays with { Value = Math.Min(LayoutDefaults.BraceBays.Value, bays) }, asked.Bays);
        if (reach < 1 || reach > bays)
        {
            draft.Error("frame.braces.reach", "frame.braces.bays", "A brace cannot reach over that many bays here.",
                reach.ToString(System.Globalization.CultureInfo.InvariantCulture), FormattableString.Invariant($"1 to {bays}"));
            return;
        }
        Length top = draft.Answers.Take("frame.braces.topHeight", LayoutDefaults.BraceTop(draft.Bow.SideHeight, draft.Bow.PeakHeight), asked.TopHeight);
        if (top <= Length.Zero || top >= draft.Bow.CentreLine.Highest())
        {
            draft.Error("frame.braces.off-the-bow", "frame.braces.topHeight", "A brace at this height does not meet the end bow.",
                draft.Tape(top), $"under {draft.Tape(draft.Bow.CentreLine.Highest())}");
            return;
        }
        TubeSection tube = draft.Tube("frame.braces.tube", asked.Tube, LayoutDefaults.LightTube(draft.Units), LayoutDefaults.LightWall(draft.Units));
        (Length leftTop, Length rightTop) = draft.Bow.CentreLine.AcrossAt(top);
        Length foot = Length.Min(LayoutDefaults.BraceFoot.ValueIn(draft.Units), top / 2);
        (Length leftFoot, Length rightFoot) = draft.Bow.CentreLine.AcrossAt(foot);
        foreach (bool front in corners == 2 ? (ReadOnlySpan<bool>)[true] : [true, false])
        {
            BowStation endBow = front ? draft.Stations[0] : draft.Stations[^1];
            BowStation footBow = front ? draft.Stations[reach] : draft.Stations[^(reach + 1)];
            foreach (bool left in (ReadOnlySpan<bool>)[true, false])
            {
                TunnelPoint start = At(footBow, new PlanePoint(left ? leftFoot : rightFoot, foot));
                TunnelPoint end = At(endBow, new PlanePoint(left ? leftTop : rightTop, top));
                string name = $"{(front ? "front" : "back")}-{GroundPlanner.SideName(left)}";
                draft.Members.Add(new Member
                {
                    Id = "brace-" + name,
                    Role = MemberRole.CornerBrace,
                    Section = tube,
                    Start = start,
                    End = end,
                    CutLength = start.DistanceTo(end),
                    MaySplice = true,
                    Place = FormattableString.Invariant($"{name.Replace('-', ' ')} corner, bow {endBow.Number} down to bow {footBow.Number}"),
                    StockLengths = LayoutDraft.StockLengths(asked.Tube.StockLengths),
                });
            }
        }
    }

    public static TunnelPoint At(BowStation station, PlanePoint point) => new(point.Across, station.Along, station.Base + point.Up);
}
