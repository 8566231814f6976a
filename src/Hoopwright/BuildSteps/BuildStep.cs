using System.Collections.Immutable;
using Hoopwright.BeforeCuts;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <summary>One step of the build: a piece of work that one crew begins and ends before the steps that wait for it begin.</summary>
public sealed record BuildStep
{
    /// <summary>Its name, unique in a plan and the same whenever the same plan is read again.</summary>
    public required string Id { get; init; }

    /// <summary>The stage of the build.</summary>
    public required BuildStage Stage { get; init; }

    /// <summary>What it is, in short.</summary>
    public required Phrase Title { get; init; }

    /// <summary>What it is good for.</summary>
    public required Phrase Purpose { get; init; }

    /// <summary>What must be done before it starts.</summary>
    public required ImmutableArray<StepWait> After { get; init; }

    /// <summary>What its work is made of; never empty.</summary>
    public required ImmutableArray<StepTask> Tasks { get; init; }

    /// <summary>Work for the crew of the plan: the sum over <see cref="Tasks"/>, at its skill.</summary>
    public WorkSpan Work { get; init; } = WorkSpan.None;

    /// <summary>Fewer people than this cannot do it.</summary>
    public required int LeastPeople { get; init; }

    /// <summary>More people than this get in each other's way.</summary>
    public required int BestPeople { get; init; }

    /// <summary>Tools it takes.</summary>
    public required ImmutableArray<Tool> Tools { get; init; }

    /// <summary>What it uses up: parts of the lines of the takeoff, under their names.</summary>
    public ImmutableArray<MaterialLine> Materials { get; init; } = [];

    /// <summary>The drawings to have at hand, by their names in the packet.</summary>
    public ImmutableArray<string> Drawings { get; init; } = [];

    /// <summary>What to do, part by part in order.</summary>
    public required ImmutableArray<StepPart> Parts { get; init; }

    /// <summary>What good looks like, measurable.</summary>
    public ImmutableArray<Phrase> Good { get; init; } = [];

    /// <summary>What must be looked at and signed before any step goes on that waits for this one; null where nothing must.</summary>
    public Phrase? Hold { get; init; }

    /// <summary>What to ask the site book before it begins, since it cuts or pours what cannot be made longer or moved again.</summary>
    public ImmutableArray<CutCheckKind> Checks { get; init; } = [];

    /// <summary>Cautions that this step bears.</summary>
    public ImmutableArray<StepCaution> Cautions { get; init; } = [];

    /// <summary>What the weather must be like while it lasts.</summary>
    public StepWeather Weather { get; init; } = StepWeather.Any;

    /// <summary>True when it must end on the day on which it starts: left half done it would be lost or would hurt.</summary>
    public bool InOneGo { get; init; }

    /// <summary>What may be left overnight, half done or done, and in what wind.</summary>
    public required Phrase Overnight { get; init; }

    /// <summary>Wind that what is left overnight stands up to; null where wind does it no harm or it is not known.</summary>
    public Speed? OvernightWind { get; init; }

    /// <summary>Where the way of doing it comes from.</summary>
    public Citation Source { get; init; } = Citation.CommonPractice;
}
