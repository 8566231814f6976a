using System.Collections.Immutable;
using Hoopwright.CoverSteps;
using Hoopwright.Sources;

namespace Hoopwright.BuildSteps;

/// <summary>What can hurt while the frame goes up, beside the cautions of covering.</summary>
public static class BuildCautions
{
    /// <summary>Buried lines.</summary>
    public static StepCaution Buried { get; } = new("buried", "Buried lines: dig, drive and drill only where they are marked or known to be absent. Private ones (yard lights, farm water) are not marked by the service. Near a mark dig by hand.",
        new("one-call notices of Oklahoma (okie811.org) and Georgia", "notice before digging; private lines are not marked", Standing.Published));

    /// <summary>Taut strings.</summary>
    public static StepCaution Taut { get; } = new("taut", "A taut string can snap: keep your face out of its line.",
        new("High Tunnels, University of Vermont Center for Sustainable Agriculture (2007)", "taut nylon can snap and injure", Standing.Published));

    /// <summary>Open holes.</summary>
    public static StepCaution Hole { get; } = new("hole", "Open holes break legs: cover or fence each one you walk away from, and keep children and animals out.", Citation.CommonPractice);

    /// <summary>Wet concrete and its dust.</summary>
    public static StepCaution Cement { get; } = new("cement", "Wet concrete burns, and the pain may come late: gloves and boots that keep water out, wash at once. Its dust harms the lungs: open bags low and upwind.",
        new("Preventing Skin Problems from Working with Portland Cement, U.S. Occupational Safety and Health Administration (2008); 29 CFR 1926.1153, silica", "gloves, boots, washing; dust", Standing.Published));

    /// <summary>Bows that stand alone.</summary>
    public static StepCaution Raising { get; } = new("raising", "Bows that are not braced fall like a row of cards: brace the first two both ways before the next, nobody under a bow that is being raised, and stop when the wind moves it in your hands.", Citation.CommonPractice);

    /// <summary>Power tools.</summary>
    public static StepCaution Tools { get; } = new("tools", "Eye and ear protection at saw and drill; clamp short pieces; a bit that catches in tube turns the drill: hold it with both hands.", Citation.CommonPractice);

    /// <summary>Driving posts.</summary>
    public static StepCaution Driving { get; } = new("driving", "Driven posts: eye and ear protection, gloves, and nobody's hand on the post while it is struck.", Citation.CommonPractice);

    /// <summary>All of them.</summary>
    public static ImmutableArray<StepCaution> All { get; } = [Buried, Taut, Hole, Cement, Raising, Tools, Driving];
}
