using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>Upkeep of a tunnel that stands.</summary>
internal static class UpkeepFormats
{
    private static readonly QuantityRange<Speed> Gust = PlanQuantities.Speed.Within("10 mph", "150 mph", "4.5 m/s", "67 m/s").Like("30 mph", "13 m/s");

    public static PlanFormat<UpkeepRules> Upkeep { get; } = new(
        Date<UpkeepRules>("filmOn", upkeep => upkeep.FilmOn, (upkeep, value) => upkeep with { FilmOn = value }),
        Count<UpkeepRules>("filmLife", 1, 15, upkeep => upkeep.FilmLife, (upkeep, value) => upkeep with { FilmLife = value }),
        Quantity<UpkeepRules, Ratio>("clearAt", PlanQuantities.Percentage.Within("10 %", "90 %").Like("50 %", "50 %"), upkeep => upkeep.ClearAt, (upkeep, value) => upkeep with { ClearAt = value }),
        Quantity<UpkeepRules, Speed>("closeWind", Gust, upkeep => upkeep.CloseWind, (upkeep, value) => upkeep with { CloseWind = value }),
        Quantity<UpkeepRules, Speed>("tightenWind", Gust, upkeep => upkeep.TightenWind, (upkeep, value) => upkeep with { TightenWind = value }),
        Quantity<UpkeepRules, Ratio>("windShare", PlanQuantities.Percentage.Within("30 %", "95 %").Like("75 %", "75 %"), upkeep => upkeep.WindShare, (upkeep, value) => upkeep with { WindShare = value }));
}
