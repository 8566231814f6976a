using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;
using Hoopwright.Strength;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Parts;
using Hoopwright.Strength.Wood;
using Hoopwright.Testing;
using static Hoopwright.Strength.CustomaryUnits;

namespace Hoopwright.Tests.Strength.Parts;

public sealed class EndBoardPartsTests
{
    private static readonly LoadCombination Any = new() { Code = "w", Words = "wind", Terms = [], IsStrengthLevel = false, Source = Citation.Geometry };

    [Fact]
    public void A_girt_bends_flat_under_half_the_wall_below_it_and_half_of_that_above()
    {
        // 4 ft of 2x4 at 4 ft between posts 4 ft apart in the middle of an end 11 ft high, 20 psf.
        Tunnel tunnel = SamplePlans.LayOut(SamplePlans.Simple(rest: """ "ends": { "front": { "woodSpecies": "southernPine", "woodGrade": "no2", "postSpacing": "4 ft" } } """));
        PartStrength girts = Parts(tunnel, 20 * PsfPa).Single(part => part.Code == "end-front-girts");
        var check = (WoodCheck)girts.Checks.Single();
        Member girt = tunnel.Members.Single(member => member.Id == girts.Where);
        double lengthM = girt.CutLength.Metres, middleM = (girt.Start.X + girt.End.X).Metres / 2;
        double bowM = tunnel.Bow.UndersideAt(Length.FromMetres(middleM))!.Value.Metres;
        double momentNm = 20 * PsfPa * (bowM / 2) * lengthM * lengthM / 8, sectionM3 = 3.5 * 1.5 * 1.5 / 6 * InchM * InchM * InchM;
        Assert.Equal(momentNm / sectionM3, check.FlatwiseStressPa, 1e-6 * check.FlatwiseStressPa);
        Assert.Equal(0, check.EdgewiseStressPa);
        // Fb 1100 psi, CD 1.6, Cfu 1.1 of a 2x4 laid flat; CM is 1 as Fb·CF is no more than 1150 psi. NDS supplement, table 4B, from memory.
        Assert.Equal(check.FlatwiseStressPa / (1100 * 1.6 * 1.1 * PsiPa), girts.AtWeakest!.Value.Value, 1e-6);
        Assert.Equal(girts.AtWeakest, girts.AtStrongest);
    }

    [Fact]
    public void A_second_row_of_girts_halves_what_a_girt_carries()
    {
        double Use(string girts) => Parts(SamplePlans.LayOut(SamplePlans.Simple(rest: $$""" "ends": { "front": { "girts": [{{girts}}] } } """)), 500)
            .Single(part => part.Code == "end-front-girts").AtWeakest!.Value.Value;
        Assert.True(Use("\"3 ft\", \"6 ft\"") < 0.8 * Use("\"4 ft\""));
    }

    [Fact]
    public void A_header_carries_half_of_its_door_and_of_what_stands_over_it_on_two_boards()
    {
        Tunnel tunnel = SamplePlans.LayOut(SamplePlans.Simple(rest: """ "ends": { "front": { "woodSpecies": "hemFir", "withoutGirts": true, "doors": [ { "kind": "double", "width": "8 ft", "height": "7 ft" } ] } } """));
        PartStrength headers = Parts(tunnel, 400).Single(part => part.Code == "end-front-headers");
        Member header = tunnel.Members.Single(member => member.Id == headers.Where);
        Assert.Equal(MemberRole.Header, header.Role);
        DoorOpening door = Assert.Single(tunnel.Front.Doors);
        double bowM = tunnel.Bow.UndersideAt(door.Centre)!.Value.Metres, lengthM = header.CutLength.Metres;
        double nPerM = 400 * bowM / 2 / 2;
        var check = (WoodCheck)headers.Checks.Single();
        Assert.Equal(nPerM * lengthM * lengthM / 8 / check.FlatwiseStressPa, check.Wood.Section.FlatwiseM3, 1e-9);
        Checks.SaysWhy(check);
    }

    [Fact]
    public void A_species_and_a_grade_in_the_plan_narrow_the_range_and_a_better_grade_is_used_less()
    {
        PartStrength Posts(string wood) => StrengthPlanner.Plan(
            SamplePlans.LayOut(SamplePlans.Simple(rest: $$""" "site": { "groundSnow": "5 psf", "wind": "80 mph" }, "ends": { "front": { {{wood}} "postSpacing": "4 ft" } } """)), new Answers(UnitSystem.UsCustomary))
            .Parts.Single(part => part.Code == "end-front-girts");
        PartStrength any = Posts(""), pine = Posts("\"woodSpecies\": \"southernPine\","), best = Posts("\"woodSpecies\": \"southernPine\", \"woodGrade\": \"selectStructural\",");
        Assert.True(any.AtStrongest!.Value.Value < any.AtWeakest!.Value.Value);
        Assert.Equal(pine.AtStrongest, pine.AtWeakest);
        Assert.InRange(pine.AtWeakest!.Value.Value, any.AtStrongest.Value.Value - 1e-9, any.AtWeakest.Value.Value + 1e-9);
        // Fb 2350 against 1100 psi; wet, the better one keeps 0.85 and the other all of it.
        Assert.Equal(1100 / (2350 * 0.85), best.AtWeakest!.Value.Value / pine.AtWeakest.Value.Value, 1e-6);
    }

    private static PartStrength[] Parts(Tunnel tunnel, double pressurePa) =>
        [.. EndBoardParts.Of(tunnel, tunnel.Front, EndWood.Of(tunnel, tunnel.Front, new Answers(UnitSystem.UsCustomary)), new EndWind(Any, pressurePa))];
}
