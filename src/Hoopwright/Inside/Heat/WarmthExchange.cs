using Hoopwright.Sources;

namespace Hoopwright.Inside.Heat;

/// <summary>
/// Warmth that ground, films above it and the sky exchange as parallel planes, all reflections counted: net gain of each plane as a sum over what each sends out.
/// </summary>
internal sealed class WarmthExchange
{
    internal static readonly Formula Rule = new(
        "D, U", "D_i = ε_i·σT_i⁴ + τ_i·D_(i+1) + ρ_i·U_(i-1), U_i = ε_i·σT_i⁴ + τ_i·U_(i-1) + ρ_i·D_(i+1), sky above and ground below", "W/m²", new Citation("exchange of radiation between parallel planes, any handbook of heat transfer", "", Standing.FromMemory));

    internal const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>ε of the ground; from memory.</summary>
    internal const double Ground = 0.95;

    /// <param name="films">From the lowest up.</param>
    internal WarmthExchange(ReadOnlySpan<FilmWarmthRays> films)
    {
        int planes = films.Length + 1, unknowns = 2 * films.Length;
        Gain = new double[planes, planes];
        FromSky = new double[planes];
        // Unknown: what goes up from plane i and what comes down onto it, i from 0 to the film under the sky. One column of the right-hand side a source.
        var matrix = new double[unknowns, unknowns + planes + 1];
        for (int gap = 0; gap < films.Length; gap++)
        {
            int up = 2 * gap, down = up + 1;
            matrix[up, up] = 1;
            if (gap == 0)
            {
                (matrix[up, down], matrix[up, unknowns]) = (-(1 - Ground), Ground);
            }
            else
            {
                FilmWarmthRays below = films[gap - 1];
                (matrix[up, up - 2], matrix[up, down], matrix[up, unknowns + gap]) = (-below.Through, -below.Back, below.SendsOut);
            }
            FilmWarmthRays above = films[gap];
            (matrix[down, down], matrix[down, up], matrix[down, unknowns + gap + 1]) = (1, -above.Back, above.SendsOut);
            if (gap < films.Length - 1) matrix[down, down + 2] = -above.Through;
            else matrix[down, unknowns + planes] = above.Through;
        }
        SmallSystem.Solve(matrix, unknowns, planes + 1);
        for (int source = 0; source <= planes; source++)
        {
            for (int plane = 0; plane < planes; plane++)
            {
                double gain;
                if (plane == 0)
                {
                    gain = Ground * matrix[1, unknowns + source];
                    if (source == 0) gain -= Ground;
                }
                else
                {
                    double eps = films[plane - 1].SendsOut;
                    double fromBelow = matrix[2 * (plane - 1), unknowns + source], fromAbove = plane < films.Length ? matrix[(2 * plane) + 1, unknowns + source] : source == planes ? 1 : 0;
                    gain = eps * (fromBelow + fromAbove);
                    if (source == plane) gain -= 2 * eps;
                }
                if (source == planes) FromSky[plane] = gain;
                else Gain[plane, source] = gain;
            }
        }
    }

    /// <summary>Net gain of plane i by what plane j sends out as a black body, σT_j⁴. Plane 0 is the ground.</summary>
    internal double[,] Gain { get; }

    /// <summary>Net gain of each plane by what the sky sends down.</summary>
    internal double[] FromSky { get; }
}
