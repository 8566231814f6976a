using Hoopwright.Frames;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>Puts the whole row of a tunnel through the entered loads along it, and looks for its buckling under snow.</summary>
internal static class RowStudy
{
    // Each takes as long as a thousand trials of one bow; the ends pressed and sucked the hardest are the worst along the tunnel.
    private const int MostAlong = 2;

    /// <summary>What the row does; null when the plan enters neither snow nor wind.</summary>
    internal static RowStrength? Of(Tunnel tunnel, TunnelLoads loads, BowRow row, BowSteel steel, FootRange feet, IReadOnlyList<LoadedCase> atSite)
    {
        LoadedCase[] along = [.. Along(loads, atSite)];
        LoadedCase? snow = atSite.Where(each => IsSnowAlone(loads, each)).MaxBy(each => each.Fixed.Sum(term => loads.Cases[term.Load].Kind == LoadKind.Snow ? term.Times : 0));
        if (along.Length == 0 && snow is null) return null;
        var frame = new RowFrame(tunnel, row, steel, feet.Taken);
        Dictionary<string, (double Utilisation, RowPart Part)> worst = new(StringComparer.Ordinal);
        List<string> buckles = [];
        foreach (LoadedCase each in along)
        {
            FrameAnswer answer = FrameSolver.Solve(frame.Model(loads, [each], FrameAnalysisKind.SecondOrder));
            if (answer.States.IsEmpty)
                buckles.Add(each.Words);
            else
                Check(frame, answer, each, row.BetweenPurlinsM, worst);
        }
        double? factor = snow is null ? null : FrameSolver.Solve(frame.Model(loads, [snow], FrameAnalysisKind.Buckling)).Buckling is [{ Factors: [double least, ..] }] ? least : null;
        return new RowStrength(
            [.. worst.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => pair.Value.Part)],
            factor is { } found ? Ratio.FromValue(found) : null,
            [.. along.Select(each => each.Words), .. snow is null ? [] : new[] { snow.Words }],
            [.. buckles]);
    }

    private static IEnumerable<LoadedCase> Along(TunnelLoads loads, IReadOnlyList<LoadedCase> atSite) => atSite
        .Select(each => (Case: each, PushPa: PushPa(loads, each)))
        .Where(each => each.PushPa > 0)
        .OrderByDescending(each => Ties.Key(each.PushPa)).ThenBy(each => each.Case.Code, StringComparer.Ordinal)
        .Take(MostAlong)
        .Select(each => each.Case);

    // What both ends together push along the tunnel.
    private static double PushPa(TunnelLoads loads, LoadedCase each) => Math.Abs(each.Fixed.Sum(term =>
        loads.Cases[term.Load].Kind is LoadKind.Wind ? loads.Cases[term.Load].Ends.Sum(end => end.AlongTunnel.Pascals) * term.Times : 0));

    private static bool IsSnowAlone(TunnelLoads loads, LoadedCase each) =>
        each.Fixed.Any(term => loads.Cases[term.Load].Kind == LoadKind.Snow) && each.Fixed.All(term => loads.Cases[term.Load].Kind is LoadKind.Snow or LoadKind.Dead or LoadKind.Crop);

    private static void Check(RowFrame frame, FrameAnswer answer, LoadedCase each, double betweenPurlinsM, Dictionary<string, (double Utilisation, RowPart Part)> worst)
    {
        for (int at = 0; at < frame.Parts.Count; at++)
        {
            (Member member, BowSteel steel) = frame.Parts[at];
            string kind = member.Role switch
            {
                MemberRole.Bow => "bow",
                MemberRole.Tie => "tie",
                MemberRole.CornerBrace => "brace",
                _ => "purlin",
            };
            FrameMember part = answer.Model.Members[at];
            double ownM = (answer.Model.Nodes[part.To].PlaceM - answer.Model.Nodes[part.From].PlaceM).Size, lengthM = kind == "bow" ? betweenPurlinsM : ownM;
            TubeStrength strength = steel.StrengthOf(Buckling.ElasticStressPa(FrameMaterial.Steel.YoungPa, lengthM, steel.GyrationM), lengthM, DesignMethod.Lrfd);
            for (int end = 0; end < 2; end++)
            {
                SectionForces forces = answer.States[0].At(at, end == 1);
                TubeCheck check = strength.Check(new MemberForces(forces.NN, forces.VyN, forces.VzN, forces.TNm, forces.MyNm, forces.MzNm));
                if (worst.TryGetValue(kind, out var before) && !Ties.Exceeds(check.Utilisation, before.Utilisation)) continue;
                Ratio? utilisation = double.IsFinite(check.Utilisation) ? Ratio.FromValue(check.Utilisation) : null;
                worst[kind] = (check.Utilisation, new RowPart(kind, member.Id, member.Place, utilisation, check.Governs, each.Words));
            }
        }
    }
}
