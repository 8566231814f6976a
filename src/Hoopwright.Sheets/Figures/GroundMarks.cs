using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;
using static Hoopwright.Sheets.Figures.FigureSheet;

namespace Hoopwright.Sheets.Figures;

/// <summary>Draws the ground and what stands in it.</summary>
internal static class GroundMarks
{
    /// <summary>The ground line with a strip of earth under it, between two places across, interrupted nowhere.</summary>
    public static void Ground(Figure figure, Length from, Length fromUp, Length to, Length toUp, Length thick)
    {
        figure.On("ground").Hatch(ModelPath.Around(At(from, fromUp), At(to, toUp), At(to, toUp - thick), At(from, fromUp - thick)), Hatch.Earth);
        figure.On("ground").Line(At(from, fromUp), At(to, toUp), LineRole.Cut, Ink.Earth);
    }

    /// <summary>How low a figure must reach to show the ground, which may fall away from level bows, and what stands in it.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="stations">The bows shown.</param>
    /// <param name="isShown">Whether a post is shown, by its name.</param>
    /// <returns>Height over the datum, with some room.</returns>
    public static Length Lowest(Tunnel tunnel, IEnumerable<BowStation> stations, Func<string, bool> isShown)
    {
        Length room = Length.FromInches(4);
        return stations.Select(station => Length.Min(station.GroundLeft, station.GroundRight) - (room * 2))
            .Concat(tunnel.Members.Where(member => member.Role is MemberRole.GroundPost or MemberRole.EndPost && isShown(member.Id)).Select(member => member.Start.Z - room))
            .Concat(tunnel.Holes.Where(hole => isShown(hole.PostId)).Select(hole => hole.Centre.Z - hole.Depth - room))
            .Min();
    }

    /// <summary>Concrete about a post with its sloped collar, cut open.</summary>
    public static void Concrete(Figure figure, ConcreteHole hole, Length across, Length ground, Length postWidth)
    {
        Length half = hole.Diameter / 2, postHalf = postWidth / 2, foot = ground - Length.Min(hole.PostDepth, hole.Depth);
        ModelPath around = ModelPath.Around(
            At(across - half, ground), At(across - postHalf, ground + hole.CollarRise), At(across - postHalf, foot), At(across + postHalf, foot),
            At(across + postHalf, ground + hole.CollarRise), At(across + half, ground), At(across + half, ground - hole.Depth), At(across - half, ground - hole.Depth));
        figure.On("concrete").Fill(around, Ink.ZincTint).Hatch(around, Hatch.Concrete).Path(around, LineRole.Dimension);
    }
}
