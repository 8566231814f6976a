using System.Collections.Immutable;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Strength.Loads;

/// <summary>The snow cases of a tunnel, each for 1 Pa of ground snow.</summary>
internal static class SnowCases
{
    // Depths of drifts are not straight in the ground snow: where the plan gives none, their shape is taken at 30 psf.
    private const double ShapePa = 30 * AsceWind.PaPerPsf;

    private static readonly double[] QuarterPoints = [0.25, 0.5, 0.75];

    public static IEnumerable<LoadCase> Of(Tunnel tunnel, LoadSite site)
    {
        List<LoadCase> cases = site.IsAsce ? Asce(tunnel, site) : En(tunnel, site);
        cases.AddRange(SnowGap.Of(tunnel, site, cases[0]));
        Pressure? reference = site.SnowPa is { } pa ? Pressure.FromPascals(pa) : null;
        return cases.Select(each => each with { Scale = LoadScale.Snow, SiteReference = reference, FilmPull = Pull(tunnel, site, each) });
    }

    // Snow bulges the film between two bows as wind does.
    private static EndFilmPull? Pull(Tunnel tunnel, LoadSite site, LoadCase each) =>
        each.Surfaces.Select(surface => surface.PlanGravity.Greatest.Pascals).DefaultIfEmpty(0).Max() is > 0 and var factor ? FilmOf.PullUnder(tunnel, site.SnowPa is { } pa and > 0 ? factor * pa : null) : null;

    /// <summary>pf for 1 Pa of ground snow.</summary>
    internal static double FlatFactor(LoadSite site) => AsceSnow.FlatPa(
        AsceSnow.Ce(site.Exposure, site.Roof), AsceSnow.Ct(site.Standard, site.Thermal), AsceSnow.Is(site.Standard, site.Risk), 1);

    /// <summary>True where the slope factor is that of a slippery roof: snow can slide, and the roof is not a warm one with thin insulation.</summary>
    internal static bool IsSlippery(LoadSite site) => site.SlidesFree && AsceSnow.Ct(site.Standard, site.Thermal) > 1.05;

    /// <summary>Snow that came down on the whole roof alike.</summary>
    internal static LoadProfile Balanced(FilmLine line, double flat, double ct, bool slippery) =>
        line.Profile(place => flat * AsceSnow.Cs(ct, slippery, place.SlopeDeg));

    /// <summary>Snow blown over a curved roof: nothing on the left, ASCE 7 figure 7.4-2 on the right; null where none is asked.</summary>
    internal static LoadProfile? CurvedUnbalanced(FilmLine line, double flat, double ce, double ct, bool slippery)
    {
        List<FilmPoint> leeward = [line.Crown, .. line.Points.Where(place => place.SM >= line.Crown.SM - 1e-9)];
        // Where it first gets steeper than 70°: a leg, or a place on the arch.
        int steep = leeward.FindIndex(1, place => place.SlopeDeg >= AsceSnow.BareDeg);
        FilmPoint eave = steep < 0 ? leeward[^1] : leeward[steep];
        // At a corner into a leg the eave has the slope of the roof before it.
        if (steep > 0 && leeward[steep - 1].SM >= eave.SM - 1e-9) eave = leeward[steep - 1];
        double across = eave.XM - line.Crown.XM;
        if (across <= 0) return null;
        double crownLineDeg = Math.Atan2(line.Crown.ZM - eave.ZM, across) * 180 / Math.PI;
        int shape = AsceSnow.UnbalancedCase(eave.SlopeDeg >= AsceSnow.BareDeg ? 90 : eave.SlopeDeg, crownLineDeg);
        if (shape == 0) return null;

        double Load(double slopeDeg) => 2 * flat * AsceSnow.Cs(ct, slippery, slopeDeg) / ce;
        FilmPoint peak = leeward.Skip(1).FirstOrDefault(place => place.SlopeDeg >= AsceSnow.PeakDeg, eave);
        List<(double SM, double Pa)> points = [(0, 0), (line.Crown.SM, 0)];
        foreach (FilmPoint place in leeward.Where(place => place.SM <= eave.SM + 1e-9))
        {
            double pa = shape == 1
                ? Mix(line.Crown.XM, flat / 2, eave.XM, Load(eave.SlopeDeg), place.XM)
                : place.XM < peak.XM
                    ? Mix(line.Crown.XM, flat / 2, peak.XM, Load(AsceSnow.PeakDeg), place.XM)
                    : Mix(peak.XM, Load(AsceSnow.PeakDeg), eave.XM, shape == 3 ? 0 : Load(eave.SlopeDeg), place.XM);
            points.Add((place.SM, pa));
        }
        points.Add((eave.SM, 0));
        return LoadProfile.Of(points);
    }

    /// <summary>Snow blown over a gable: ASCE 7, 7.6.1, for a roof that is no rafter system; null where none is asked.</summary>
    internal static LoadProfile? GableUnbalanced(FilmLine line, double slopeDeg, double flat, double ct, bool slippery, double groundPa, Func<double, double> driftM)
    {
        if (slopeDeg is < 2.38 or > 30.26) return null;
        double run = 1 / Math.Tan(slopeDeg * Math.PI / 180), halfM = line.EndM - line.Crown.XM;
        double highM = driftM(halfM);
        double more = highM * AsceSnow.WeightNPerM3(groundPa) / Math.Sqrt(run) / groundPa, reachM = Math.Min(8.0 / 3 * highM * Math.Sqrt(run), halfM);
        double endM = line.AtPartOfSpanM((line.Crown.XM + reachM - line.StartM) / (line.EndM - line.StartM));
        LoadProfile even = Balanced(line, flat, ct, slippery);
        List<(double SM, double Pa)> points = [.. even.Points.Where(point => point.Distance.Metres <= line.Crown.SM).Select(point => (point.Distance.Metres, 0.3 * point.Value.Pascals))];
        double crownPa = even.AtPa(line.Crown.SM, after: true);
        points.Add((line.Crown.SM, 0.3 * even.AtPa(line.Crown.SM, after: false)));
        points.Add((line.Crown.SM, crownPa + more));
        points.AddRange(even.Points.Where(point => point.Distance.Metres > line.Crown.SM && point.Distance.Metres < endM).Select(point => (point.Distance.Metres, point.Value.Pascals + more)));
        points.Add((endM, even.AtPa(endM, after: false) + more));
        points.Add((endM, even.AtPa(endM, after: true)));
        points.AddRange(even.Points.Where(point => point.Distance.Metres > endM).Select(point => (point.Distance.Metres, point.Value.Pascals)));
        return LoadProfile.Of(points);
    }

    private static List<LoadCase> Asce(Tunnel tunnel, LoadSite site)
    {
        FilmLine line = site.Line;
        double ce = AsceSnow.Ce(site.Exposure, site.Roof), ct = AsceSnow.Ct(site.Standard, site.Thermal), importance = AsceSnow.Is(site.Standard, site.Risk);
        double flat = FlatFactor(site);
        bool slippery = IsSlippery(site);
        List<Coefficient> common =
        [
            LoadSite.Value(AsceSnow.Exposure, ce, "exposure of the roof"),
            LoadSite.Value(site.Standard == LoadStandard.Asce7Of2022 ? AsceSnow.Thermal2022 : AsceSnow.Thermal, ct, "warmth of the roof"),
        ];
        if (site.Standard == LoadStandard.Asce7Of2016) common.Add(LoadSite.Value(AsceSnow.Importance, importance, "importance"));
        common.Add(LoadSite.Value(AsceSnow.Flat(site.Standard), flat * (site.SnowPa ?? 1), site.SnowPa is null ? "flat-roof snow for 1 Pa on the ground" : "flat-roof snow"));
        common.Add(LoadSite.Value(AsceSnow.Slope, AsceSnow.FullUpToDeg(ct, slippery), "slope in degrees up to which all stays; " + (slippery ? "it may slide" : site.SlidesFree ? "it may slide, but film over a warm house does not count as slippery" : "something hinders it from sliding")));

        string curved = tunnel.Bow.Kind == BowKind.Round ? "" : "The roof is taken as a curved one, by the slope at each place.";
        List<LoadCase> cases =
        [
            Case("snow-balanced", "Snow on the whole roof alike", [Balanced(line, flat, ct, slippery)], [.. common], curved),
        ];
        bool gable = tunnel.Bow.Kind == BowKind.Peaked;
        LoadProfile? Blown(FilmLine line) => gable
            ? GableUnbalanced(line, RidgeDeg(line), flat, ct, slippery, site.SnowPa ?? ShapePa, fetchM => site.DriftM(fetchM, site.SnowPa ?? ShapePa, importance))
            : CurvedUnbalanced(line, flat, ce, ct, slippery);
        if (Blown(line) is { } blown && Blown(site.Behind) is not null)
        {
            cases.AddRange(Pair("snow-blown", "Snow blown over from the {0}", site, seen => Blown(seen)!,
                [.. common, LoadSite.Value(gable ? AsceSnow.GableUnbalanced : AsceSnow.CurvedUnbalanced, blown.Greatest.Pascals * (site.SnowPa ?? 1), "greatest load on the lee side")],
                gable && site.SnowPa is null ? "The drift has its shape at 30 psf." : gable ? "" : curved));
        }
        else
        {
            cases.AddRange(Pair("snow-one-side", "Snow slid or cleared off the {0} side only", site, seen => Half(seen, Balanced(seen, flat, ct, slippery)), [.. common],
                "The standard asks for no uneven snow on this roof; snow cleared from one side first is common practice's warning."));
        }
        if (CrownLineDeg(line) < 10)
        {
            double least = AsceSnow.MinimumPa(importance, site.SnowPa ?? ShapePa) / (site.SnowPa ?? ShapePa);
            cases.Add(Case("snow-least", "Least snow of a flat roof", [line.Profile(place => place.SlopeDeg <= AsceSnow.BareDeg ? least : 0)],
                [.. common, LoadSite.Value(AsceSnow.Minimum, least * (site.SnowPa ?? 1), "least snow")]));
        }
        return cases;
    }

    private static List<LoadCase> En(Tunnel tunnel, LoadSite site)
    {
        FilmLine line = site.Line;
        double ce = EnSnow.Ce(site.Roof);
        if (tunnel.Bow.Kind == BowKind.Peaked) return EnPeaked(site, ce);
        double mu3 = EnSnow.Mu3Of(line.Rise);
        ImmutableArray<Coefficient> common =
        [
            LoadSite.Value(EnSnow.Exposure, ce, "exposure of the roof"), LoadSite.Value(EnSnow.Thermal, 1, "warmth of the roof"),
            LoadSite.Value(EnSnow.Mu3, mu3, FormattableString.Invariant($"rise over span {line.Rise:0.00}")),
        ];
        string note = tunnel.Bow.Kind == BowKind.Round ? "" : "The roof is taken as a cylindrical one.";
        return
        [
            Case("snow-balanced", "Snow on the whole roof alike", [line.Profile(place => place.SlopeDeg <= EnSnow.BareDeg ? ce * EnSnow.Even : 0)], common, note),
            .. Pair("snow-blown", "Snow blown over from the {0}", site, seen => EnUneven(seen, ce, mu3), common, note),
        ];
    }

    private static LoadProfile EnUneven(FilmLine line, double ce, double mu3)
    {
        ImmutableArray<FilmPoint> snowed = [.. line.Points.Where(place => place.SlopeDeg <= EnSnow.BareDeg)];
        double fromM = snowed.Min(place => place.XM), toM = snowed.Max(place => place.XM);
        double Part(FilmPoint place) => (place.XM - fromM) / (toM - fromM);
        double[] bends = [.. QuarterPoints.Select(part => line.AtPartOfSpanM((fromM + ((toM - fromM) * part) - line.StartM) / (line.EndM - line.StartM)))];
        return line.Profile(place => place.SlopeDeg <= EnSnow.BareDeg ? ce * EnSnow.Uneven(mu3, Math.Clamp(Part(place), 0, 1)) : 0, bends);
    }

    private static List<LoadCase> EnPeaked(LoadSite site, double ce)
    {
        FilmLine line = site.Line;
        ImmutableArray<Coefficient> used =
        [
            LoadSite.Value(EnSnow.Exposure, ce, "exposure of the roof"), LoadSite.Value(EnSnow.Thermal, 1, "warmth of the roof"),
            LoadSite.Value(EnSnow.Pitched, EnSnow.Mu1(RidgeDeg(line), site.SlidesFree), site.SlidesFree ? "slopes of the roof" : "slopes of the roof; something hinders snow from sliding"),
        ];
        return
        [
            Case("snow-balanced", "Snow on the whole roof alike", [EnPitched(line, site, ce)], used),
            .. Pair("snow-blown", "Snow blown over from the {0}", site, seen => HalfAsMuch(seen, EnPitched(seen, site, ce)), used, ""),
        ];
    }

    private static LoadProfile EnPitched(FilmLine line, LoadSite site, double ce) => line.Profile(place => ce * EnSnow.Mu1(place.SlopeDeg, site.SlidesFree));

    /// <summary>The slope of the roof at the ridge, degrees.</summary>
    internal static double RidgeDeg(FilmLine line) => line.PointAt(Math.Min(line.Crown.SM + 1e-6, line.LengthM)).SlopeDeg;

    internal static LoadCase Case(string code, string words, IEnumerable<LoadProfile> planGravity, ImmutableArray<Coefficient> coefficients, string note = "", string? twin = null) => new()
    {
        Code = code,
        Words = words,
        Kind = LoadKind.Snow,
        TwinCode = twin ?? code,
        Surfaces = [.. planGravity.Select(profile => new SurfaceLoad { PlanGravity = profile })],
        Coefficients = coefficients,
        Note = note,
    };

    /// <summary>Straight from one value to another, and no further; the first where both stand in one place.</summary>
    private static double Mix(double fromX, double from, double toX, double to, double x)
    {
        double part = toX - fromX <= 1e-9 ? 0 : Math.Clamp((x - fromX) / (toX - fromX), 0, 1);
        return (from * (1 - part)) + (to * part);
    }

    private static double CrownLineDeg(FilmLine line)
    {
        FilmPoint eave = line.Points.Where(place => place.SM >= line.Crown.SM).FirstOrDefault(place => place.SlopeDeg >= AsceSnow.BareDeg, line.Points[^1]);
        return Math.Atan2(line.Crown.ZM - eave.ZM, Math.Max(1e-9, eave.XM - line.Crown.XM)) * 180 / Math.PI;
    }

    /// <summary>None of a load left of the crown.</summary>
    private static LoadProfile Half(FilmLine line, LoadProfile whole) => LeftTimes(line, whole, 0);

    /// <summary>Half of a load left of the crown.</summary>
    private static LoadProfile HalfAsMuch(FilmLine line, LoadProfile whole) => LeftTimes(line, whole, 0.5);

    private static LoadProfile LeftTimes(FilmLine line, LoadProfile whole, double times)
    {
        double crownM = line.Crown.SM;
        return LoadProfile.Of(
        [
            .. whole.Points.Where(point => point.Distance.Metres < crownM).Select(point => (point.Distance.Metres, times * point.Value.Pascals)),
            (crownM, times * whole.AtPa(crownM, after: false)), (crownM, whole.AtPa(crownM, after: true)),
            .. whole.Points.Where(point => point.Distance.Metres > crownM).Select(point => (point.Distance.Metres, point.Value.Pascals)),
        ]);
    }

    /// <summary>A case from the left, and the same from the right on the bow seen from behind.</summary>
    private static IEnumerable<LoadCase> Pair(string code, string words, LoadSite site, Func<FilmLine, LoadProfile> fromLeft, ImmutableArray<Coefficient> coefficients, string note)
    {
        string left = code + "-left", right = code + "-right";
        yield return Case(left, words.Replace("{0}", "left", StringComparison.Ordinal), [fromLeft(site.Line)], coefficients, note, right);
        yield return Case(right, words.Replace("{0}", "right", StringComparison.Ordinal), [fromLeft(site.Behind).Mirrored(Length.FromMetres(site.Line.LengthM))], coefficients, note, left);
    }
}
