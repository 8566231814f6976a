using System.Text;
using CsCheck;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;
using Hoopwright.Testing;
using Hoopwright.Testing.Generators;

namespace Hoopwright.Tests.Strength.Loads;

public sealed class WindCaseTests
{
    private const string Arch = "ASCE/SEI 7-16, arched roof from the ground, from memory, evaluated by an independent program";
    private const double Psf = AsceWind.PaPerPsf, FootM = 0.3048;

    private static string Site(string loads = "", string site = "") => $"\"site\": {{ \"wind\": \"105 mph\", \"groundSnow\": \"30 psf\"{site} }}, \"loads\": {{ \"standard\": \"asce7-16\", \"exposure\": \"C\"{loads} }}";

    [Theory]
    [InlineData("plus", 6.036, -22.737, -12.337)]
    [InlineData("minus", 13.377, -15.396, -4.996)]
    public void Pressures_on_an_arch_of_rise_two_fifths_are_those_of_the_worked_case(string inside, double windward, double centre, double leeward)
    {
        Plan plan = SamplePlans.Simple(bow: "\"shape\": \"round\", \"sideHeight\": \"0 ft\", \"peakHeight\": \"8 ft\"", rest: Site());
        LoadProfile net = LoadProfiles.Of(plan).Case("wind-left-shut-" + inside).AtSite()!.Surfaces[0].Normal;
        PlanePath film = SamplePlans.LayOut(plan).Bow.FilmLine;
        const string reason = "the case takes Kz as 0.85 and 0.00256 for 0.613 SI: 0.2 %";
        Published.Check(Arch, "windward quarter, psf", windward, net.AtAcrossPa(film, 4.99 * FootM) / Psf, 0.002 * Math.Abs(windward), reason);
        Published.Check(Arch, "centre half, psf", centre, net.AtAcrossPa(film, 5.01 * FootM) / Psf, 0.002 * Math.Abs(centre), reason);
        Published.Check(Arch, "centre half, psf", centre, net.AtAcrossPa(film, 14.99 * FootM) / Psf, 0.002 * Math.Abs(centre), reason);
        Published.Check(Arch, "leeward quarter, psf", leeward, net.AtAcrossPa(film, 15.01 * FootM) / Psf, 0.002 * Math.Abs(leeward), reason);
    }

    [Fact]
    public void Wind_along_falls_off_behind_the_windward_end_and_turns_round_with_the_wind()
    {
        Plan plan = SamplePlans.Simple(rest: Site());
        TunnelLoads loads = LoadProfiles.Of(plan);
        SurfaceLoad front = loads.Case("wind-front-shut-plus").Surfaces[0], back = loads.Case("wind-back-shut-plus").Surfaces[0];
        Length whole = SamplePlans.LayOut(plan).Length;
        Assert.Equal(-0.9 * 0.85, front.FactorBetween(Length.Zero, Length.Zero).Value, 1e-12);
        Assert.Equal(-0.3 * 0.85, front.FactorBetween(whole, whole).Value, 1e-12);
        foreach (double part in new[] { 0.05, 0.2, 0.35, 0.8 })
            Assert.Equal(front.FactorBetween(Length.Zero, whole * part).Value, back.FactorBetween(whole * (1 - part), whole).Value, 1e-9);
        // Over the whole length: the mean of the steps, by their lengths.
        double h = (11 + 4) / 2.0, mean = ((0.9 * h) + (0.5 * h) + (0.3 * (48 - (2 * h)))) / 48;
        Assert.Equal(-0.85 * mean, front.FactorBetween(Length.Zero, whole).Value, 1e-9);
    }

    [Fact]
    public void Doors_and_sides_that_open_make_cases_of_their_own_and_shut_ones_do_not()
    {
        TunnelLoads shut = LoadProfiles.Of(SamplePlans.Simple(rest: Site() + ", \"sides\": { \"left\": { \"kind\": \"fixed\" } }"));
        Assert.DoesNotContain(shut.Cases, each => each.Enclosure is EnclosureClass.PartiallyEnclosed or EnclosureClass.PartiallyOpen);
        TunnelLoads open = LoadProfiles.Of(SamplePlans.Simple(rest: Site() + ", \"sides\": { \"left\": { \"kind\": \"rollUp\", \"hipHeight\": \"4 ft\" } }, \"ends\": { \"front\": { \"doors\": [ { \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\" } ] }, \"back\": { \"closing\": \"framed\" } }"));
        Assert.Equal(EnclosureClass.PartiallyEnclosed, open.Case("wind-front-front-open-plus").Enclosure);
        Assert.Equal(EnclosureClass.PartiallyEnclosed, open.Case("wind-left-left-up-plus").Enclosure);
        Assert.Equal(EnclosureClass.PartiallyOpen, open.Case("wind-left-sides-up-plus").Enclosure);
        // Where a side is open there is no film to press on.
        Assert.Equal(0, open.Case("wind-left-left-up-plus").Surfaces[0].Normal.At(Length.FromFeet(1)).Pascals);
        Assert.NotEqual(0, open.Case("wind-left-shut-plus").Surfaces[0].Normal.At(Length.FromFeet(1)).Pascals);
    }

    private const string EnInside = "EN 1991-1-4, 7.2.9(4) to (6) with tables 7.1 and 7.4b, from memory, worked out by hand";

    private static string EnHouse(string left, string right, string back) => "\"units\": \"metric\", \"site\": { \"wind\": \"28 m/s\" }, "
        + "\"frame\": { \"span\": \"8 m\", \"length\": \"20 m\", \"bowSpacing\": \"2 m\", \"bow\": { \"shape\": \"round\", \"sideHeight\": \"1.5 m\", \"peakHeight\": \"3.8 m\" } }, "
        + $"\"sides\": {{ \"left\": {left}, \"right\": {right} }}, \"ends\": {{ \"front\": {{ \"doors\": [ {{ \"kind\": \"double\", \"width\": \"2.4 m\", \"height\": \"2 m\" }} ] }}, \"back\": {back} }}, "
        + "\"loads\": { \"standard\": \"en1991\" }";

    // h/d is 3.8/8 across and 3.8/20 along. E.g. a side along the wind: e = 7.6 m, so 1.52 m of −1.2, 6.08 m of −0.8 and 12.4 m of −0.5, −0.644 at the mean.
    [Theory]
    [InlineData("wind-left-shut", 0.2, -0.3)]
    [InlineData("wind-left-left-up", 0.9 * 0.73, -0.3)]
    [InlineData("wind-right-left-up", 0.2, 0.9 * -0.36)]
    [InlineData("wind-left-front-open", 0.2, 0.9 * -0.8)]
    [InlineData("wind-right-front-open", 0.2, 0.9 * -0.8)]
    [InlineData("wind-front-front-open", 0.9 * 0.7, -0.3)]
    [InlineData("wind-front-left-up", 0.2, 0.9 * ((1.52 * -1.2) + (6.08 * -0.8) + (12.4 * -0.5)) / 20)]
    [InlineData("wind-back-left-up", 0.2, 0.9 * ((1.52 * -1.2) + (6.08 * -0.8) + (12.4 * -0.5)) / 20)]
    public void By_en_what_the_wind_does_outside_of_a_dominant_opening_it_does_inside_pressing_or_sucking(string code, double most, double least)
    {
        TunnelLoads loads = LoadProfiles.Of(SamplePlans.FromJson(EnHouse("{ \"kind\": \"drop\", \"hipHeight\": \"1.2 m\" }", "{ \"kind\": \"fixed\" }", "{ \"closing\": \"framed\" }")));
        Published.Check(EnInside, code + ", most", most, Cpi("-plus"), 1e-9, "exact");
        Published.Check(EnInside, code + ", least", least, Cpi("-minus"), 1e-9, "exact");

        // States that come to the same loads are one case, named after the first: what the shut house has inside, an open one has as well.
        double Cpi(string sign) => (loads.Cases.FirstOrDefault(each => each.Code == code + sign) ?? loads.Case(code.Replace("front-open", "shut", StringComparison.Ordinal) + sign)).Coefficients[^1].Value.Value;
    }

    [Theory]
    [InlineData(2, 0.75)]
    [InlineData(2.5, 0.825)]
    [InlineData(3, 0.9)]
    [InlineData(double.PositiveInfinity, 0.9)]
    public void What_of_the_outside_comes_in_by_a_dominant_opening(double timesOthers, double part) =>
        Published.Check(EnInside, "part of cpe", part, EnWind.DominantPart(timesOthers), 1e-9, "exact");

    [Fact]
    public void Openings_alike_in_two_ends_are_not_dominant_and_one_twice_as_wide_is()
    {
        Assert.Null(Doors("2.4 m"));
        Assert.Null(Doors("1.21 m"));
        (WindFrom Face, double TimesOthers)? wide = Doors("1 m");
        Assert.Equal(WindFrom.Front, wide!.Value.Face);
        Assert.Equal(2.4, wide.Value.TimesOthers, 1e-9);

        static (WindFrom, double)? Doors(string backM)
        {
            Tunnel tunnel = SamplePlans.LayOut(SamplePlans.FromJson(EnHouse("{ \"kind\": \"fixed\" }", "{ \"kind\": \"fixed\" }", $"{{ \"doors\": [ {{ \"kind\": \"double\", \"width\": \"{backM}\", \"height\": \"2 m\" }} ] }}")));
            return OpenState.Of(tunnel).Single(state => state.FrontDoors && state.BackDoors).Dominant(tunnel);
        }
    }

    [Fact]
    public void By_en_snow_with_wind_past_an_open_side_lies_heavier_than_snow_with_wind_on_a_shut_house()
    {
        Plan plan = SamplePlans.FromJson(EnHouse("{ \"kind\": \"drop\", \"hipHeight\": \"1.2 m\" }", "{ \"kind\": \"fixed\" }", "{ \"closing\": \"framed\" }"));
        TunnelLoads loads = LoadProfiles.Of(plan);
        PlanePath film = SamplePlans.LayOut(plan).Bow.FilmLine;
        double shut = Inner("wind-front-shut-minus"), open = Inner("wind-front-left-up-minus");
        Published.Check(EnInside, "cpi on the film by an open side", 0.9 * 0.6444, open, 1e-4, "four digits");
        Published.Check(EnInside, "cpi on the film, shut", 0.3, shut, 1e-9, "exact");

        // The part of the load that does not change along the tunnel is that of the inside.
        double Inner(string code) => loads.Case(code).Surfaces.Single(surface => surface.ByLength.IsEmpty).Normal.AtAcrossPa(film, 4) / EnWind.Ce(TerrainCategory.II, 3.8);
    }

    [Fact]
    public void Open_doors_do_not_count_where_someone_shuts_them_before_storms()
    {
        const string doors = ", \"ends\": { \"front\": { \"doors\": [ { \"kind\": \"double\", \"width\": \"8 ft\", \"height\": \"7 ft\" } ] }, \"back\": { \"closing\": \"framed\" } }";
        TunnelLoads loads = LoadProfiles.Of(SamplePlans.Simple(rest: Site(", \"shutBeforeStorms\": true") + doors));
        Assert.False(loads.Case("wind-front-front-open-plus").Counts);
        Assert.DoesNotContain(loads.Combinations, each => each.Terms.Any(term => term.CaseCode == "wind-front-front-open-plus"));
        Assert.Contains(LoadProfiles.Of(SamplePlans.Simple(rest: Site() + doors)).Combinations, each => each.Terms.Any(term => term.CaseCode == "wind-front-front-open-plus"));
    }

    [Fact]
    public void A_tunnel_open_at_an_end_is_never_shut()
    {
        TunnelLoads loads = LoadProfiles.Of(SamplePlans.Simple(rest: Site() + ", \"ends\": { \"front\": { \"closing\": \"open\" }, \"back\": { \"closing\": \"framed\" } }"));
        Assert.Equal(EnclosureClass.PartiallyEnclosed, loads.Case("wind-front-shut-plus").Enclosure);
        Assert.All(loads.Cases.SelectMany(each => each.Ends).Where(end => end.Inwards.Pascals != AsceWind.LeastWallPa), end => Assert.False(end.IsFront));
    }

    [Fact]
    public void Least_wind_pushes_sixteen_psf_on_legs_and_eight_on_the_roof()
    {
        Plan plan = SamplePlans.Simple(rest: Site());
        Tunnel tunnel = SamplePlans.LayOut(plan);
        (double acrossN, double upN) = LoadProfiles.Of(plan).Case("wind-least-left").Total(tunnel.Bow.FilmLine);
        Assert.Equal(Psf * FootM * ((16 * 4) + (8 * 7)), acrossN, 1e-3 * acrossN);
        Assert.Equal(0, upN, 1e-9);
    }

    [Fact]
    public void Wind_twice_as_fast_presses_four_times_as_hard_and_its_speed_comes_back() => Gen.Double[5, 80].Sample(speed =>
    {
        TunnelLoads loads = Loads.Value;
        var wind = Speed.FromMetresPerSecond(speed);
        LoadCase once = loads.Case("wind-left-shut-plus").Times(loads.ReferenceOf(wind)), twice = loads.Case("wind-left-shut-plus").Times(loads.ReferenceOf(wind * 2));
        foreach ((ProfilePoint one, ProfilePoint two) in once.Surfaces[0].Normal.Points.Zip(twice.Surfaces[0].Normal.Points))
            Assert.Equal(4 * one.Value.Pascals, two.Value.Pascals, 1e-9 * Math.Abs(two.Value.Pascals));
        Assert.Equal(speed, loads.WindOf(loads.ReferenceOf(wind)).MetresPerSecond, 1e-9);
    });

    private static readonly Lazy<TunnelLoads> Loads = new(() => LoadProfiles.Of(SamplePlans.Simple(rest: Site())));

    [Fact]
    public void Left_and_right_are_mirror_images_on_every_bow_that_is_even() => Generate.ValidPlanText.Sample(text =>
    {
        Plan plan = PlanReader.Read(Encoding.UTF8.GetBytes(text)).Plan;
        foreach (LoadStandard standard in Enum.GetValues<LoadStandard>())
        {
            Plan given = plan with
            {
                Site = plan.Site with
                {
                    Wind = new Written<Speed>("40 m/s", Speed.FromMetresPerSecond(40)),
                    GroundSnow = new Written<Pressure>("1 kPa", Pressure.FromKilopascals(1)),
                },
                Sides = plan.Sides with { Right = null },
                Loads = plan.Loads with { Standard = standard },
            };
            Tunnel tunnel = SamplePlans.LayOut(given);
            TunnelLoads loads = LoadPlanner.Plan(tunnel, new Answers(UnitSystem.Metric));
            Assert.Equal(loads.Cases.Length, loads.Cases.Select(each => each.Code).Distinct().Count());
            foreach (LoadCase each in loads.Cases)
            {
                LoadCase twin = loads.Case(each.TwinCode);
                Assert.Equal(each.Code, twin.TwinCode);
                if (each.Kind is not (LoadKind.Snow or LoadKind.Wind) || !tunnel.Bow.FilmLine.Matches(tunnel.Bow.FilmLine.Mirrored(tunnel.Span / 2), Length.FromMillimetres(0.001))) continue;
                (double acrossN, double upN) = each.Total(tunnel.Bow.FilmLine);
                (double twinAcrossN, double twinUpN) = twin.Total(tunnel.Bow.FilmLine);
                double scale = 1e-6 + (1e-6 * (Math.Abs(acrossN) + Math.Abs(upN)));
                Assert.True(Math.Abs(acrossN + twinAcrossN) < scale && Math.Abs(upN - twinUpN) < scale, $"{text}\n{each.Code}: {acrossN}, {upN} and {twinAcrossN}, {twinUpN}");
                Assert.All(each.Surfaces.SelectMany(surface => surface.Normal.Points.Concat(surface.PlanGravity.Points)), point => Assert.True(double.IsFinite(point.Value.Pascals)));
            }
        }
    }, iter: 30);

    [Fact]
    public void A_bow_that_is_measured_from_the_other_side_has_its_loads_from_the_other_side()
    {
        (int AcrossIn, int HeightIn)[] heights = [(0, 58), (46, 137), (93, 162), (140, 174), (186, 178), (220, 174), (255, 163), (290, 140), (324, 65)];
        string Bow(IEnumerable<(int AcrossIn, int HeightIn)> table) =>
            "\"shape\": \"offsets\", \"offsets\": [ " + string.Join(", ", table.Select(each => $"{{ \"across\": \"{each.AcrossIn} in\", \"height\": \"{each.HeightIn} in\" }}")) + " ]";
        foreach (string standard in new[] { "asce7-16", "en1991" })
        {
            string rest = Site(", \"riskCategory\": \"I\"", ", \"neighbourLeft\": \"4 ft\", \"neighbourRight\": \"4 ft\"").Replace("asce7-16", standard, StringComparison.Ordinal);
            Plan one = SamplePlans.Simple(span: "324 in", bow: Bow(heights), rest: rest);
            Plan other = SamplePlans.Simple(span: "324 in", bow: Bow(heights.Reverse().Select(each => (324 - each.AcrossIn, each.HeightIn))), rest: rest);
            PlanePath film = SamplePlans.LayOut(one).Bow.FilmLine, turned = SamplePlans.LayOut(other).Bow.FilmLine;
            TunnelLoads loads = LoadProfiles.Of(one), mirrored = LoadProfiles.Of(other);
            foreach (LoadCase each in loads.Cases.Where(each => each.Kind is LoadKind.Snow or LoadKind.Wind))
            {
                (double acrossN, double upN) = each.AtSite()!.Total(film);
                (double twinAcrossN, double twinUpN) = mirrored.Case(each.TwinCode).AtSite()!.Total(turned);
                Assert.True(Math.Abs(acrossN + twinAcrossN) + Math.Abs(upN - twinUpN) < 1e-4 * (1 + Math.Abs(acrossN) + Math.Abs(upN)), $"{each.Code}: {acrossN}, {upN} and {twinAcrossN}, {twinUpN}");
            }
        }
    }

    [Fact]
    public void Feet_and_metres_give_the_same_loads()
    {
        Plan us = SamplePlans.Simple(rest: Site(", \"hillFactor\": \"1.2\"", ", \"elevation\": \"1000 ft\""));
        Plan metric = SamplePlans.Simple(span: "6096 mm", length: "14630.4 mm", bow: "\"shape\": \"round\", \"sideHeight\": \"1219.2 mm\", \"peakHeight\": \"3352.8 mm\"",
            rest: Site(", \"hillFactor\": \"1.2\"", ", \"elevation\": \"304.8 m\"")) with
        { Units = UnitSystem.Metric };
        TunnelLoads one = LoadProfiles.Of(us), other = LoadProfiles.Of(metric);
        Assert.Equal(one.Cases.Select(each => each.Code), other.Cases.Select(each => each.Code));
        foreach ((LoadCase a, LoadCase b) in one.Cases.Zip(other.Cases))
        {
            foreach ((SurfaceLoad left, SurfaceLoad right) in a.AtSite()!.Surfaces.Zip(b.AtSite()!.Surfaces))
            {
                Assert.Equal(left.Normal.Points.Length, right.Normal.Points.Length);
                foreach ((ProfilePoint p, ProfilePoint q) in left.Normal.Points.Zip(right.Normal.Points)) Assert.Equal(p.Value.Pascals, q.Value.Pascals, 1e-6);
            }
        }
    }

    [Fact]
    public void Wind_on_the_bare_frame_goes_with_its_tubes_and_with_the_square_of_the_building_wind()
    {
        Plan plan = SamplePlans.Simple(rest: Site(", \"buildingWind\": \"0.5\""));
        Tunnel tunnel = SamplePlans.LayOut(plan);
        TunnelLoads loads = LoadProfiles.Of(plan);
        LineLoad bows = loads.Case("building-bare-left").AtSite()!.Lines.First(line => line.Per == LoadMeasure.Projection);
        double q = AsceWind.VelocityPressurePa(AsceWind.Kz(LoadStandard.Asce7Of2016, Exposure.C, 0), 1, 0.85, 1, 0.5 * 105 * 0.44704);
        Assert.Equal(q * 0.85 * 1.2 * tunnel.BowTube.Outside.Metres, bows.Amount.NewtonsPerMetre, 1e-6);
        Assert.Equal(tunnel.Members.Count(member => member.Role == MemberRole.Bow), bows.MemberIds.Length);
        Assert.Empty(loads.Case("building-bare-left").Surfaces);
    }
}
