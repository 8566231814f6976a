using System.Collections.Immutable;
using Hoopwright.Layout;

namespace Hoopwright.Strength.Models;

/// <summary>A post of an end in the frame of the row.</summary>
/// <param name="Post">The post.</param>
/// <param name="Member">Its member.</param>
/// <param name="Board">Its section.</param>
/// <param name="XM">Where it stands across: under the node of the bow that it props, m.</param>
/// <param name="MarksM">Heights of its nodes over the bow's ground line, from the ground up, m.</param>
/// <param name="Nodes">Those nodes; the last is the bow's.</param>
/// <param name="FirstMember">The frame member over the ground; the others follow it.</param>
internal sealed record EndPostLine(EndPost Post, Member Member, BoardSection Board, double XM, ImmutableArray<double> MarksM, ImmutableArray<int> Nodes, int FirstMember)
{
    private const double SameM = 1e-6;

    /// <summary>Its height over the ground.</summary>
    internal double HeightM => MarksM[^1] - MarksM[0];

    /// <summary>The node at a height that is one of its marks; null at any other.</summary>
    internal int? NodeAt(double heightM)
    {
        for (int at = 0; at < MarksM.Length; at++)
        {
            if (Math.Abs(MarksM[at] - heightM) < SameM) return Nodes[at];
        }
        return null;
    }

    /// <summary>The nodes that share a load at a height between them.</summary>
    internal List<(int Node, double Share)> SharesAt(double heightM)
    {
        for (int at = 1; at < MarksM.Length; at++)
        {
            if (heightM > MarksM[at]) continue;
            double share = Math.Clamp((heightM - MarksM[at - 1]) / (MarksM[at] - MarksM[at - 1]), 0, 1);
            return [(Nodes[at - 1], 1 - share), (Nodes[at], share)];
        }
        return [(Nodes[^1], 1)];
    }
}
