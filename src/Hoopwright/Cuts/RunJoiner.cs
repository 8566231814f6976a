using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Cuts;

/// <summary>Ways of making a long run from several pieces, with no joint where none may be.</summary>
internal static class RunJoiner
{
    private const double SameM = 1e-6;

    /// <summary>
    /// Sensible ways: for each stock length, whole pieces of it from the start and the rest at the end; and as many equal
    /// pieces as the longest stock needs. Each way is the list of joints. One empty list when the run comes in one piece.
    /// </summary>
    public static ImmutableArray<ImmutableArray<Length>> Ways(Length run, Joining joining, ImmutableArray<Length> usable)
    {
        Length longest = usable.Max();
        if (run.Metres <= longest.Metres + SameM) return [[]];
        List<ImmutableArray<Length>> ways = [];
        foreach (Length whole in usable.OrderDescending()) Add(Laid(run, joining, (_, at) => at + whole));
        int pieces = (int)Math.Ceiling((run / longest) - 1e-9);
        Add(Laid(run, joining, (index, _) => run * (index + 1) / pieces));
        Add(Laid(run, joining, (index, _) => run * (index + 1) / (pieces + 1)));
        return [.. ways.Take(8)];

        void Add(ImmutableArray<Length>? way)
        {
            if (way is not { } joints || !Pieces(run, joints).All(piece => piece.Metres <= longest.Metres + SameM)) return;
            if (!ways.Any(other => other.SequenceEqual(joints))) ways.Add(joints);
        }
    }

    /// <summary>Lengths of the pieces between the joints.</summary>
    public static ImmutableArray<Length> Pieces(Length run, ImmutableArray<Length> joints)
    {
        var pieces = ImmutableArray.CreateBuilder<Length>(joints.Length + 1);
        Length from = Length.Zero;
        foreach (Length joint in joints)
        {
            pieces.Add(joint - from);
            from = joint;
        }
        pieces.Add(run - from);
        return pieces.MoveToImmutable();
    }

    private static ImmutableArray<Length>? Laid(Length run, Joining joining, Func<int, Length, Length> next)
    {
        var joints = ImmutableArray.CreateBuilder<Length>();
        Length at = Length.Zero;
        while (joints.Count < 500)
        {
            Length wanted = next(joints.Count, at);
            if (wanted.Metres >= run.Metres - SameM) return joints.ToImmutable();
            // A short last piece is a bad piece: the joint before it moves back.
            Length shortest = Length.Min(joining.ShortestPiece, run / 2);
            if (run - wanted < shortest) wanted = run - shortest;
            Length joint = MovedOff(wanted, joining);
            if (joint.Metres <= at.Metres + SameM) return null;
            joints.Add(joint);
            at = joint;
        }
        return null;
    }

    /// <summary>The joint, or the nearest place before it where one may be.</summary>
    private static Length MovedOff(Length joint, Joining joining)
    {
        foreach (Layout.NoJoint none in joining.NoJoints.OrderByDescending(none => none.From))
        {
            if (joint.Metres > none.From.Metres + SameM && joint.Metres < none.To.Metres - SameM) joint = none.From;
        }
        return joint;
    }
}
