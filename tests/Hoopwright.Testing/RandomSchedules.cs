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

    /// <summary>Jobs over days of their own lengths, with amounts by day, activities that go on at the pace of who is there, times at which some may not start, and waits by the clock; not all can be done.</summary>
    public static Gen<ScheduleJob> CalendarJobs { get; } =
        from lengths in Gen.Int[1, 6].Array[8, 14]
        from people in Gen.Int[1, 4].Array[lengths.Length]
        from tools in Gen.Int[1, 2].Array[lengths.Length]
        from work in Gen.Int[0, 9].Array[3, 9]
        from kinds in Gen.Int[0, 9].Array[work.Length * 4]
        from waits in Gen.Int[0, 20].Array[work.Length * 2]
        from fit in Gen.Int[0, 3].Array[lengths.Sum()]
        from night in Gen.Int[3, 9]
        select CalendarJob(lengths, people, tools, work, kinds, waits, fit, night);

    private static ScheduleJob CalendarJob(int[] lengths, int[] people, int[] tools, int[] work, int[] kinds, int[] waits, int[] fit, int night)
    {
        int[] dayOf = [.. lengths.SelectMany((length, day) => Enumerable.Repeat(day, length))];
        return new ScheduleJob(
            [new(Resource(0), people.Max()) { AmountByDay = [.. people] }, new(Resource(1), tools.Max()) { AmountByDay = [.. tools] }],
            [.. work.Select((each, at) => Activity(each, at))], null, [.. Enumerable.Range(0, lengths.Length).Where(day => day % 3 != 1)])
        {
            DayLengths = [.. lengths],
        };

        ScheduleActivity Activity(int hours, int at)
        {
            int least = 1 + (kinds[4 * at] % 2), best = least + (kinds[(4 * at) + 1] % 3), tool = Math.Min(kinds[(4 * at) + 2] % 3, tools.Max()), kind = kinds[(4 * at) + 3];
            bool minds = kind % 2 == 1;
            ImmutableDictionary<string, int> needs = tool == 0 ? ImmutableDictionary<string, int>.Empty : ImmutableDictionary<string, int>.Empty.Add(Resource(1), tool);
            SchedulePace? pace = kind < 6 ? new SchedulePace(Resource(0), [.. dayOf.Select((day, time) => people[day] < least || (kind < 3 && fit[time] == 0) ? 0 : Math.Min(best, people[day]))]) : null;
            return new ScheduleActivity(Id(at), pace is null ? hours / 2 : hours, pace is null ? needs.Add(Resource(0), Math.Min(least, people.Max())) : needs, Earlier(0), kind is 4 or 8, kind is 9, pace)
            {
                MayStart = minds ? [.. fit.Select(each => each > 1)] : [],
                Waits = [.. Earlier(1).Select(id => new ScheduleWait(id, Ready(kind)))],
            };

            ImmutableArray<string> Earlier(int which) => waits[(2 * at) + which] < at ? [Id(waits[(2 * at) + which])] : [];
        }

        // So many hours by the clock, nights counted: each time stands for the hour after it, the end of a day for the evening.
        ImmutableArray<int> Ready(int hours) =>
            [.. Enumerable.Range(0, dayOf.Length + 1).Select(end => Enumerable.Range(end, dayOf.Length + 1 - end).FirstOrDefault(start => start == dayOf.Length || Clock(start) >= (end == 0 ? 0 : Clock(end - 1) + 1) + hours, dayOf.Length))];

        int Clock(int time) => time + (night * dayOf[time]);
    }

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
