using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>
/// The sensible ways of joining a run: whole stock pieces one after the other with each joint moved back to where it may be,
/// every choice of stock lengths for short runs, one main length and any two for long ones; and equal pieces.
/// </summary>
internal sealed class JointLayouts
{
    private const double SamePlaceM = 1e-6;

    // Above this every choice of lengths would take longer than it saves.
    private const double MostChoices = 4000;

    private readonly PieceNeed run;
    private readonly Joining joining;
    private readonly ImmutableArray<Length> usable;
    private readonly Dictionary<string, JointLayout> found = new(StringComparer.Ordinal);

    private JointLayouts(PieceNeed run, Joining joining, ImmutableArray<Length> usable)
    {
        this.run = run;
        this.joining = joining;
        this.usable = usable;
    }

    /// <summary>The ways of joining a run, each once however its pieces are ordered.</summary>
    /// <param name="run">The run.</param>
    /// <param name="joining">How it may be joined.</param>
    /// <param name="usable">What one stock piece of each length gives, longest first; at least one.</param>
    /// <returns>None when no joint can be placed.</returns>
    public static ImmutableArray<JointLayout> Of(PieceNeed run, Joining joining, ImmutableArray<Length> usable)
    {
        var layouts = new JointLayouts(run, joining, usable);
        int fewest = Math.Max(1, (int)Math.Ceiling((run.Exact / usable[0]) - 1e-9));
        if (Math.Pow(usable.Length, fewest) <= MostChoices)
        {
            layouts.Extend([], fewest + 1);
        }
        else
        {
            foreach (Length main in usable) layouts.Fill(main);
        }
        layouts.Equal(fewest);
        layouts.Equal(fewest + 1);
        return [.. layouts.found.Values];
    }

    /// <summary>The same pieces with the joints elsewhere: from the other end, where joints may be there.</summary>
    public static ImmutableArray<JointLayout> OrdersOf(JointLayout layout, PieceNeed run, Joining joining)
    {
        ImmutableArray<Length> mirrored = [.. layout.Joints.Reverse().Select(joint => run.Exact - joint)];
        return mirrored.All(joint => Allowed(joining, joint)) && !mirrored.SequenceEqual(layout.Joints)
            ? [layout, new JointLayout(mirrored, [.. layout.Pieces.Reverse()])]
            : [layout];
    }

    /// <summary>Equal pieces that heed no rule, for a run in which no joint is allowed where it would be needed.</summary>
    public static JointLayout Regardless(PieceNeed run, Length longest)
    {
        int count = Math.Max(1, (int)Math.Ceiling((run.Exact / longest) - 1e-9));
        // Rounding may leave the last piece too long; one more piece cures that.
        for (; ; count++)
        {
            JointLayout layout = Made(run, [.. Enumerable.Range(1, count - 1).Select(joint => CutRooms.Sixteenth(run.Exact * joint / count))]);
            if (layout.Pieces.All(piece => piece.Metres <= longest.Metres + SamePlaceM)) return layout;
        }
    }

    private static JointLayout Made(PieceNeed run, ImmutableArray<Length> joints)
    {
        var pieces = ImmutableArray.CreateBuilder<Length>(joints.Length + 1);
        Length from = Length.Zero;
        foreach (Length joint in joints.Add(run.Exact))
        {
            pieces.Add(joint - from);
            from = joint;
        }
        return new JointLayout(joints, pieces.MoveToImmutable());
    }

    private static bool Allowed(Joining joining, Length joint) =>
        !joining.NoJoints.Any(stretch => joint.Metres > stretch.From.Metres + SamePlaceM && joint.Metres < stretch.To.Metres - SamePlaceM);

    /// <summary>Every choice of stock lengths from the last joint on.</summary>
    private void Extend(ImmutableArray<Length> joints, int piecesLeft)
    {
        Length from = joints.IsEmpty ? Length.Zero : joints[^1];
        if ((run.Exact - from).Metres <= usable[0].Metres + SamePlaceM) Keep(joints);
        if (piecesLeft <= 1) return;
        foreach (Length stock in usable)
        {
            if ((from + stock).Metres >= run.Exact.Metres - SamePlaceM) continue;
            if (Before(from, from + stock) is { } joint && (run.Exact - joint) <= usable[0] * (piecesLeft - 1)) Extend(joints.Add(joint), piecesLeft - 1);
        }
    }

    /// <summary>One length over and over, then any two.</summary>
    private void Fill(Length main)
    {
        ImmutableArray<Length> joints = [];
        Length from = Length.Zero;
        while ((run.Exact - from) > usable[0] * 2)
        {
            if (Before(from, from + main) is not { } joint) return;
            joints = joints.Add(joint);
            from = joint;
        }
        Extend(joints, 3);
    }

    private void Equal(int count)
    {
        if (count < 2) return;
        var joints = ImmutableArray.CreateBuilder<Length>(count - 1);
        Length from = Length.Zero;
        for (int number = 1; number < count; number++)
        {
            if (Before(from, CutRooms.Sixteenth(run.Exact * number / count)) is not { } joint) return;
            joints.Add(joint);
            from = joint;
        }
        Keep(joints.MoveToImmutable());
    }

    /// <summary>
    /// The last place at or before a distance where a joint may be; null when there is none. A whole stock piece stays whole;
    /// one that must be cut shorter is cut at a sixteenth of an inch, in both systems of units.
    /// </summary>
    private Length? Before(Length from, Length furthest)
    {
        Length joint = furthest <= run.Exact - joining.ShortestPiece ? furthest : CutRooms.Sixteenth(run.Exact - joining.ShortestPiece);
        while (joint.Metres >= (from + joining.ShortestPiece).Metres - SamePlaceM)
        {
            ImmutableArray<NoJoint> barred =
                [.. joining.NoJoints.Where(stretch => joint.Metres > stretch.From.Metres + SamePlaceM && joint.Metres < stretch.To.Metres - SamePlaceM)];
            if (barred.IsEmpty) return joint;
            joint = CutRooms.Sixteenth(barred.Min(stretch => stretch.From));
        }
        return null;
    }

    private void Keep(ImmutableArray<Length> joints)
    {
        JointLayout layout = Made(run, joints);
        bool sound = layout.Pieces.All(piece => piece.Metres <= usable[0].Metres + SamePlaceM)
            && (joints.IsEmpty || layout.Pieces.All(piece => piece.Metres >= joining.ShortestPiece.Metres - SamePlaceM));
        if (sound) found.TryAdd(layout.SamePieces, layout);
    }
}
