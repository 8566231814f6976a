using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Scheduling;

namespace Hoopwright.Testing;

/// <summary>Random scheduling jobs of the size of a tunnel's, with and without days; each can be done.</summary>
public static class RandomSchedules
{
    /// <summary>The jobs.</summary>
    public static Gen<ScheduleJob> Jobs { get; } =
        from amounts in Gen.Int[1, 6].Array[1, 3]
        from durations in Gen.Int[0, 8].Array[4, 22]
        from needs in Gen.Int[0, 6].Array[durations.Length * amounts.Length]
        from waits in Gen.Int[0, 99].Array[durations.Length * 3]
        from kinds in Gen.Int[0, 9].Array[durations.Length]
        from day in Gen.Int[0, 4]
        from good in Gen.Int[0, 20].Array[1, 8]
        select Job(amounts, durations, needs, waits, kinds, day == 0 ? null : 7 + day, good);

    private static ScheduleJob Job(int[] amounts, int[] durations, int[] needs, int[] waits, int[] kinds, int? day, int[] good) => new(
        [.. amounts.Select((amount, at) => new ScheduleResource(Resource(at), amount))],
        [
            .. durations.Select((duration, at) => new ScheduleActivity(
                Id(at), duration,
                amounts.Select((amount, resource) => (resource, need: Math.Min(amount, needs[(at * amounts.Length) + resource]))).Where(pair => pair.need > 0).ToImmutableDictionary(pair => Resource(pair.resource), pair => pair.need),
                [.. Enumerable.Range(0, 3).Select(which => waits[(3 * at) + which]).Where(earlier => earlier < at).Distinct().Select(Id)],
                day is not null && kinds[at] is 1 or 2, day is not null && kinds[at] == 0)),
        ],
        // The last of the good days come late enough for everything.
        day, [.. good, .. Enumerable.Range(60, 40)]);

    private static string Id(int at) => FormattableString.Invariant($"a{at}");

    private static string Resource(int at) => FormattableString.Invariant($"r{at}");
}
