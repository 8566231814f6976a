using Hoopwright.Cover;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Days;

/// <summary>How long the roof film takes.</summary>
/// <param name="People">How many pull.</param>
/// <param name="Film">Film of the roof as it is cut, all layers.</param>
/// <param name="Work">Time for it, reserve not included.</param>
/// <param name="Needed">Whole hours of weather needed, reserve included.</param>
public sealed record CoverHours(int People, Area Film, TimeSpan Work, int Needed)
{
    /// <summary>The rule.</summary>
    public static Formula Rule { get; } = new(
        "t", "0.5 h to unroll and tie + film·(15 person-hours a sheet of 48 by 100 ft)/people, half as long again for beginners; and the reserve, up to whole hours", "h", Citation.CommonPractice);

    internal static CoverHours Of(Plan plan, CoverPlan cover, Answers answers)
    {
        double filmM2 = cover.Pieces.Where(piece => piece.Role == CoverRole.Roof).Sum(piece => piece.Count * piece.AlongRoll.Metres * piece.AcrossRoll.Metres);
        int people = answers.Take("crew.people", DayDefaults.People(answers.Units), plan.Crew.People);
        double reserve = answers.Take("coverDay.reserve", DayDefaults.Reserve, plan.CoverDay.Reserve).Value;
        double times = answers.Take("crew.skill", DayDefaults.Skill, plan.Crew.Skill) switch { CrewSkill.Beginner => DayDefaults.BeginnerTimes, CrewSkill.Practised => 1 };
        double hours = DayDefaults.SettingOutHours + (filmM2 * DayDefaults.PersonHoursPerM2 * times / people);
        // Whole minutes, so that the last bit of a division decides nothing.
        int minutes = plan.CoverDay.Hours * 60 ?? (int)Math.Ceiling(Math.Round(hours * 60, 6));
        int needed = (int)Math.Ceiling(Math.Round(minutes * (1 + reserve) / 60, 9));
        return new(people, Area.FromSquareMetres(filmM2), TimeSpan.FromMinutes(minutes), needed);
    }
}
