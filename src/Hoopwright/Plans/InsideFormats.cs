using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>The climate inside.</summary>
internal static class InsideFormats
{
    private static readonly QuantityRange<Temperature> Air = PlanQuantities.Temperature.Within("-20 °F", "140 °F", "-28 °C", "60 °C").Like("75 °F", "24 °C");

    public static PlanFormat<InsideRules> Inside { get; } = new(
        Quantity<InsideRules, Ratio>("filmLight", PlanQuantities.Percentage.Within("30 %", "92 %").Like("89 %", "89 %"), inside => inside.FilmLight, (inside, value) => inside with { FilmLight = value }),
        Quantity<InsideRules, Ratio>("dirt", PlanQuantities.Percentage.Within("0 %", "50 %").Like("5 %", "5 %"), inside => inside.Dirt, (inside, value) => inside with { Dirt = value }),
        Choice<InsideRules, FilmKind>("film", inside => inside.Film, (inside, value) => inside with { Film = value }),
        Quantity<InsideRules, Ratio>("leak", PlanQuantities.Ratio.Within("0.1", "20").Like("1", "1"), inside => inside.Leak, (inside, value) => inside with { Leak = value }),
        Quantity<InsideRules, Ratio>("cropCover", PlanQuantities.Percentage.Within("0 %", "100 %").Like("50 %", "50 %"), inside => inside.CropCover, (inside, value) => inside with { CropCover = value }),
        YesNo<InsideRules>("doorsOpen", inside => inside.DoorsOpen, (inside, value) => inside with { DoorsOpen = value }),
        Quantity<InsideRules, Temperature>("ventAt", Air, inside => inside.VentAt, (inside, value) => inside with { VentAt = value }),
        YesNo<InsideRules>("innerCover", inside => inside.InnerCover, (inside, value) => inside with { InnerCover = value }),
        Quantity<InsideRules, Temperature>("heatTo", Air, inside => inside.HeatTo, (inside, value) => inside with { HeatTo = value }),
        Quantity<InsideRules, Temperature>("coldest", Air, inside => inside.Coldest, (inside, value) => inside with { Coldest = value }),
        Quantity<InsideRules, Temperature>("warmest", Air, inside => inside.Warmest, (inside, value) => inside with { Warmest = value }),
        Quantity<InsideRules, Temperature>("growthFrom", Air, inside => inside.GrowthFrom, (inside, value) => inside with { GrowthFrom = value }));
}
