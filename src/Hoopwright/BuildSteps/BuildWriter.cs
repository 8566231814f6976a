using System.Collections.Immutable;
using Hoopwright.AsBuilt;
using Hoopwright.Cover;
using Hoopwright.CoverSteps;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Takeoff;

namespace Hoopwright.BuildSteps;

/// <summary>Writes the steps of the build in an order in which they can be done, with this tunnel's own numbers.</summary>
internal sealed partial class BuildWriter(Tunnel tunnel, CoverPlan cover, FasteningPlan fastening, CrewSkill skill, StepShares shares) : PhraseWriter(tunnel.Units)
{
    private static readonly Citation Manual = new("High Tunnels, University of Vermont Center for Sustainable Agriculture (2007)", "p. 44", Standing.Published);

    // Concrete gains little strength under about 40 °F, and frost ruins it while it is fresh (ACI 306R, Guide to Cold Weather Concreting, from memory).
    private static readonly Temperature ConcreteColdest = Temperature.FromFahrenheit(40);

    // Film pulls at every post of the tunnel: common practice, no source.
    private static readonly TimeSpan BeforeFilm = TimeSpan.FromHours(72);

    // A jig holds a post 12 to 24 h while its concrete sets (High Tunnels, University of Vermont, p. 44).
    private static readonly TimeSpan Set = TimeSpan.FromHours(24);

    // From memory: more moves a bow in the hands that raise it.
    private static readonly StepWeather CalmEnough = StepWeather.Any with { Wind = Speed.FromMilesPerHour(12), Gust = Speed.FromMilesPerHour(20) };

    private static readonly StepWeather Placing = StepWeather.Any with { Coldest = ConcreteColdest, Dry = true };

    // How far a face stands off its string: from memory.
    private static readonly Length OffString = Length.FromInches(0.125);

    private readonly AsBuiltTolerances near = AsBuiltTolerances.Of(tunnel.Plan, tunnel.Length, new Answers(tunnel.Units));

    private readonly List<BuildStep> written = [];

    private IEnumerable<EndWall> Framed => tunnel.Ends.Where(end => end.Closing == EndClosing.Framed);

    private int Bows => tunnel.Stations.Length;

    private string DiagonalsWithin => Tape(near.Diagonals);

    /// <summary>From bare ground to the last look.</summary>
    internal ImmutableArray<BuildStep> Build()
    {
        Ground();
        Frame();
        foreach (EndWall end in tunnel.Ends) End(end);
        Sides();
        Film(isNew: true);
        return InOrder();
    }

    /// <summary>New film on a tunnel that stands.</summary>
    internal ImmutableArray<BuildStep> Recover()
    {
        OldFilm();
        Film(isNew: false);
        return InOrder();
    }

    private void Add(BuildStep step)
    {
        if (!step.Tasks.IsEmpty) written.Add(step);
    }

    // Steps that a tunnel has no use for are not written, nor waited for.
    private ImmutableArray<BuildStep> InOrder()
    {
        HashSet<string> known = [.. written.Select(step => step.Id)], done = [];
        List<BuildStep> open = [.. written.Select(step => step with { After = [.. step.After.Where(wait => known.Contains(wait.StepId)).DistinctBy(wait => wait.StepId)], Work = step.Work == WorkSpan.None ? StepTimes.Of(step.Tasks, skill) : step.Work })];
        var ordered = ImmutableArray.CreateBuilder<BuildStep>();
        while (open.Find(step => step.After.All(wait => done.Contains(wait.StepId))) is { } next)
        {
            open.Remove(next);
            done.Add(next.Id);
            ordered.Add(next);
        }
        return open.Count == 0 ? Fewest(ordered.ToImmutable()) : throw new InvalidOperationException($"Steps wait for each other: {string.Join(", ", open.Select(step => step.Id))}.");
    }

    // What another prerequisite waits for anyway is not named.
    private static ImmutableArray<BuildStep> Fewest(ImmutableArray<BuildStep> steps)
    {
        Dictionary<string, HashSet<string>> before = [];
        foreach (BuildStep step in steps) before[step.Id] = [.. step.After.SelectMany(wait => before[wait.StepId].Append(wait.StepId))];
        return [.. steps.Select(step => step with { After = [.. step.After.Where(wait => wait.Wait > TimeSpan.Zero || !step.After.Any(other => before[other.StepId].Contains(wait.StepId)))] })];
    }

    private static StepWait After(string step) => StepWait.For(step);

    private static StepWait Hard(string concrete, TimeSpan wait) => new(concrete, wait, Phrase.Of("Its concrete sets for {0} h first.", Text((int)wait.TotalHours)));

    private static ImmutableArray<StepTask> Tasks(params ReadOnlySpan<StepTask> tasks)
    {
        var some = ImmutableArray.CreateBuilder<StepTask>();
        foreach (StepTask task in tasks)
        {
            if (task.Count > 0) some.Add(task);
        }
        return some.ToImmutable();
    }

    private static ImmutableArray<StepPart> Says(params IEnumerable<Phrase> does) => [new(null, [.. does])];

    private static ImmutableArray<Tool> Tools(params ReadOnlySpan<(string Name, int Count)> tools)
    {
        var all = ImmutableArray.CreateBuilder<Tool>();
        foreach ((string name, int count) in tools) all.Add(new(name, count));
        return all.ToImmutable();
    }

    private static decimal Count(ImmutableArray<MaterialLine> lines, string item) => lines.Where(line => line.Item == item).Sum(line => line.Quantity);

    private static int Pieces(ImmutableArray<MaterialLine> lines) => lines.Sum(line => line.Pieces.Length);

    private IEnumerable<Member> Of(MemberRole role) => tunnel.Members.Where(member => member.Role == role);
}
