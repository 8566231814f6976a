using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Quantities;

namespace Hoopwright.Testing.Frames;

/// <summary>
/// A row of bows for tests and benchmarks: legs of 1 m, a semicircle of R 3.048 m, three purlins, four braces at the ends, hinged
/// feet; 57 nodes a bow. Tubes of 2.375 × 0.095 in and 1.315 × 0.065 in, bows 4 ft apart; nu 0. Invented.
/// </summary>
public sealed class TunnelRow
{
    private const int LegChords = 4;
    private const int ArcChords = 48;
    private const int PerBow = (2 * LegChords) + ArcChords + 1;
    private const int PerBay = 4;
    private const double LegM = 1, RadiusM = 3.048, BayM = 1.2192, PressurePa = 500, GustAlongN = 400;
    private static readonly int[] Purlins = [16, 28, 40];
    private static readonly FrameMaterial Steel = new(2e11, 1e11, 1.2e-5, 7850);

    private readonly List<FrameNode> _nodes = [];
    private readonly List<FrameMember> _members = [];
    private readonly List<(int Bow, int Chord)> _bowMembers = [];

    private TunnelRow(int bows)
    {
        Bows = bows;
        var tube = Tube(2.375, 0.095);
        var thin = Tube(1.315, 0.065);
        for (int bow = 0; bow < bows; bow++)
        {
            for (int at = 0; at < PerBow; at++)
            {
                _nodes.Add(new($"b{bow + 1}.{at}", Place(bow, at)) { Held = at is 0 or PerBow - 1 ? Freedoms.Shifts : Freedoms.None });
                if (at == 0)
                    continue;
                _bowMembers.Add((bow, at - 1));
                Member(Node(bow, at - 1), Node(bow, at), tube);
            }
        }
        for (int bay = 0; bay + 1 < bows; bay++)
        {
            foreach (int place in Purlins)
                Run(Node(bay, place), Node(bay + 1, place), thin);
        }
        if (bows < 2)
            return;
        Run(Node(0, LegChords), Node(1, Purlins[0]), thin);
        Run(Node(0, PerBow - 1 - LegChords), Node(1, Purlins[2]), thin);
        Run(Node(bows - 1, LegChords), Node(bows - 2, Purlins[0]), thin);
        Run(Node(bows - 1, PerBow - 1 - LegChords), Node(bows - 2, Purlins[2]), thin);
    }

    private int Bows { get; }

    /// <summary>A row under wind across and along, with its own weight.</summary>
    public static FrameModel InWind(int bows, double times = 1)
    {
        var row = new TunnelRow(bows);
        var loads = row._bowMembers.Select((at, member) => MemberLoad.Uniform(member, new(0, 0, -times * PressurePa * row.WidthM(at.Bow) * Coefficient(at.Chord)), LoadFrame.Member));
        var along = Purlins.Select(place => new NodeLoad(row.Node(0, place), new(0, times * GustAlongN, 0, 0, 0, 0)));
        return row.Model(new("wind") { SelfWeight = new(0, 0, -1), Members = [.. loads], Nodes = [.. along] });
    }

    /// <summary>A row under even snow on its plan, with its own weight.</summary>
    public static FrameModel InSnow(int bows)
    {
        var row = new TunnelRow(bows);
        var loads = row._bowMembers.Select((at, member) => MemberLoad.Uniform(member, new(0, 0, -PressurePa * row.WidthM(at.Bow)), LoadFrame.Global, LoadPer.Projection));
        return row.Model(new("snow") { SelfWeight = new(0, 0, -1), Members = [.. loads] });
    }

    /// <summary>Index of the crown's node of a bow, both from 0.</summary>
    public static int Crown(int bow) => (bow * PerBow) + Purlins[1];

    private static FrameSection Tube(double outsideIn, double wallIn) => FrameSection.Of(new RoundTube(Length.FromInches(outsideIn), Length.FromInches(wallIn)));

    private static Vector3 Place(int bow, int at)
    {
        double y = bow * BayM;
        if (at <= LegChords)
            return new(-RadiusM, y, LegM * at / LegChords);
        if (at >= LegChords + ArcChords)
            return new(RadiusM, y, LegM * (PerBow - 1 - at) / LegChords);
        double angle = Math.PI * (1 - ((double)(at - LegChords) / ArcChords));
        return new(RadiusM * Math.Cos(angle), y, LegM + (RadiusM * Math.Sin(angle)));
    }

    /// <summary>Wind by quarters: pushed on the windward one, lifted over the top, drawn on the lee.</summary>
    private static double Coefficient(int chord) => chord < LegChords + (ArcChords / 4) ? 0.5 : chord < LegChords + (3 * ArcChords / 4) ? -1.2 : -0.5;

    private double WidthM(int bow) => bow == 0 || bow == Bows - 1 ? BayM / 2 : BayM;

    private int Node(int bow, int at) => (bow * PerBow) + at;

    private void Run(int from, int to, FrameSection section)
    {
        int last = from;
        for (int part = 1; part <= PerBay; part++)
        {
            int next = to;
            if (part < PerBay)
            {
                next = _nodes.Count;
                _nodes.Add(new($"p{next}", _nodes[from].PlaceM + ((_nodes[to].PlaceM - _nodes[from].PlaceM) * ((double)part / PerBay))));
            }
            Member(last, next, section);
            last = next;
        }
    }

    private void Member(int from, int to, FrameSection section) =>
        _members.Add(new() { Id = $"m{_members.Count}", From = from, To = to, Section = section, Material = Steel });

    private FrameModel Model(FrameLoadCase load) => new()
    {
        Nodes = [.. _nodes],
        Members = [.. _members],
        LoadCases = [load],
        Combinations = [new("C", [new(0, 1)])],
    };
}
