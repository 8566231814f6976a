using System.Globalization;
using System.Text;
using Hoopwright.Frames;

namespace Hoopwright.Testing.Frames;

/// <summary>
/// Writes a frame of tubes as an input deck of CalculiX (N, mm, MPa). Two chords that follow each other make one curved element of
/// three nodes, which is expanded into a solid; Poisson's ratio is 0, so that a held end is held as a beam's is.
/// </summary>
public sealed class CalculixDeck
{
    private readonly FrameModel _model;
    private readonly StringBuilder _text = new();
    private int _nodes;

    private CalculixDeck(FrameModel model) => _model = model;

    /// <summary>Writes a model whose members are round tubes of nu 0, held but not sprung, with loads that are forces.</summary>
    /// <param name="model">The model; its first combination is taken.</param>
    /// <param name="large">True for large displacements instead of linear.</param>
    public static string Write(FrameModel model, bool large = false) => new CalculixDeck(model).Deck(large);

    private string Deck(bool large)
    {
        _nodes = _model.Nodes.Length;
        var elements = Elements();
        Line("*NODE,NSET=NALL");
        for (int at = 0; at < _model.Nodes.Length; at++)
            Node(at + 1, _model.Nodes[at].PlaceM);
        foreach (var element in elements.Where(element => element.Middle >= _model.Nodes.Length))
            Node(element.Middle + 1, (_model.Nodes[element.From].PlaceM + _model.Nodes[element.To].PlaceM) * 0.5);
        var sets = elements.GroupBy(element => (element.Member.Section, element.Member.Material, element.Normal)).ToArray();
        int number = 0;
        for (int set = 0; set < sets.Length; set++)
        {
            Line($"*ELEMENT,TYPE=B32R,ELSET=E{set}");
            foreach (var element in sets[set])
                Line($"{++number},{element.From + 1},{element.Middle + 1},{element.To + 1}");
        }
        for (int set = 0; set < sets.Length; set++)
            Section(set, sets[set].Key);
        Supports();
        Step(large);
        return _text.ToString();
    }

    /// <summary>Pairs of members in line, and single ones with a middle node of their own.</summary>
    private List<(int From, int Middle, int To, FrameMember Member, Vector3 Normal)> Elements()
    {
        var elements = new List<(int, int, int, FrameMember, Vector3)>();
        int[] uses = new int[_model.Nodes.Length];
        foreach (var member in _model.Members)
        {
            if (member.TensionOnly || member.ReleaseFrom != Freedoms.None || member.ReleaseTo != Freedoms.None || member.OffsetFromM != default || member.OffsetToM != default)
                throw new InvalidOperationException($"Member {member.Id} has what the deck cannot say.");
            uses[member.From]++;
            uses[member.To]++;
        }
        for (int at = 0; at < _model.Members.Length; at++)
        {
            var member = _model.Members[at];
            bool pair = at + 1 < _model.Members.Length && _model.Members[at + 1].From == member.To && uses[member.To] == 2
                && _model.Members[at + 1].Section == member.Section && _model.Nodes[member.To].Held == Freedoms.None | _model.Analysis.Planar;
            int to = pair ? _model.Members[at + 1].To : member.To;
            elements.Add((member.From, pair ? member.To : _nodes++, to, member, Normal(member)));
            at += pair ? 1 : 0;
        }
        return elements;
    }

    /// <summary>Any direction across the member that its neighbours in a bow share.</summary>
    private Vector3 Normal(FrameMember member)
    {
        var run = _model.Nodes[member.To].PlaceM - _model.Nodes[member.From].PlaceM;
        return Math.Abs(run.Y) < 0.3 * run.Size ? new(0, 1, 0) : Math.Abs(run.X) < 0.9 * run.Size ? new(1, 0, 0) : new(0, 0, 1);
    }

    private void Section(int set, (FrameSection Section, FrameMaterial Material, Vector3 Normal) key)
    {
        var (section, material, normal) = key;
        if (Math.Abs((2 * material.ShearPa) - material.YoungPa) > 1e-6 * material.YoungPa || section.IyM4 != section.IzM4)
            throw new InvalidOperationException("The deck is for round tubes with nu 0.");
        // R² + r² = 4I/A and R² − r² = A/π.
        double sumM2 = 4 * section.IyM4 / section.AreaM2, differenceM2 = section.AreaM2 / Math.PI;
        double outerM = Math.Sqrt((sumM2 + differenceM2) / 2), innerM = Math.Sqrt((sumM2 - differenceM2) / 2);
        Line($"*MATERIAL,NAME=M{set}");
        Line("*ELASTIC");
        Line($"{Number(material.YoungPa / 1e6)},0.");
        Line($"*BEAM SECTION,ELSET=E{set},MATERIAL=M{set},SECTION=PIPE");
        Line($"{Number(1000 * outerM)},{Number(1000 * (outerM - innerM))}");
        Line($"{Number(normal.X)},{Number(normal.Y)},{Number(normal.Z)}");
    }

    private void Supports()
    {
        Line("*BOUNDARY");
        for (int at = 0; at < _model.Nodes.Length; at++)
        {
            if (_model.Nodes[at].Springs is not null)
                throw new InvalidOperationException("The deck cannot say springs.");
            for (int freedom = 0; freedom < 6; freedom++)
            {
                if (((int)_model.Nodes[at].Held >> freedom & 1) != 0)
                    Line($"{at + 1},{freedom + 1}");
            }
        }
        // A planar model is held across at every node; turning out of its plane follows.
        if (_model.Analysis.Planar)
            Line("NALL,2");
    }

    private void Step(bool large)
    {
        if (large)
        {
            Line("*STEP,NLGEOM,INC=100");
            Line("*STATIC");
            Line("0.1,1.,1e-5,0.1");
        }
        else if (_model.Analysis.Kind == FrameAnalysisKind.Buckling)
        {
            Line("*STEP");
            Line("*BUCKLE");
            Line($"{_model.Analysis.Modes},1.E-6");
        }
        else
        {
            Line("*STEP");
            Line("*STATIC");
        }
        Line("*CLOAD");
        var forcesN = Forces();
        for (int at = 0; at < forcesN.Length; at++)
        {
            for (int axis = 0; axis < 3; axis++)
            {
                if (forcesN[at][axis] != 0)
                    Line($"{at + 1},{axis + 1},{Number(forcesN[at][axis])}");
            }
        }
        Line(large ? "*NODE PRINT,NSET=NALL,FREQUENCY=1000" : "*NODE PRINT,NSET=NALL");
        Line("U");
        Line("*END STEP");
    }

    /// <summary>All loads as forces at nodes. End moments of spread loads cancel along a bow and are left out.</summary>
    private Vector3[] Forces()
    {
        var forcesN = new Vector3[_model.Nodes.Length];
        double[] ends = new double[12];
        foreach (var part in _model.Combinations[0].Parts)
        {
            var load = _model.LoadCases[part.LoadCase];
            if (load.Temperatures.Length + load.Movements.Length > 0)
                throw new InvalidOperationException("The deck is for forces.");
            foreach (var at in load.Nodes)
                forcesN[at.Node] += new Vector3(at.Load.X, at.Load.Y, at.Load.Z) * part.Factor;
            foreach (var spread in load.Members)
                Spread(spread, part.Factor);
            for (int at = 0; at < _model.Members.Length && load.SelfWeight != Vector3.Zero; at++)
                Spread(MemberLoad.Uniform(at, load.SelfWeight * (_model.Members[at].Section.AreaM2 * _model.Members[at].Material.DensityKgM3 * FrameWeights.GravityMps2)), part.Factor);
        }
        return forcesN;

        void Spread(MemberLoad load, double factor)
        {
            var member = _model.Members[load.Member];
            var beam = Beam.Of(member, _model.Nodes[member.From].PlaceM, _model.Nodes[member.To].PlaceM)!;
            Array.Clear(ends);
            beam.AddLoad(ends, load, factor);
            forcesN[member.From] += (beam.AxisX * ends[0]) + (beam.AxisY * ends[1]) + (beam.AxisZ * ends[2]);
            forcesN[member.To] += (beam.AxisX * ends[6]) + (beam.AxisY * ends[7]) + (beam.AxisZ * ends[8]);
        }
    }

    private void Node(int number, Vector3 placeM) => Line($"{number},{Number(1000 * placeM.X)},{Number(1000 * placeM.Y)},{Number(1000 * placeM.Z)}");

    // CalculiX reads at most twenty characters of a number.
    private static string Number(double value) => value.ToString("0.0########E+00", CultureInfo.InvariantCulture);

    private void Line(FormattableString line) => _text.Append(FormattableString.Invariant(line)).Append('\n');

    private void Line(string line) => _text.Append(line).Append('\n');
}
