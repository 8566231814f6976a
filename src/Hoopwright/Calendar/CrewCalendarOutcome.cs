using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Calendar;

/// <summary>What came of planning the days of a crew.</summary>
/// <param name="Calendar">The calendar; null when there is none.</param>
/// <param name="Diagnostics">What was found.</param>
public sealed record CrewCalendarOutcome(CrewCalendar? Calendar, ImmutableArray<Diagnostic> Diagnostics);
