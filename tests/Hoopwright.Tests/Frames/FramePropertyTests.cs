using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Frames;

namespace Hoopwright.Tests.Frames;

/// <summary>What must hold for every frame: random frames in space with springs, releases, rolls, offsets and all kinds of loads.</summary>
public sealed class FramePropertyTests
{
    private const int Cases = 150;
    private static readonly Gen<double> Place = Gen.Double[-3, 3];
    private static readonly Gen<double> Load = Gen.Double[-1000, 1000];
    private static readonly Gen<Vector3> Force = Gen.Select(Load, Load, Load, (x, y, z) => new Vector3(x, y, z));
    private static readonly Gen<SixValues> Six = Gen.Select(Load, Load, Load, Load, Load, Load, (a, b, c, d, e, f) => new SixValues(a, b, c, d, e, f));

    private static readonly Gen<FrameSection> Section =
        from area in Gen.Double[2e-4, 2e-3]
        from iy in Gen.Double[1e-7, 2e-6]
        from iz in Gen.Double[1e-7, 2e-6]
        from j in Gen.Double[1e-7, 2e-6]
        from shear in Gen.Bool
        select new FrameSection(area, iy, iz, j, shear ? area / 2 : 0, shear ? area * 0.6 : 0);

    private static readonly Gen<MemberLoad> OneLoad =
        from start in Force
        from end in Force
        from frame in Gen.Bool
        from projection in Gen.Bool
        from shares in Gen.Select(Gen.Double[0, 0.45], Gen.Double[0.55, 1])
        select new MemberLoad(0, start, end, frame ? LoadFrame.Global : LoadFrame.Member, frame && projection ? LoadPer.Projection : LoadPer.Length, shares.Item1, shares.Item2);

    private static readonly Gen<FrameModel> Frame =
        from count in Gen.Int[4, 7]
        from places in Gen.Select(Place, Place, Place, (x, y, z) => new Vector3(x, y, z)).Array[count]
        from sections in Section.Array[2 * count]
        from rolls in Gen.Double[-3, 3].Array[2 * count]
        from releases in Gen.Int[0, 5].Array[2 * count]
        from arms in Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1], (x, y, z) => new Vector3(x, y, z)).Array[2 * count]
        from extra in Gen.Int[1, count - 2].Array[count]
        from forces in Six.Array[count]
        from spread in OneLoad.Array[2 * count]
        from warmK in Gen.Double[-40, 40].Array[2 * count]
        from spring in Gen.Double[1e6, 1e8]
        from sunkM in Gen.Double[-0.01, 0.01]
        select Build(places, sections, rolls, releases, arms, extra, forces, spread, warmK, spring, sunkM) into model
        where model.Members.Length > 0
        select model;

    [Fact]
    public void Reactions_balance_the_loads() => Frame.Sample(
        model =>
        {
            var state = Solve(model);
            var (forceN, momentNm, scale) = Applied(model);
            for (int node = 0; node < model.Nodes.Length; node++)
            {
                var held = state.Reaction(node);
                var reactionN = new Vector3(held.X, held.Y, held.Z);
                forceN += reactionN;
                momentNm += model.Nodes[node].PlaceM.Cross(reactionN) + new Vector3(held.AboutX, held.AboutY, held.AboutZ);
                scale = Math.Max(scale, reactionN.Size);
            }
            Assert.InRange(forceN.Size, 0, 1e-9 * scale);
            Assert.InRange(momentNm.Size, 0, 1e-8 * scale);
        },
        iter: Cases, threads: 1);

    [Fact]
    public void Work_of_one_load_on_the_movement_of_another_is_mutual() => Gen.Select(Frame, Six, Six, Gen.Int[0, 99], Gen.Int[0, 99]).Sample(
        (model, first, second, a, b) =>
        {
            var (at, other) = (a % model.Nodes.Length, b % model.Nodes.Length);
            double there = Work(Solve(Only(model, new(at, first))), other, second), back = Work(Solve(Only(model, new(other, second))), at, first);
            Assert.Equal(there, back, (1e-8 * Math.Max(Math.Abs(there), Math.Abs(back))) + 1e-12);
        },
        iter: Cases, threads: 1);

    [Fact]
    public void Load_cases_add_up() => Gen.Select(Frame, Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample(
        (model, one, two) =>
        {
            var second = new FrameLoadCase("second") { SelfWeight = new(0.1, 0, -1), Nodes = [new(model.Nodes.Length - 1, new(300, -200, 100, 50, 0, -70))] };
            model = model with { LoadCases = [model.LoadCases[0], second] };
            var alone = Solve(model with { Combinations = [new("1", [new(0, 1)])] }).Displacements;
            var other = Solve(model with { Combinations = [new("2", [new(1, 1)])] }).Displacements;
            var both = Solve(model with { Combinations = [new("3", [new(0, one), new(1, two)])] }).Displacements;
            Same(both, [.. alone.Zip(other, (a, b) => (one * a) + (two * b))], 1e-8);
        },
        iter: Cases, threads: 1);

    [Fact]
    public void Splitting_a_member_changes_nothing_at_the_nodes() => Frame.Sample(
        model =>
        {
            int split = model.Members.Length - 1;
            var member = model.Members[split];
            var startM = model.Nodes[member.From].PlaceM + member.OffsetFromM;
            var endM = model.Nodes[member.To].PlaceM + member.OffsetToM;
            const double Share = 0.4;
            var load = model.LoadCases[0];
            var middle = new FrameNode("middle", startM + ((endM - startM) * Share));
            // The member keeps its two axes, so that its halves lie in one line and carry the same local loads.
            var first = member with { To = model.Nodes.Length, ReleaseTo = Freedoms.None, OffsetToM = default };
            var second = member with { Id = "rest", From = model.Nodes.Length, ReleaseFrom = Freedoms.None, OffsetFromM = default };
            var cut = model with
            {
                Nodes = model.Nodes.Add(middle),
                Members = model.Members.SetItem(split, first).Add(second),
                LoadCases = [load with { Members = [.. load.Members.SelectMany(part => Cut(part, split, model.Members.Length, Share))], Temperatures = [.. load.Temperatures.SelectMany(warm => warm.Member == split ? [warm, warm with { Member = model.Members.Length }] : new[] { warm })] }],
            };
            Same([.. Solve(cut).Displacements.Take(6 * model.Nodes.Length)], Solve(model).Displacements, 1e-7);
        },
        iter: Cases, threads: 1);

    [Fact]
    public void A_mirrored_frame_moves_as_in_the_mirror() => Frame.Sample(
        model => Same(Solve(Mirrored(model)).Displacements, [.. Solve(model).Displacements.Select((value, at) => at % 6 is 0 or 4 or 5 ? -value : value)], 1e-8),
        iter: Cases, threads: 1);

    [Fact]
    public void Other_numbers_of_nodes_and_members_change_nothing() => Gen.Select(Frame, Gen.Int[1, 1000]).Sample(
        (model, seed) =>
        {
            int[] order = [.. Enumerable.Range(0, model.Nodes.Length).OrderBy(at => at * 7919L * seed % 1009)];
            int[] place = new int[order.Length];
            for (int at = 0; at < order.Length; at++)
                place[order[at]] = at;
            var load = model.LoadCases[0];
            int last = model.Members.Length - 1;
            var other = model with
            {
                Nodes = [.. order.Select(at => model.Nodes[at])],
                Members = [.. model.Members.Reverse().Select(member => member with { From = place[member.From], To = place[member.To] })],
                LoadCases =
                [
                    load with
                    {
                        Nodes = [.. load.Nodes.Select(each => each with { Node = place[each.Node] })],
                        Movements = [.. load.Movements.Select(each => each with { Node = place[each.Node] })],
                        Members = [.. load.Members.Select(each => each with { Member = last - each.Member })],
                        Temperatures = [.. load.Temperatures.Select(each => each with { Member = last - each.Member })],
                    },
                ],
            };
            var moved = Solve(other).Displacements;
            Same([.. Enumerable.Range(0, 6 * order.Length).Select(at => moved[(6 * place[at / 6]) + (at % 6)])], Solve(model).Displacements, 1e-8);
        },
        iter: Cases, threads: 1);

    [Fact]
    public void A_frame_turned_in_space_answers_turned() => Gen.Select(Frame, Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[-3, 3]).Sample(
        (model, a, b, c) =>
        {
            var turn = SpaceTurn.Of(a, b, c);
            model = Plain(model);
            var state = Solve(model);
            var turned = Solve(turn.Of(model));
            var expected = Enumerable.Range(0, 2 * model.Nodes.Length).SelectMany(three =>
            {
                var v = turn.Of(new Vector3(state.Displacements[3 * three], state.Displacements[(3 * three) + 1], state.Displacements[(3 * three) + 2]));
                return new[] { v.X, v.Y, v.Z };
            });
            Same(turned.Displacements, [.. expected], 1e-8);
            Same(turned.SectionForces, state.SectionForces, 1e-7);
        },
        iter: Cases, threads: 1);

    [Fact]
    public void A_released_end_carries_nothing_there() => Frame.Sample(
        model =>
        {
            var state = Solve(model);
            double greatest = state.SectionForces.Max(Math.Abs);
            for (int member = 0; member < model.Members.Length; member++)
            {
                for (int freedom = 0; freedom < 6; freedom++)
                {
                    if (((int)model.Members[member].ReleaseFrom >> freedom & 1) != 0)
                        Assert.InRange(Math.Abs(state.SectionForces[(12 * member) + freedom]), 0, 1e-9 * greatest);
                    if (((int)model.Members[member].ReleaseTo >> freedom & 1) != 0)
                        Assert.InRange(Math.Abs(state.SectionForces[(12 * member) + 6 + freedom]), 0, 1e-9 * greatest);
                }
            }
        },
        iter: Cases, threads: 1);

    private static FrameModel Build(
        Vector3[] places, FrameSection[] sections, double[] rolls, int[] releases, Vector3[] arms, int[] extra, SixValues[] forces, MemberLoad[] spread, double[] warmK, double spring, double sunkM)
    {
        int count = places.Length;
        var steel = new FrameMaterial(2e11, 8e10, 1.2e-5, 7850);
        var pairs = Enumerable.Range(0, count - 1).Select(at => (From: at, To: at + 1))
            .Concat(Enumerable.Range(0, count).Select(at => (From: at, To: (at + 1 + extra[at]) % count)))
            .Where(pair => (places[pair.From] - places[pair.To]).Size > 0.5).ToArray();
        // A chain between the built-in first node and the others must be there even where places fall together.
        var members = pairs.Select((pair, at) => new FrameMember
        {
            Id = $"m{at}",
            From = pair.From,
            To = pair.To,
            Section = sections[at],
            Material = steel,
            RollRad = rolls[at],
            ReleaseFrom = releases[at] == 1 ? Freedoms.Ry : releases[at] == 2 ? Freedoms.Ry | Freedoms.Rz : Freedoms.None,
            ReleaseTo = releases[at] == 3 ? Freedoms.Rz : Freedoms.None,
            OffsetFromM = releases[at] == 4 ? arms[at] : default,
            OffsetToM = releases[at] >= 4 ? arms[at] * 0.7 : default,
        }).ToImmutableArray();
        return new()
        {
            // Soft springs everywhere keep every node held, whatever is released.
            Nodes = [.. places.Select((place, at) => new FrameNode($"n{at}", place)
            {
                Held = at == 0 ? Freedoms.All : at == 1 ? Freedoms.Uz | Freedoms.Rx : Freedoms.None,
                Springs = at == 0 ? null : new SixValues(spring, spring, at == 1 ? 0 : spring, at == 1 ? 0 : spring, spring, spring),
            })],
            Members = members,
            LoadCases =
            [
                new("L")
                {
                    SelfWeight = new(0.2, -0.3, -1),
                    Nodes = [.. forces.Select((force, at) => new NodeLoad(at, force))],
                    Members = [.. members.Select((_, at) => spread[at] with { Member = at })],
                    Temperatures = [.. members.Select((_, at) => new MemberTemperature(at, warmK[at], 3 * warmK[at], -5 * warmK[at]))],
                    Movements = [new(1, new(0, 0, sunkM, sunkM, 0, 0))],
                },
            ],
            Combinations = [new("C", [new(0, 1)])],
        };
    }

    private static FrameState Solve(FrameModel model)
    {
        var answer = FrameSolver.Solve(model);
        Assert.DoesNotContain(answer.Diagnostics, found => found.Severity == Hoopwright.Diagnostics.Severity.Error);
        return answer.States[0];
    }

    private static void Same(ImmutableArray<double> found, ImmutableArray<double> expected, double share)
    {
        double greatest = expected.Max(Math.Abs);
        Assert.Equal(expected.Length, found.Length);
        for (int at = 0; at < found.Length; at++)
            Assert.InRange(Math.Abs(found[at] - expected[at]), 0, share * greatest);
    }

    private static double Work(FrameState state, int node, SixValues force)
    {
        var moved = state.Movement(node);
        return Enumerable.Range(0, 6).Sum(freedom => moved[freedom] * force[freedom]);
    }

    private static FrameModel Only(FrameModel model, NodeLoad load) => model with { LoadCases = [new("L") { Nodes = [load] }] };

    /// <summary>Sum of all loads, their moment about the origin, and the greatest of them; by its own integration.</summary>
    private static (Vector3 ForceN, Vector3 MomentNm, double Scale) Applied(FrameModel model)
    {
        var load = model.LoadCases[0];
        Vector3 forceN = default, momentNm = default;
        double scale = 0;
        foreach (var at in load.Nodes)
            Add(new(at.Load.X, at.Load.Y, at.Load.Z), model.Nodes[at.Node].PlaceM, new(at.Load.AboutX, at.Load.AboutY, at.Load.AboutZ));
        for (int at = 0; at < model.Members.Length; at++)
        {
            var member = model.Members[at];
            var startM = model.Nodes[member.From].PlaceM + member.OffsetFromM;
            var runM = model.Nodes[member.To].PlaceM + member.OffsetToM - startM;
            double weightNPerM = member.Material.DensityKgM3 * member.Section.AreaM2 * 9.80665;
            Line(startM, runM, MemberLoad.Uniform(at, load.SelfWeight * weightNPerM), member);
            foreach (var part in load.Members.Where(part => part.Member == at))
                Line(startM, runM, part, member);
        }
        return (forceN, momentNm, scale);

        void Line(Vector3 startM, Vector3 runM, MemberLoad part, FrameMember member)
        {
            const int Pieces = 4;
            for (int piece = 0; piece < Pieces; piece++)
            {
                // Simpson's rule is exact for a straight-lined load times a straight arm.
                for (int point = 0; point < 3; point++)
                {
                    double share = (piece + (point / 2.0)) / Pieces, weight = (point == 1 ? 4.0 : 1.0) / 6 / Pieces * (part.ToShare - part.FromShare) * runM.Size;
                    var q = (part.StartNPerM * (1 - share)) + (part.EndNPerM * share);
                    Add(Global(q, part, runM, member) * weight, startM + (runM * (part.FromShare + ((part.ToShare - part.FromShare) * share))), default);
                }
            }
        }

        void Add(Vector3 force, Vector3 placeM, Vector3 couple)
        {
            forceN += force;
            momentNm += placeM.Cross(force) + couple;
            scale = Math.Max(scale, force.Size);
        }
    }

    private static Vector3 Global(Vector3 q, MemberLoad part, Vector3 runM, FrameMember member)
    {
        var x = runM * (1 / runM.Size);
        if (part.Frame == LoadFrame.Member)
        {
            var (y, z) = Beam.CrossAxes(x, member.RollRad);
            return (x * q.X) + (y * q.Y) + (z * q.Z);
        }
        return part.Per == LoadPer.Length ? q : new(q.X * new Vector3(0, x.Y, x.Z).Size, q.Y * new Vector3(x.X, 0, x.Z).Size, q.Z * new Vector3(x.X, x.Y, 0).Size);
    }

    private static IEnumerable<MemberLoad> Cut(MemberLoad part, int member, int rest, double share)
    {
        if (part.Member != member)
            return [part];
        double at = (share - part.FromShare) / (part.ToShare - part.FromShare);
        if (at >= 1)
            return [part with { FromShare = part.FromShare / share, ToShare = Math.Min(1, part.ToShare / share) }];
        if (at <= 0)
            return [part with { Member = rest, FromShare = (part.FromShare - share) / (1 - share), ToShare = (part.ToShare - share) / (1 - share) }];
        var between = (part.StartNPerM * (1 - at)) + (part.EndNPerM * at);
        return
        [
            part with { EndNPerM = between, FromShare = part.FromShare / share, ToShare = 1 },
            part with { Member = rest, StartNPerM = between, FromShare = 0, ToShare = (part.ToShare - share) / (1 - share) },
        ];
    }

    private static Vector3 AxisX(FrameMember member, FrameModel model)
    {
        var runM = model.Nodes[member.To].PlaceM + member.OffsetToM - model.Nodes[member.From].PlaceM - member.OffsetFromM;
        return runM * (1 / runM.Size);
    }

    /// <summary>The frame in a mirror across x. A mirrored section is the same section with its local y turned about.</summary>
    private static FrameModel Mirrored(FrameModel model)
    {
        var load = model.LoadCases[0];
        return model with
        {
            Nodes = [.. model.Nodes.Select(node => node with { PlaceM = Flip(node.PlaceM) })],
            Members = [.. model.Members.Select(member => SpaceTurn.Follow(member with { OffsetFromM = Flip(member.OffsetFromM), OffsetToM = Flip(member.OffsetToM) }, AxisX(member, model), Flip, -1))],
            LoadCases =
            [
                load with
                {
                    SelfWeight = Flip(load.SelfWeight),
                    Nodes = [.. load.Nodes.Select(each => each with { Load = FlipSix(each.Load) })],
                    Movements = [.. load.Movements.Select(each => each with { Movement = FlipSix(each.Movement) })],
                    Members = [.. load.Members.Select(each => each.Frame == LoadFrame.Global ? each with { StartNPerM = Flip(each.StartNPerM), EndNPerM = Flip(each.EndNPerM) } : each with { StartNPerM = FlipY(each.StartNPerM), EndNPerM = FlipY(each.EndNPerM) })],
                    Temperatures = [.. load.Temperatures.Select(each => each with { GradientYKPerM = -each.GradientYKPerM })],
                },
            ],
        };

        static Vector3 Flip(Vector3 v) => new(-v.X, v.Y, v.Z);
        static Vector3 FlipY(Vector3 v) => new(v.X, -v.Y, v.Z);
        static SixValues FlipSix(SixValues v) => new(-v.X, v.Y, v.Z, v.AboutX, -v.AboutY, -v.AboutZ);
    }

    /// <summary>Without what is tied to the global axes: springs alike in all directions, all held where any is, loads per length.</summary>
    private static FrameModel Plain(FrameModel model)
    {
        var load = model.LoadCases[0];
        return model with
        {
            Nodes = [.. model.Nodes.Select((node, at) => node with { Held = at < 2 ? Freedoms.All : Freedoms.None, Springs = at < 2 ? null : node.Springs })],
            LoadCases = [load with { Members = [.. load.Members.Select(each => each with { Per = LoadPer.Length })] }],
        };
    }
}
