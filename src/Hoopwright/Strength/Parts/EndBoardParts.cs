using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Strength.Posts;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Parts;

/// <summary>Girts, headers and vent rails of a framed end, bent flat between posts by the worst wind on the wall.</summary>
internal static class EndBoardParts
{
    // Boards at one height to a hair are one row.
    private const double LevelM = 0.01;

    /// <summary>A line for girts and one for what frames the doors; none where there are no such boards.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="end">The end.</param>
    /// <param name="wood">Its wood.</param>
    /// <param name="wind">The worst wind on it.</param>
    internal static IEnumerable<PartStrength> Of(Tunnel tunnel, EndWall end, EndWood wood, EndWind wind)
    {
        Member[] boards = [.. tunnel.Members.Where(member => member.Id.StartsWith(end.Name + "-", StringComparison.Ordinal))];
        Member[] girts = [.. boards.Where(member => member.Role == MemberRole.Girt)];
        if (girts.Length > 0)
            yield return Line(end, "girts", "girts", wood, wind, [.. girts.Select(girt => (girt, StripM(end, girt, girts)))]);
        var framing = end.Doors.SelectMany(door => Framing(end, door, boards)).ToArray();
        if (framing.Length > 0)
            yield return Line(end, "headers", "headers and vent rails", wood, wind, framing);
    }

    /// <summary>Height of the wall that a girt carries: half of the way to the row or the ground below it, and to the row or the bow above.</summary>
    private static double StripM(EndWall end, Member girt, Member[] girts)
    {
        double middleM = (girt.Start.X + girt.End.X).Metres / 2, heightM = (girt.Start.Z - end.Base).Metres;
        double[] rowsM = [.. girts.Where(each => each.Start.X.Metres < middleM && each.End.X.Metres > middleM).Select(each => (each.Start.Z - end.Base).Metres)];
        double belowM = rowsM.Where(each => each < heightM - LevelM).DefaultIfEmpty(0).Max();
        double aboveM = rowsM.Where(each => each > heightM + LevelM).DefaultIfEmpty(BowM(end, middleM)).Min();
        return (aboveM - belowM) / 2;
    }

    // Door leaves close against jambs and header: half of their height comes on the header. What lies over the door is shared by
    // header, vent rail and bow.
    private static IEnumerable<(Member Board, double StripM)> Framing(EndWall end, DoorOpening door, Member[] boards)
    {
        double bowM = BowM(end, door.Centre.Metres), frameM = door.FrameTop.Metres, clearM = door.ClearHeight.Metres;
        bool hasVent = door.VentHeight > Length.Zero;
        double headerM = (clearM / 2) + (hasVent ? door.VentHeight.Metres / 2 : Math.Max(0, bowM - clearM) / 2);
        double railM = (door.VentHeight.Metres / 2) + (Math.Max(0, bowM - frameM) / 2);
        foreach (Member board in boards.Where(member => member.Id.StartsWith(door.Id + "-", StringComparison.Ordinal)))
        {
            // A header is two boards side by side; each takes its half.
            if (board.Role == MemberRole.Header) yield return (board, headerM / 2);
            if (board.Role == MemberRole.VentRail) yield return (board, railM);
        }
    }

    private static PartStrength Line(EndWall end, string code, string words, EndWood wood, EndWind wind, (Member Board, double StripM)[] boards)
    {
        (Member Board, WoodCheck? Check)[] weakest = Worst(wood, kind => boards.Select(board => (board.Board, Bent(board.Board, board.StripM, wind.PressurePa, kind))), most: true);
        (Member Board, WoodCheck? Check)[] strongest = Worst(wood, kind => boards.Select(board => (board.Board, Bent(board.Board, board.StripM, wind.PressurePa, kind))), most: false);
        (Member board, WoodCheck? check) = weakest.MaxBy(Use);
        return new PartStrength
        {
            Kind = PartKind.EndBoard,
            Code = $"end-{end.Name}-{code}",
            Words = $"{words} of the {end.Name} end, bent by wind",
            Where = board.Id,
            AtWeakest = PartStrength.Shown(weakest.Max(Use)),
            AtStrongest = PartStrength.Shown(strongest.Max(Use)),
            Governs = check?.Governs ?? "no values are held for wood of this size",
            LoadCode = wind.Combination.Code,
            LoadWords = wind.Combination.Words,
            Checks = check is null ? [] : [check],
        };
    }

    private static (Member Board, WoodCheck? Check)[] Worst(EndWood wood, Func<EndPostWood, IEnumerable<(Member Board, WoodCheck? Check)>> ofKind, bool most)
    {
        (Member Board, WoodCheck? Check)[][] kinds = [.. wood.Kinds(isTreated: false).Select(kind => ofKind(kind).ToArray())];
        var held = kinds.Where(kind => kind.All(each => each.Check is not null)).DefaultIfEmpty(kinds[0]);
        return most ? held.MaxBy(kind => kind.Max(Use))! : held.MinBy(kind => kind.Max(Use))!;
    }

    private static WoodCheck? Bent(Member member, double stripM, double pressurePa, EndPostWood kind) => member.Section.Match(_ => null, board =>
    {
        var section = new WoodSection(board.Thickness.Metres, board.Depth.Metres);
        if (WoodTable.Find(kind.Species, kind.Grade, section) is not { } values) return null;
        double lengthM = member.CutLength.Metres, nPerM = Math.Abs(pressurePa) * stripM;
        // Boards lie with their wide side in the wall, so the wind bends them flat; held at their ends only.
        return WoodCheck.Of(
            AdjustedWood.Of(values, section, kind.Conditions with { IsIncised = board.Treated && kind.Species != Plans.WoodSpecies.SouthernPine }),
            new WoodMember(lengthM, lengthM, lengthM, BeamLoad.Uniform),
            new WoodForces(0, FlatwiseNm: nPerM * lengthM * lengthM / 8, FlatwiseShearN: nPerM * lengthM / 2));
    });

    private static double BowM(EndWall end, double acrossM) => end.Bow.UndersideAt(Length.FromMetres(acrossM))?.Metres ?? end.Bow.PeakHeight.Metres;

    private static double Use((Member Board, WoodCheck? Check) board) => board.Check?.Utilisation ?? double.PositiveInfinity;
}
