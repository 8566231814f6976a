using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Turns runs end for end where that keeps their joints from standing side by side; it costs nothing.</summary>
internal static class Staggering
{
    /// <summary>Joints nearer than this along the tunnel stand side by side.</summary>
    private static readonly Length SideBySide = Length.FromFeet(2);

    /// <summary>The layouts, each as it is or turned, run after run so that it has fewest joints beside those before it.</summary>
    public static ImmutableArray<JointLayout> Of(ImmutableArray<CutNeed> runs, ImmutableArray<JointLayout> layouts)
    {
        var chosen = ImmutableArray.CreateBuilder<JointLayout>(layouts.Length);
        for (int run = 0; run < layouts.Length; run++)
        {
            PieceNeed piece = runs[run].Piece;
            chosen.Add(JointLayouts.OrdersOf(layouts[run], piece, piece.Joining!).MinBy(layout => Beside(layout, chosen))!);
        }
        return chosen.MoveToImmutable();
    }

    /// <summary>How many joints of a layout stand beside a joint of another.</summary>
    public static int Beside(JointLayout layout, IEnumerable<JointLayout> others) =>
        layout.Joints.Sum(joint => others.Sum(other => other.Joints.Count(theirs => (theirs - joint).Abs() < SideBySide)));
}
