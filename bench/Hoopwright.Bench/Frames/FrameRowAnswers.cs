using Hoopwright.Frames;

namespace Hoopwright.Bench.Frames;

/// <summary>Holds two solvers to one answer before they are timed.</summary>
internal static class FrameRowAnswers
{
    /// <summary>Stops when a node differs by more than a share of the greatest movement.</summary>
    public static void MustAgree(FrameAnswer answer, double[][] movedMm, double share)
    {
        if (answer.States.Length != 1)
            throw new InvalidOperationException("No answer: " + string.Join("; ", answer.Diagnostics));
        var state = answer.States[0];
        double greatestMm = 0, differenceMm = 0;
        for (int at = 0; at < state.Displacements.Length; at++)
        {
            if (at % 6 >= 3)
                continue;
            greatestMm = Math.Max(greatestMm, Math.Abs(movedMm[at / 6][at % 6]));
            differenceMm = Math.Max(differenceMm, Math.Abs(movedMm[at / 6][at % 6] - (1000 * state.Displacements[at])));
        }
        if (!(differenceMm <= share * greatestMm))
            throw new InvalidOperationException(FormattableString.Invariant($"The answers differ by {differenceMm:0.000} of {greatestMm:0.000} mm."));
    }
}
