using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Strength.Loads;

/// <summary>Weight, crops, a person, temperature.</summary>
internal static class OtherCases
{
    /// <summary>Code of the case of the coldest day.</summary>
    internal const string Cold = "cold";

    internal static readonly Formula Weight = new("g", "ρ·t·9.80665", "Pa", Citation.Geometry);

    /// <summary>The frame and the film, apart, so that the bare frame can be taken alone.</summary>
    public static IEnumerable<LoadCase> Dead(Tunnel tunnel, LoadSite site)
    {
        yield return new LoadCase { Code = "dead-frame", Words = "Weight of the frame", Kind = LoadKind.Dead, TwinCode = "dead-frame", SelfWeight = true };
        double filmPa = FilmOf.WeightPa(tunnel);
        yield return new LoadCase
        {
            Code = "dead-film",
            Words = "Weight of the film",
            Kind = LoadKind.Dead,
            TwinCode = "dead-film",
            Surfaces = [new() { SurfaceGravity = site.Line.Zones((site.Line.LengthM, filmPa)) }],
            Coefficients = [LoadSite.Value(FilmMaterial.Density, FilmMaterial.KgM3, "film"), LoadSite.Value(Weight, filmPa, "all layers")],
        };
    }

    /// <summary>Crops hung up; none when the plan gives none.</summary>
    public static IEnumerable<LoadCase> Crop(Tunnel tunnel, Answers answers, LoadSite site)
    {
        LoadRules rules = tunnel.Plan.Loads;
        double floorPa = answers.Take("loads.cropLoad", LoadDefaults.Crop, rules.CropLoad).Pascals, lineNPerM = rules.CropLine?.Value.NewtonsPerMetre ?? 0;
        if (floorPa <= 0 && lineNPerM <= 0) yield break;
        CropSupport on = answers.Take("loads.cropHungOn", LoadDefaults.CropHungOn, rules.CropHungOn);
        ImmutableArray<Member> ties = [.. tunnel.Members.Where(member => member.Role == MemberRole.Tie).OrderBy(tie => tie.Start.Y)];
        if (on == CropSupport.Ties && ties.IsEmpty)
        {
            site.Warn("loads.crop-without-ties", "loads.cropHungOn", "Crops are to hang from ties, and there are none; they are taken to hang from the bows.", "ties", "bows, or ties in the frame");
            on = CropSupport.Bows;
        }
        yield return new LoadCase
        {
            Code = "crop",
            Words = on == CropSupport.Ties ? "Crops hung from the ties" : "Crops hung from the bows",
            Kind = LoadKind.Crop,
            TwinCode = "crop",
            Surfaces = on == CropSupport.Bows && floorPa > 0 ? [new() { PlanGravity = site.Line.Zones((site.Line.LengthM, floorPa)) }] : [],
            Lines = [.. on == CropSupport.Ties ? OnTies(tunnel, ties, floorPa, lineNPerM) : OnBows(tunnel, lineNPerM)],
            Note = "Hung for good, crops are taken with the weight of the tunnel, and never count against wind that lifts.",
        };
    }

    /// <summary>A person who hangs on a purlin, or on a bow where there is none, at the middle of the tunnel.</summary>
    public static IEnumerable<LoadCase> Person(Tunnel tunnel, Answers answers)
    {
        Force weight = answers.Take("loads.person", LoadDefaults.Person, tunnel.Plan.Loads.Person);
        if (weight <= Force.Zero) yield break;
        Formula formula = new("P", "from the plan, or 100 lb", "N", LoadDefaults.Person.Source);
        ImmutableArray<Coefficient> used = [LoadSite.Value(formula, weight.Newtons, "person")];
        int bay = tunnel.Bays / 2;
        BowStation one = tunnel.Stations[bay], next = tunnel.Stations[Math.Min(bay + 1, tunnel.Stations.Length - 1)];
        Length y = (one.Along + next.Along) / 2;
        foreach (Member purlin in tunnel.Members.Where(member => member.Role is MemberRole.RidgePurlin or MemberRole.Purlin).OrderBy(member => member.Id, StringComparer.Ordinal))
        {
            yield return new LoadCase
            {
                Code = "person-" + purlin.Id,
                Words = $"A person on the purlin {purlin.Place}, at the middle of bay {bay + 1}",
                Kind = LoadKind.Person,
                TwinCode = "person-" + Mirrored(purlin.Id),
                Points = [new(purlin.Id, Between(purlin, y), LoadAxis.Up, -weight)],
                Coefficients = used,
            };
        }
        if (tunnel.Members.Any(member => member.Role == MemberRole.RidgePurlin)) yield break;
        Member bow = tunnel.Members.Where(member => member.Role == MemberRole.Bow && member.Start.Y == one.Along).MinBy(FromCrownM)!;
        PlanePoint crown = tunnel.BowPieces % 2 == 1 ? bow.Curve!.PointAt(bow.Curve.Length / 2) : bow.Curve!.End;
        yield return new LoadCase
        {
            Code = "person-bow",
            Words = $"A person on bow {one.Number}, near the ridge",
            Kind = LoadKind.Person,
            TwinCode = "person-bow",
            Points = [new(bow.Id, new TunnelPoint(crown.Across, one.Along, one.Base + crown.Up), LoadAxis.Up, -weight)],
            Coefficients = used,
        };

        // The piece that has the ridge: the one in the middle, or the left one of the two that meet there.
        double FromCrownM(Member member)
        {
            double offM = (((member.Curve!.Start.Across + member.Curve.End.Across) / 2) - (tunnel.Span / 2)).Metres;
            return offM > 0 ? offM + Layout.Tolerances.PlaceM : -offM;
        }
    }

    /// <summary>
    /// Cold, in which the film pulls on the end bows too, and heat. The pull is the one of the pull sheet for film pulled as planned:
    /// on the coldest night, with nothing of it crept away, since cold may come the night after.
    /// </summary>
    public static IEnumerable<LoadCase> Temperature(Tunnel tunnel, Answers answers)
    {
        LoadRules rules = tunnel.Plan.Loads;
        var install = answers.Take("loads.installTemperature", CoverDefaults.Install, rules.InstallTemperature);
        var coldest = answers.Take("loads.coldest", CoverDefaults.Coldest, rules.Coldest);
        var hottest = answers.Take("loads.hottest", CoverDefaults.Hottest, rules.Hottest);
        PullPlanner sheet = CoverPlanner.PullOf(tunnel, answers);
        PullRow pulled = sheet.Planned;
        yield return new LoadCase
        {
            Code = Cold,
            Words = "The coldest day",
            Kind = LoadKind.Temperature,
            TwinCode = Cold,
            Temperature = new(install, coldest),
            FilmPull = new EndFilmPull(Length.Zero, pulled.ColdPull),
            Coefficients =
            [
                LoadSite.Value(FilmMaterial.Stiffness, FilmMaterial.YoungPa, "film"), LoadSite.Value(FilmMaterial.Expansion, FilmMaterial.PerK, "film"),
                LoadSite.Value(FilmWarmth.Balance, sheet.Coldest.Kelvins, "film on the coldest night, under a clear sky"),
                LoadSite.Value(FilmSheet.Stiffening, FilmSheet.YoungPa(sheet.Coldest.Kelvins), "film so cold"),
                LoadSite.Value(FilmSheet.Pull, pulled.ColdPull.NewtonsPerMetre, "pull of film put up as planned, before any of it creeps away: this is taken"),
                LoadSite.Value(FilmSheet.Crept, pulled.ColdPullCrept.NewtonsPerMetre, "the least that is left where the cold comes slowly; the row must hold without any pull too"),
            ],
        };
        yield return new LoadCase { Code = "hot", Words = "The hottest day", Kind = LoadKind.Temperature, TwinCode = "hot", Temperature = new(install, hottest) };
    }

    private static IEnumerable<LineLoad> OnBows(Tunnel tunnel, double lineNPerM) => lineNPerM <= 0
        ? []
        : [new([.. tunnel.Members.Where(member => member.Role == MemberRole.Bow).Select(member => member.Id)], LoadAxis.Up, ForcePerLength.FromNewtonsPerMetre(-lineNPerM), LoadMeasure.Projection)];

    // A tie carries the floor to halfway to the next tie; the first and last to the end of the tunnel.
    private static IEnumerable<LineLoad> OnTies(Tunnel tunnel, ImmutableArray<Member> ties, double floorPa, double lineNPerM)
    {
        for (int i = 0; i < ties.Length; i++)
        {
            double fromM = i == 0 ? 0 : (ties[i - 1].Start.Y.Metres + ties[i].Start.Y.Metres) / 2;
            double toM = i == ties.Length - 1 ? tunnel.Length.Metres : (ties[i].Start.Y.Metres + ties[i + 1].Start.Y.Metres) / 2;
            double total = floorPa * tunnel.Span.Metres * (toM - fromM) / ties[i].CutLength.Metres;
            yield return new([ties[i].Id], LoadAxis.Up, ForcePerLength.FromNewtonsPerMetre(-total - lineNPerM), LoadMeasure.Length);
        }
    }

    private static TunnelPoint Between(Member member, Length y)
    {
        double part = (y - member.Start.Y) / (member.End.Y - member.Start.Y);
        return new(member.Start.X + ((member.End.X - member.Start.X) * part), y, member.Start.Z + ((member.End.Z - member.Start.Z) * part));
    }

    private static string Mirrored(string id) => id.Contains("-left-", StringComparison.Ordinal)
        ? id.Replace("-left-", "-right-", StringComparison.Ordinal)
        : id.Replace("-right-", "-left-", StringComparison.Ordinal);
}
