using Hoopwright.Sources;

namespace Hoopwright.Inside.Light;

/// <summary>
/// How much light a clear film lets through, by the angle at which it falls: both faces throw light back by Fresnel's equations in both
/// polarisations, and what is lost on the way through follows from the light that gets through square to the film.
/// </summary>
internal sealed class FilmOptics
{
    internal static readonly Formula Transmission = new(
        "T(θ)", "τ·(1 - r)²/(1 - r²·τ²) by polarisation, r by Fresnel, τ = exp(-K/cos θ'); of two layers T²/(1 - R²)", "", new Citation("Fresnel's equations and the sum over inner reflections, any handbook of optics", "", Standing.FromMemory));

    /// <summary>n, refractive index of polyethylene film.</summary>
    internal const double Index = 1.51;

    // Even in the cosine of the angle; between them in a straight line. 512 steps keep it to 1e-4 from 0 to 88°.
    private const int Steps = 512;
    private readonly double _absorption;
    private readonly int _layers;
    private readonly double[] _byCosine = new double[Steps + 1];

    /// <param name="squareTransmission">Part of the light that gets through one film square to it; below what a film without loss lets through, 0.92, and above 0.</param>
    /// <param name="layers">One or two films.</param>
    internal FilmOptics(double squareTransmission, int layers)
    {
        _layers = layers;
        double reflected = Math.Pow((Index - 1) / (Index + 1), 2);
        // Of T = τ(1 - r)²/(1 - r²τ²), the root that is positive.
        double through = squareTransmission, a = through * reflected * reflected, b = (1 - reflected) * (1 - reflected);
        double tau = (-b + Math.Sqrt((b * b) + (4 * a * through))) / (2 * a);
        _absorption = -Math.Log(Math.Min(1, tau));
        for (int step = 0; step <= Steps; step++) _byCosine[step] = At((double)step / Steps);
        Diffuse = DiffuseOf();
    }

    /// <summary>Part let through of light that comes alike from all of a half-space.</summary>
    internal double Diffuse { get; }

    /// <summary>Part let through at an angle, from the table.</summary>
    /// <param name="cosine">Cosine of the angle of incidence, from 0 to 1.</param>
    internal double Fast(double cosine)
    {
        double at = Math.Clamp(cosine, 0, 1) * Steps;
        int step = Math.Min((int)at, Steps - 1);
        return _byCosine[step] + ((at - step) * (_byCosine[step + 1] - _byCosine[step]));
    }

    /// <summary>Part let through at an angle.</summary>
    /// <param name="cosine">Cosine of the angle of incidence, from 0 to 1.</param>
    internal double At(double cosine)
    {
        if (cosine <= 0) return 0;
        double sineIn = Math.Sqrt(Math.Max(0, 1 - (cosine * cosine))) / Index, cosIn = Math.Sqrt(1 - (sineIn * sineIn));
        double square = (cosine - (Index * cosIn)) / (cosine + (Index * cosIn)), along = ((Index * cosine) - cosIn) / ((Index * cosine) + cosIn);
        double tau = Math.Exp(-_absorption / cosIn);
        return (Through(square * square, tau) + Through(along * along, tau)) / 2;
    }

    private double Through(double face, double tau)
    {
        double around = 1 - (face * face * tau * tau), through = tau * (1 - face) * (1 - face) / around;
        if (_layers == 1) return through;
        double back = face * (1 + (tau * tau * (1 - face) * (1 - face) / around));
        return through * through / (1 - (back * back));
    }

    private double DiffuseOf()
    {
        double sum = 0;
        // The integral of T·2·cos θ over the half-space, by midpoints of cos² θ, in which it is even.
        for (int step = 0; step < Steps; step++) sum += At(Math.Sqrt((step + 0.5) / Steps));
        return sum / Steps;
    }
}
