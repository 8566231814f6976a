using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;
using Hoopwright.Sheets.Words;
using Hoopwright.Testing;

namespace Hoopwright.Sheets.Tests.Packets;

/// <summary>Holds that a crew reads its site book in Spanish to the last sentence.</summary>
public sealed class SiteBookWordsTests
{
    private static readonly CrewWords Words = CrewWords.Of("es");

    public static TheoryData<string, double> Stories { get; } = Of([.. SamplePlans.GoodExamples]);

    [Theory]
    [MemberData(nameof(Stories))]
    public void Everything_that_can_be_said_of_a_measured_tunnel_is_known_in_Spanish(string example, double off)
    {
        Plan plan = SamplePlans.Example(example);
        PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(off == 0 ? plan : plan with { SiteBook = [.. Entries(plan, off)] }, false, []), depth: WorkDepth.Orders);
        SortedSet<string> unknown = new(StringComparer.Ordinal);
        foreach (Measurable thing in planned.AsBuilt?.Measurements.Measurable ?? Measurables.Of(planned.Tunnel!, AsBuiltTolerances.Of(plan, planned.Tunnel!.Length, new Answers(planned.Units))))
        {
            Look(thing.What);
            Look(thing.How);
        }
        foreach (CutCheck check in planned.Checks!.All)
        {
            LookAll(check.Says);
            foreach (CheckPiece piece in check.Changed) Look(piece.Place);
        }
        foreach (Deviation deviation in planned.AsBuilt?.Deviations ?? [])
        {
            LookAll(deviation.PutRight);
            if (deviation.OrElse is { } orElse) Look(orElse.Pattern);
        }
        Assert.Equal(off != 0, planned.AsBuilt?.Deviations.Any(each => each.IsOut) ?? false);
        Assert.True(unknown.Count == 0, string.Join('\n', unknown));

        void Look(string text)
        {
            if (!Words.Knows(text)) unknown.Add(text);
        }

        void LookAll(IEnumerable<Phrase> phrases)
        {
            foreach (Phrase phrase in phrases)
            {
                Look(phrase.Pattern);
                // Names of pieces and checks are names in every language, and a length is a length.
                foreach (string value in phrase.Values.Where(value => value.Split(' ') is { Length: > 1 } parts && parts.Any(part => part.Length > 3))) Look(value);
            }
        }
    }

    // Every thing measured, each off by as many tolerances.
    private static IEnumerable<SiteBookEntry> Entries(Plan plan, double off)
    {
        PlannedTunnel planned = TunnelWorks.Plan(new PlanReading(plan, false, []), depth: WorkDepth.Layout);
        AsBuiltTolerances near = AsBuiltTolerances.Of(plan, planned.Tunnel!.Length, new Answers(planned.Units));
        return Measurables.Of(planned.Tunnel, near).Select((thing, at) => new SiteBookEntry
        {
            Id = FormattableString.Invariant($"20260418T08{at / 60:00}{at % 60:00}000Z-abcdefgh"),
            Kind = SiteBookKind.Measurement,
            Of = thing.Name,
            Value = FormattableString.Invariant($"{(thing.Planned + (thing.Tolerance * off)).Millimetres:0.0} mm"),
        });
    }

    private static TheoryData<string, double> Of(string[] examples)
    {
        TheoryData<string, double> all = [];
        foreach (string example in examples)
        {
            foreach (double off in (double[])[0, 1.5, -1.5]) all.Add(example, off);
        }
        return all;
    }
}
