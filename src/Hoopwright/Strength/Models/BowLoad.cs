using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Models;

/// <summary>One load case on one bow, ready for <see cref="Frames.PlanarBow"/>.</summary>
internal sealed class BowLoad
{
    private BowLoad(int nodes)
    {
        Applied = new double[3 * nodes];
        Spread = new double[6 * (nodes - 1)];
        DownN = new double[nodes];
    }

    /// <summary>Three for each node: forces across and up, N, and moments, N·m.</summary>
    internal double[] Applied { get; }

    /// <summary>Six for each chord, in its own axes: what loads along it put on its held ends.</summary>
    internal double[] Spread { get; }

    /// <summary>For each node, what weighs down there, N: dead load, crops, snow. Notional sideways loads are a part of it.</summary>
    internal double[] DownN { get; }

    /// <summary>Puts a load case on a bow.</summary>
    /// <param name="load">The case.</param>
    /// <param name="mesh">The bow.</param>
    /// <param name="place">Where it stands and what it carries.</param>
    internal static BowLoad Of(LoadCase load, BowMesh mesh, BowPlace place)
    {
        var made = new BowLoad(mesh.AlongM.Length);
        foreach (SurfaceLoad surface in load.Surfaces)
            made.AddSurface(surface, mesh, place);
        if (load.SelfWeight)
            made.AddWeights(mesh, place);
        foreach (LineLoad line in load.Lines)
            made.AddLine(line, mesh, place);
        foreach (PointLoad point in load.Points)
            made.AddPoint(point, mesh, place);
        if (load.Temperature is { } temperature)
            made.AddTemperature((temperature.To.Celsius - temperature.From.Celsius) * place.ExpansionPerK * place.EaN, mesh);
        return made;
    }

    /// <summary>True when another load does the same to the bow.</summary>
    internal bool IsSameAs(BowLoad other) =>
        Applied.AsSpan().SequenceEqual(other.Applied) && Spread.AsSpan().SequenceEqual(other.Spread) && DownN.AsSpan().SequenceEqual(other.DownN);

    private void AddSurface(SurfaceLoad surface, BowMesh mesh, BowPlace place)
    {
        double widthM = place.FilmWidthM * surface.FactorBetween(Length.FromMetres(place.FilmFromM), Length.FromMetres(place.FilmToM)).Value;
        if (widthM == 0) return;
        // Inwards is to the right of the way from the left foot to the right one.
        Add(mesh, surface.Normal, place, (c, s, film) => (0, -film * widthM));
        AddDown(mesh, surface.PlanGravity, place, (c, film) => Math.Abs(c) * widthM);
        AddDown(mesh, surface.SurfaceGravity, place, (c, film) => film * widthM);
        Add(mesh, surface.Sideways, place, (c, s, film) => (c * Math.Abs(s) * widthM, -s * Math.Abs(s) * widthM));
    }

    private void AddWeights(BowMesh mesh, BowPlace place)
    {
        for (int chord = 0; chord < mesh.Chords; chord++)
            AddEvenDown(mesh, chord, place.TubeNPerM);
        foreach ((int node, double weightN) in place.HungN)
            AddDownAt(node, weightN);
    }

    private void AddLine(LineLoad line, BowMesh mesh, BowPlace place)
    {
        double perM = line.Amount.NewtonsPerMetre;
        if (line.MemberIds.Any(place.BowIds.Contains))
        {
            for (int chord = 0; chord < mesh.Chords; chord++)
                AddChordLine(mesh, chord, line, perM);
        }
        if (place.Tie is { } tie && line.MemberIds.Contains(tie.Id))
        {
            double half = perM * tie.LengthM / 2;
            AddAt(tie.FromNode, line.Axis, half);
            AddAt(tie.ToNode, line.Axis, half);
        }
        // A lengthwise member hands half of its two bays to the bow.
        foreach (BowJoint joint in place.Joints.Where(joint => line.MemberIds.Contains(joint.MemberId)))
            AddAt(joint.Node, line.Axis, perM * joint.CarriedM);
    }

    private void AddPoint(PointLoad point, BowMesh mesh, BowPlace place)
    {
        foreach (BowJoint joint in place.Joints.Where(joint => joint.MemberId == point.MemberId))
        {
            // At the middle of a bay each of its two bows gets half; the middle of any bay is as bad as another for an inner bow.
            AddAt(joint.Node, point.Axis, point.Amount.Newtons / 2);
        }
        if (place.BowIds.Contains(point.MemberId))
            AddAt(mesh.NodeAt(place.AlongM(point.At)), point.Axis, point.Amount.Newtons);
    }

    // Loads along a bow are taken as hung from it, so they count for the frame out of plumb as well.
    private void AddChordLine(BowMesh mesh, int chord, LineLoad line, double perM)
    {
        (double c, double s) = mesh.Direction(chord);
        double seen = line.Per == LoadMeasure.Length ? 1 : line.Axis == LoadAxis.Up ? Math.Abs(c) : Math.Abs(s);
        double amount = perM * seen;
        if (line.Axis == LoadAxis.Up)
        {
            AddEvenDown(mesh, chord, -amount);
            return;
        }
        if (line.Axis == LoadAxis.Across)
            ChordLoads.Add(SpreadOf(chord), mesh.LengthM(chord), 0, 1, (c * amount, -s * amount), (c * amount, -s * amount));
    }

    private void AddTemperature(double pushN, BowMesh mesh)
    {
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            SpreadOf(chord)[0] -= pushN;
            SpreadOf(chord)[3] += pushN;
        }
    }

    private void AddEvenDown(BowMesh mesh, int chord, double downNPerM)
    {
        (double c, double s) = mesh.Direction(chord);
        double lengthM = mesh.LengthM(chord);
        ChordLoads.Add(SpreadOf(chord), lengthM, 0, 1, (-s * downNPerM, -c * downNPerM), (-s * downNPerM, -c * downNPerM));
        DownN[chord] += downNPerM * lengthM / 2;
        DownN[chord + 1] += downNPerM * lengthM / 2;
    }

    private void AddDown(BowMesh mesh, LoadProfile profile, BowPlace place, Func<double, double, double> perPa)
    {
        if (profile.IsNone) return;
        Add(mesh, profile, place, (c, s, film) =>
        {
            double down = perPa(c, film);
            return (-s * down, -c * down);
        }, (chord, meanPa) =>
        {
            (double c, double _) = mesh.Direction(chord);
            double downN = meanPa * perPa(c, FilmRatio(mesh, chord)) * mesh.LengthM(chord) / 2;
            DownN[chord] += downN;
            DownN[chord + 1] += downN;
        });
    }

    /// <summary>Adds a profile over the film: between its points it is straight, so each chord is cut where it bends.</summary>
    private void Add(BowMesh mesh, LoadProfile profile, BowPlace place, Func<double, double, double, (double Along, double Left)> perPa, Action<int, double>? mean = null)
    {
        if (profile.IsNone) return;
        for (int chord = 0; chord < mesh.Chords; chord++)
        {
            double fromM = mesh.FilmM[chord], toM = mesh.FilmM[chord + 1], lengthM = mesh.LengthM(chord);
            (double c, double s) = mesh.Direction(chord);
            (double along, double left) = perPa(c, s, FilmRatio(mesh, chord));
            double atM = fromM, sum = 0;
            foreach (double nextM in profile.Points.Select(point => point.Distance.Metres).Where(point => point > fromM && point < toM).Distinct().Append(toM))
            {
                double startPa = profile.AtPa(atM, after: true), endPa = profile.AtPa(nextM, after: false);
                ChordLoads.Add(
                    SpreadOf(chord), lengthM, (atM - fromM) / (toM - fromM), (nextM - fromM) / (toM - fromM), (along * startPa, left * startPa), (along * endPa, left * endPa));
                sum += (startPa + endPa) / 2 * (nextM - atM);
                atM = nextM;
            }
            mean?.Invoke(chord, sum / (toM - fromM));
        }
    }

    private void AddAt(int node, LoadAxis axis, double newtons)
    {
        if (axis == LoadAxis.Up)
            AddDownAt(node, -newtons);
        else if (axis == LoadAxis.Across)
            Applied[3 * node] += newtons;
    }

    private void AddDownAt(int node, double newtons)
    {
        Applied[(3 * node) + 1] -= newtons;
        DownN[node] += newtons;
    }

    private Span<double> SpreadOf(int chord) => Spread.AsSpan(6 * chord, 6);

    // Film over a bend is longer than the chord under it.
    private static double FilmRatio(BowMesh mesh, int chord) => (mesh.FilmM[chord + 1] - mesh.FilmM[chord]) / mesh.LengthM(chord);
}
