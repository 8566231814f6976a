using System.Collections.Immutable;
using Hoopwright.BuildSteps;
using Hoopwright.Takeoff;

namespace Hoopwright.Calendar;

/// <summary>A day of the crew.</summary>
/// <param name="Day">When, and how many come.</param>
/// <param name="Shifts">What is worked on, by its beginning.</param>
/// <param name="Tools">Tools to take along: of each the most that any steps of the day use at once.</param>
/// <param name="Materials">What the steps that start on this day use up, to be loaded.</param>
public sealed record CrewDay(WorkDay Day, ImmutableArray<StepShift> Shifts, ImmutableArray<Tool> Tools, ImmutableArray<MaterialLine> Materials);
