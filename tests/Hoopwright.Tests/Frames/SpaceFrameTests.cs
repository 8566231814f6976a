using Hoopwright.Frames;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>Frames in space from textbooks, in kips and inches and in the books' own axes, rolled to the books' local axes.</summary>
public sealed class SpaceFrameTests
{
    private const string Logan58 = "Logan, A First Course in the Finite Element Method, 4th ed., Thomson, Example 5.8, as quoted by a public frame program (github.com)";
    private const string Logan530 = "Logan, A First Course in the Finite Element Method, 4th ed., Thomson, Problem 5.30, as quoted by a public frame program (github.com)";
    private const string Logan558 = "Logan, A First Course in the Finite Element Method, 4th ed., Thomson, Problem 5.58, as quoted by a public frame program (github.com)";
    private const string Kassimali84 = "Kassimali, Matrix Analysis of Structures, 2nd ed., Cengage, Example 8.4 (from memory)";
    private const string Independent = "an independent matrix solver";

    [Fact]
    public void Three_arms_meet()
    {
        var frame = new FrameBuilder { Section = new(10, 100, 100, 50), Material = new(30000, 10000) };
        int free = frame.Node(0, 0, 0);
        frame.Member(frame.Node(-100, 0, 0, Freedoms.All), free);
        frame.Member(frame.Node(0, 0, -100, Freedoms.All), free);
        frame.Member(frame.Node(0, -100, 0, Freedoms.All), free);
        frame.Push(free, fy: -50, mx: -1000);
        var moved = frame.Solve().Movement(free);
        double[] published = [7.098e-5, -0.014, -2.352e-3, -3.996e-3, 1.78e-5, -1.033e-4];
        double[] independent = [7.09826e-5, -1.399513e-2, -2.351889e-3, -3.996090e-3, 1.780069e-5, -1.033429e-4];
        for (int freedom = 0; freedom < 6; freedom++)
        {
            Published.Check(Logan58, $"freedom {freedom + 1}", published[freedom], moved[freedom], 5e-4 * Math.Abs(published[freedom]), "printed digits");
            Published.Check(Independent, $"freedom {freedom + 1}", independent[freedom], moved[freedom], 1e-6 * Math.Abs(independent[freedom]), "printed digits");
        }
    }

    [Fact]
    public void A_gable_frame()
    {
        var frame = new FrameBuilder { Section = new(12, 200, 200, 1), Material = new(30000, 10000) };
        (double X, double Z)[] places = [(0, 0), (0, 360), (180, 480), (420, 480), (600, 360), (600, 0)];
        int[] nodes = [.. places.Select((place, at) => frame.Node(place.X, 0, place.Z, at is 0 or 5 ? Freedoms.All : Freedoms.None))];
        for (int at = 0; at < 5; at++)
            frame.Member(nodes[at], nodes[at + 1]);
        frame.Push(nodes[2], fz: -30);
        frame.Push(nodes[3], fz: -30);
        var state = frame.Solve(planar: true);
        Published.Check(Logan530, "thrust", 11.6877, state.Reaction(0).X, 6e-5, "printed digits");
        Published.Check(Logan530, "upright", 30, state.Reaction(0).Z, 1e-6, "printed digits");
        Published.Check(Logan530, "moment at the foot", 1810.0745, Math.Abs(state.Reaction(0).AboutY), 6e-5, "printed digits");
        Published.Check(Independent, "node 3 across", 3.895894e-3, state.Movement(2).X, 1e-8, "printed digits");
        Published.Check(Independent, "node 3 up", -6.666757, state.Movement(2).Z, 1e-6, "printed digits");
        Published.Check(Independent, "node 3 turn", 3.199973e-2, state.Movement(2).AboutY, 1e-8, "printed digits; the book's z is our -y");
    }

    [Fact]
    public void A_frame_round_two_corners()
    {
        var frame = new FrameBuilder { Section = new(100, 200, 1000, 100), Material = new(30000, 10000) };
        int first = frame.Node(0, 0, 0, Freedoms.All), second = frame.Node(120, 0, 0), third = frame.Node(120, 0, -120), last = frame.Node(120, -240, -120, Freedoms.All);
        frame.Member(first, second);
        frame.Member(second, third);
        frame.Member(third, last);
        frame.Push(second, fy: -5, mx: -1200);
        frame.Push(third, fz: 40);
        var state = frame.Solve();
        Published.Check(Logan558, "node 2 y", -0.063, state.Movement(second).Y, 1e-3, "printed to three decimals");
        Published.Check(Logan558, "node 3 z", 1.825, state.Movement(third).Z, 4e-3, "printed to three decimals, 0.2 % off the independent solver");
        Published.Check(Independent, "node 2 y", -0.062232, state.Movement(second).Y, 6e-7, "printed digits");
        Published.Check(Independent, "node 3 z", 1.821762, state.Movement(third).Z, 6e-7, "printed digits");
    }

    [Fact]
    public void Three_rolled_members_meet()
    {
        var frame = new FrameBuilder { Section = new(32.9, 236, 716, 15.1), Material = new(29000, 11500) };
        int free = frame.Node(0, 0, 0);
        int loaded = frame.Member(frame.Node(-240, 0, 0, Freedoms.All), free);
        frame.RollRad = Math.PI / 2;
        frame.Member(frame.Node(0, -240, 0, Freedoms.All), free);
        // The book's vertical is y, so that its zero roll of a member along z is half a turn from ours.
        frame.RollRad = Math.PI + (Math.PI / 6);
        frame.Member(frame.Node(0, 0, -240, Freedoms.All), free);
        frame.Spread(loaded, y: -0.25);
        frame.Push(free, mx: -1800, mz: 1800);
        var moved = frame.Solve().Movement(free);
        double[] published = [-1.3522, -2.7965, -1.8120, -3.0021, 1.0569, 6.4986], independent = [-1.352245, -2.796532, -1.811980, -3.002109, 1.056911, 6.498580];
        for (int freedom = 0; freedom < 6; freedom++)
        {
            Published.Check(Kassimali84, $"freedom {freedom + 1}", published[freedom], 1000 * moved[freedom], 6e-5, "printed digits");
            Published.Check(Independent, $"freedom {freedom + 1}", independent[freedom], 1000 * moved[freedom], 1e-6, "printed digits");
        }
    }
}
