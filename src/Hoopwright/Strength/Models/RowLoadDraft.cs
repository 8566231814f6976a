using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Models;

/// <summary>One load case on the nodes of a row. Loads along a chord of a bow are taken at its two nodes, with the moments of its held ends.</summary>
internal sealed class RowLoadDraft
{
    private readonly RowFrame _frame;
    private readonly LoadCase _load;
    private readonly double[] _forces;
    private readonly double[] _downN;

    internal RowLoadDraft(RowFrame frame, LoadCase load)
    {
        (_frame, _load) = (frame, load);
        _forces = new double[6 * frame.Nodes.Count];
        _downN = new double[frame.Nodes.Count];
        OnBows();
        foreach (PointLoad point in load.Points) AddPoint(point);
        foreach (LineLoad line in load.Lines.Where(line => line.Axis == LoadAxis.Along)) AddAlong(line);
        foreach (EndPressure end in load.Ends) AddEnd(end);
        if (load.FilmPull is { BulgeRadius.Metres: > 0 } pull) AddPulls(pull.BulgeRadius.Metres);
    }

    /// <summary>What it puts on the whole row: to the right, to the back, and what weighs down on it.</summary>
    internal (double AcrossN, double AlongN, double DownN) Sum
    {
        get
        {
            (double acrossN, double alongN) = (0, 0);
            for (int at = 0; at < _forces.Length; at += 6) (acrossN, alongN) = (acrossN + _forces[at], alongN + _forces[at + 1]);
            return (acrossN, alongN, _downN.Sum());
        }
    }

    /// <summary>The loads.</summary>
    internal ImmutableArray<NodeLoad> Loads() => Gathered(_forces);

    /// <summary>Pull of the film on the end bows that is there without any pressure.</summary>
    internal ImmutableArray<NodeLoad> SteadyPull()
    {
        double[] forces = new double[_forces.Length];
        double nPerM = _load.FilmPull!.Steady.NewtonsPerMetre;
        foreach (EndWallFrame end in _frame.Ends) AddPull(forces, end.Bow, _ => end.IsFront ? nPerM : -nPerM);
        return Gathered(forces);
    }

    /// <summary>A part of all that weighs down, to the right or to the back.</summary>
    internal ImmutableArray<NodeLoad> Lean(bool across, double part)
    {
        double[] forces = new double[_forces.Length];
        for (int node = 0; node < _downN.Length; node++) forces[(6 * node) + (across ? 0 : 1)] = part * _downN[node];
        return Gathered(forces);
    }

    /// <summary>Warmth of every member.</summary>
    internal ImmutableArray<MemberTemperature> Temperatures() => _load.Temperature is not { } change ? []
        : [.. Enumerable.Range(0, _frame.Pieces.Count).Select(at => new MemberTemperature(at, change.To.Celsius - change.From.Celsius))];

    private void OnBows()
    {
        // What is at a point is put there below; warmth is a load of members, which a node cannot stand for.
        LoadCase film = _load with { Points = [], Temperature = null };
        Dictionary<string, BowLoad> alike = new(StringComparer.Ordinal);
        for (int bow = 0; bow < _frame.Row.Places.Length; bow++)
        {
            BowPlace place = _frame.Row.Places[bow];
            string key = KeyOf(place);
            if (!alike.TryGetValue(key, out BowLoad? load)) alike[key] = load = BowLoad.Of(film, _frame.Row.Mesh, place);
            AddInPlane(bow, load);
        }
    }

    // Bows that carry as much film, at as great a factor, and tie or no tie alike, get the same.
    private string KeyOf(BowPlace place) => string.Join(' ', _load.Surfaces.Select(surface => FactorOf(surface, place)).Prepend(place.FilmWidthM).Append(place.Tie is null ? 0 : 1).Select(value => value.ToString("R", System.Globalization.CultureInfo.InvariantCulture)))
        + (_load.Lines.IsEmpty ? "" : " " + place.Number);

    private static double FactorOf(SurfaceLoad surface, BowPlace place) => surface.FactorBetween(Length.FromMetres(place.FilmFromM), Length.FromMetres(place.FilmToM)).Value;

    private void AddInPlane(int bow, BowLoad load)
    {
        BowMesh mesh = _frame.Row.Mesh;
        for (int node = 0; node < mesh.XM.Length; node++)
        {
            int at = _frame.NodeOf(bow, node);
            _forces[6 * at] += load.Applied[3 * node];
            _forces[(6 * at) + 2] += load.Applied[(3 * node) + 1];
            _downN[at] += load.DownN[node];
        }
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            (double c, double s) = mesh.Direction(chord);
            for (int end = 0; end < 2; end++)
            {
                int from = (6 * chord) + (3 * end), at = 6 * _frame.NodeOf(bow, chord + end);
                double along = load.Spread[from], left = load.Spread[from + 1];
                _forces[at] += (c * along) - (s * left);
                _forces[at + 2] += (s * along) + (c * left);
                // Turning from x to z is against turning about y.
                _forces[at + 4] -= load.Spread[from + 2];
            }
        }
    }

    private void AddPoint(PointLoad point)
    {
        int node = _frame.Nearest(point.At);
        if (point.Axis == LoadAxis.Up)
            _downN[node] -= point.Amount.Newtons;
        _forces[(6 * node) + AxisOf(point.Axis)] += point.Amount.Newtons;
    }

    // Wind along on tubes and boards. What the frame does not have as a member hands half to what is nearest to either end of it.
    private void AddAlong(LineLoad line)
    {
        double nPerM = line.Amount.NewtonsPerMetre;
        foreach (string id in line.MemberIds)
        {
            if (_frame.MembersOf(id) is { } members)
            {
                foreach (int at in members)
                {
                    FrameMember member = _frame.Members[at];
                    double halfN = nPerM * (_frame.Nodes[member.To].PlaceM - _frame.Nodes[member.From].PlaceM).Size / 2;
                    _forces[(6 * member.From) + 1] += halfN;
                    _forces[(6 * member.To) + 1] += halfN;
                }
            }
            else if (_frame.BesideOf(id) is { } beside)
            {
                _forces[(6 * beside.From) + 1] += nPerM * beside.LengthM / 2;
                _forces[(6 * beside.To) + 1] += nPerM * beside.LengthM / 2;
            }
        }
    }

    private void AddEnd(EndPressure pressure)
    {
        foreach ((int node, double areaM2) in _frame.Ends.First(end => end.IsFront == pressure.IsFront).Areas)
            _forces[(6 * node) + 1] += pressure.AlongTunnel.Pascals * areaM2;
    }

    // The film of a bay pulls its two bows together. On a bow between bays of one pressure the pulls of both sides cancel.
    private void AddPulls(double radiusM)
    {
        int chords = _frame.Row.Mesh.Chords, bays = _frame.Row.Places.Length - 1;
        double[] before = new double[chords];
        double[]? same = _load.Surfaces.All(surface => surface.ByLength.IsEmpty) ? PullsNPerM(0, radiusM) : null;
        for (int bay = 0; bay <= bays; bay++)
        {
            double[] after = bay == bays ? new double[chords] : same ?? PullsNPerM(bay, radiusM);
            AddPull(_forces, bay, chord => after[chord] - before[chord]);
            before = after;
        }
    }

    private double[] PullsNPerM(int bay, double radiusM)
    {
        BowMesh mesh = _frame.Row.Mesh;
        (Length from, Length to) = (Length.FromMetres(_frame.Nodes[_frame.NodeOf(bay, 0)].PlaceM.Y), Length.FromMetres(_frame.Nodes[_frame.NodeOf(bay + 1, 0)].PlaceM.Y));
        (SurfaceLoad Surface, double Factor)[] surfaces = [.. _load.Surfaces.Select(surface => (surface, surface.FactorBetween(from, to).Value))];
        double[] pulls = new double[mesh.Chords];
        for (int chord = 0; chord < pulls.Length; chord++)
        {
            double atM = (mesh.FilmM[chord] + mesh.FilmM[chord + 1]) / 2, c = mesh.Direction(chord).Cos, sumPa = 0;
            // Square to the film, either way; of snow what of its weight is square to it.
            foreach ((SurfaceLoad surface, double factor) in surfaces)
                sumPa += factor * (surface.Normal.AtPa(atM, after: true) + (c * c * surface.PlanGravity.AtPa(atM, after: true)));
            pulls[chord] = Math.Abs(sumPa) * radiusM;
        }
        return pulls;
    }

    private void AddPull(double[] forces, int bow, Func<int, double> backNPerMOf)
    {
        BowMesh mesh = _frame.Row.Mesh;
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            double halfN = backNPerMOf(chord) * (mesh.FilmM[chord + 1] - mesh.FilmM[chord]) / 2;
            forces[(6 * _frame.NodeOf(bow, chord)) + 1] += halfN;
            forces[(6 * _frame.NodeOf(bow, chord + 1)) + 1] += halfN;
        }
    }

    private static int AxisOf(LoadAxis axis) => axis switch { LoadAxis.Across => 0, LoadAxis.Along => 1, LoadAxis.Up => 2 };

    private static ImmutableArray<NodeLoad> Gathered(double[] forces)
    {
        var loads = ImmutableArray.CreateBuilder<NodeLoad>();
        for (int at = 0; at < forces.Length; at += 6)
        {
            if (forces.AsSpan(at, 6).IndexOfAnyExcept(0.0) >= 0)
                loads.Add(new NodeLoad(at / 6, new SixValues(forces[at], forces[at + 1], forces[at + 2], forces[at + 3], forces[at + 4], forces[at + 5])));
        }
        return loads.ToImmutable();
    }
}
