using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>
/// Wind while the tunnel is built, each case for 1 Pa of ½·ρ·V² of the design wind: on the bare frame, and on end walls that
/// stand covered before the roof. No member shelters another, which is on the careful side for a long row of bows.
/// </summary>
internal static class BuildingCases
{
    /// <summary>Force coefficient of round tube.</summary>
    internal const double Round = 1.2;

    /// <summary>Force coefficient of square tube and boards.</summary>
    internal const double Flat = 2.0;

    private static readonly Formula Drag = new("Cf", "1.2 round tube, 2.0 square tube and boards", "", LoadSources.Asce7("Fig. 29.4-2"));

    private static readonly Formula Part = new("part", "of the design wind speed, its square on the pressure", "", LoadDefaults.BuildingWind.Source);

    public static IEnumerable<LoadCase> Of(Tunnel tunnel, LoadSite site)
    {
        double q = site.WindFactor * site.BuildingWind * site.BuildingWind;
        Pressure? reference = site.WindPa is { } pa ? Pressure.FromPascals(pa) : null;
        ImmutableArray<Coefficient> used = [LoadSite.Value(Drag, Round, "round tube"), LoadSite.Value(Drag, Flat, "boards"), LoadSite.Value(Part, site.BuildingWind, "while it is built")];
        foreach (WindFrom from in Enum.GetValues<WindFrom>())
        {
            bool across = from is WindFrom.Left or WindFrom.Right;
            double towards = from is WindFrom.Left or WindFrom.Front ? 1 : -1;
            ImmutableArray<LineLoad> drag = [.. On(tunnel, across, towards * q * Gust(site))];
            string name = WindCases.Name(from);
            yield return new LoadCase
            {
                Code = "building-bare-" + name,
                Words = $"Wind from the {name} on the bare frame",
                Kind = LoadKind.Construction,
                Scale = LoadScale.WindSpeedSquared,
                SiteReference = reference,
                TwinCode = "building-bare-" + (across ? from == WindFrom.Left ? "right" : "left" : name),
                Lines = drag,
                Coefficients = used,
            };
            if (across || (tunnel.Front.Closing != EndClosing.Framed && tunnel.Back.Closing != EndClosing.Framed)) continue;
            (double windward, double leeward) = WindShape.Ends(tunnel, site);
            // A wall that stands alone has the wind on one face and its suction on the other.
            double wall = (windward - leeward) * q * towards;
            yield return new LoadCase
            {
                Code = "building-ends-" + name,
                Words = $"Wind from the {name}, ends covered and the roof not",
                Kind = LoadKind.Construction,
                Scale = LoadScale.WindSpeedSquared,
                SiteReference = reference,
                TwinCode = "building-ends-" + name,
                Lines = drag,
                Ends =
                [
                    .. tunnel.Ends.Where(end => end.Closing == EndClosing.Framed).Select(end => new EndPressure(end.IsFront, Pressure.FromPascals(end.IsFront ? wall : -wall))),
                ],
                Coefficients = [.. used, LoadSite.Value(site.IsAsce ? AsceWindShapes.Walls : EnWind.Walls, (windward - leeward) / Gust(site), "an end wall alone, both faces")],
                Note = "That ends may be covered before the roof is common practice.",
            };
        }
    }

    private static double Gust(LoadSite site) => site.IsAsce ? AsceWind.Gust : 1;

    private static IEnumerable<LineLoad> On(Tunnel tunnel, bool across, double q)
    {
        foreach (var group in tunnel.Members.Where(member => Meets(member.Role, across)).GroupBy(member => (member.Role, WidthM(member.Section), Factor(member.Section))))
        {
            // A bow stands square to wind along the tunnel all along its curve, and to wind across only with its upright part.
            LoadMeasure per = across && group.Key.Role == MemberRole.Bow ? LoadMeasure.Projection : LoadMeasure.Length;
            yield return new([.. group.Select(member => member.Id)], across ? LoadAxis.Across : LoadAxis.Along,
                ForcePerLength.FromNewtonsPerMetre(q * group.Key.Item3 * group.Key.Item2), per);
        }
    }

    private static double WidthM(MemberSection section) => section.Match(tube => tube.Outside, board => board.Depth).Metres;

    private static double Factor(MemberSection section) => section.Match(tube => tube.Form == TubeForm.Round ? Round : Flat, _ => Flat);

    /// <summary>Members that the wind meets broadside: those above the ground that do not run along it.</summary>
    private static bool Meets(MemberRole role, bool across) => role switch
    {
        MemberRole.Bow => true,
        MemberRole.RidgePurlin or MemberRole.Purlin or MemberRole.HipBoard or MemberRole.RollTube or MemberRole.CornerBrace => across,
        MemberRole.Tie or MemberRole.EndPost or MemberRole.Cripple or MemberRole.Girt or MemberRole.Header or MemberRole.VentRail => !across,
        // Low, in the ground, lining an opening, or part of a door that hangs last.
        MemberRole.GroundPost or MemberRole.Baseboard or MemberRole.EndBaseboard or MemberRole.Jamb or MemberRole.LeafStile or MemberRole.LeafRail or MemberRole.LeafBrace => false,
    };
}
