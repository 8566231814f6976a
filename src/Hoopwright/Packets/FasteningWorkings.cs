using System.Collections.Immutable;
using Hoopwright.Cover.Pull;
using Hoopwright.CoverSteps;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>Workings of how the film is put on.</summary>
internal static class FasteningWorkings
{
    private const string Plan = "cover.fastening";
    private static readonly Citation Practice = Citation.CommonPractice;

    public static ImmutableArray<Working> All { get; } =
    [
        .. ClimateWorkings.Needs(Plan + ".day"),
        Workings.Of(Plan + ".roofFilm", FormattableString.Invariant($"roof film as cut, all layers · thickness · {FilmMaterial.KgM3} kg/m³"), FilmMaterial.Density.Source, ["cover.pieces[0].alongRoll", "cover.pieces[0].acrossRoll", "cover.thickness"], ["cover.layers"]),
        Workings.Of(Plan + ".people", "the most that any of the rules asks for", Practice, [Plan + ".crewRules[0].people", Plan + ".crewRules[1].people", Plan + ".crewRules[2].people"], ["coverDay.wind"]),
        Workings.Of(Plan + ".crewRules[*].people", "as the rule says, up to a whole person", Practice, ["cover.ropes.count", Plan + ".roofFilm"], []),
        Workings.Of(Plan + ".inWind[*].wind", "winds that people can picture, and both limits of the plan", Practice, [], ["coverDay.wind", "coverDay.gust"]),
        Workings.Of(Plan + ".inWind[*].pull", CrewSize.Drag.Text, CrewSize.Drag.Source, [Plan + ".inWind[*].wind", "cover.pieces[0].alongRoll", "frame.peakHeight"], []),
        Workings.Of(Plan + ".inWind[*].people", "pull ÷ what one person holds, but no fewer than ropes and roll take", Practice, [Plan + ".inWind[*].pull", "cover.pull.oneHand"], []),
        Workings.Of(Plan + ".stands[*].along", "at the rope's mark on the film laid evenly over both ends; feeders at a quarter and three quarters", Practice, ["cover.ropes.count"], ["cover.ropeSpacing"]),
        Workings.Of(Plan + ".stands[*].rope", "counted from the front; 0 for none", Practice, [], []),
        Workings.Of(Plan + ".steps[*].people", "hands that the step takes at once", Practice, [], []),
        Workings.Of(Plan + ".steps[*].materials[*].quantity", "counted by the rules of the takeoff for the runs and pieces of the step", Practice, [], ["cover"]),
    ];
}
