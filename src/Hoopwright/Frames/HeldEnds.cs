namespace Hoopwright.Frames;

/// <summary>What a load along a beam puts on its ends when they are held.</summary>
internal static class HeldEnds
{
    /// <summary>Places of three points along a part from 0 to 1, which with <see cref="Weights"/> give a cubic times a straight line exactly (Gauss).</summary>
    internal static ReadOnlySpan<double> Places => [0.5 - 0.38729833462074168852, 0.5, 0.5 + 0.38729833462074168852];

    /// <summary>Weights of those points; 1 in all.</summary>
    internal static ReadOnlySpan<double> Weights => [5.0 / 18, 8.0 / 18, 5.0 / 18];

    /// <summary>Adds a force across a beam to the forces at its ends.</summary>
    /// <param name="at">End forces.</param>
    /// <param name="forceN">The force, N.</param>
    /// <param name="lengthM">Length of the beam.</param>
    /// <param name="xi">Where it stands, as a share of the length.</param>
    /// <param name="phi">Shear flexibility 12·E·I/(G·As·L²); 0 for none.</param>
    /// <param name="shift">Place of the start's shift across among the end forces.</param>
    /// <param name="turn">Place of the start's turn.</param>
    /// <param name="apart">How far behind the end's places stand.</param>
    /// <param name="sense">1 where a turn goes from along to across, -1 where it goes the other way.</param>
    internal static void AddAcross(Span<double> at, double forceN, double lengthM, double xi, double phi, int shift, int turn, int apart, int sense)
    {
        double xi2 = xi * xi, xi3 = xi2 * xi, scale = forceN / (1 + phi), scaleM = scale * lengthM * sense;
        at[shift] += scale * (1 - (3 * xi2) + (2 * xi3) + (phi * (1 - xi)));
        at[turn] += scaleM * (xi - (2 * xi2) + xi3 + (phi / 2 * (xi - xi2)));
        at[shift + apart] += scale * ((3 * xi2) - (2 * xi3) + (phi * xi));
        at[turn + apart] += scaleM * (xi3 - xi2 - (phi / 2 * (xi - xi2)));
    }
}
