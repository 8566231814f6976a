using Hoopwright.BuildSteps;
using Hoopwright.Calendar;
using Hoopwright.Cover;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength;

namespace Hoopwright.Upkeep;

/// <summary>Works out the upkeep of a tunnel that stands.</summary>
public static class UpkeepPlanner
{
    /// <summary>The upkeep.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="cover">Its film.</param>
    /// <param name="recover">The steps of putting new film on.</param>
    /// <param name="strength">What it stands.</param>
    public static UpkeepReport Plan(Tunnel tunnel, CoverPlan cover, BuildPlan recover, StrengthReport strength)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        ArgumentNullException.ThrowIfNull(recover);
        ArgumentNullException.ThrowIfNull(strength);
        var answers = new Answers(tunnel.Units);
        StormCard? card = strength.Storm is null ? null : StormCardMaker.Of(tunnel, strength, answers);
        UpkeepRules rules = tunnel.Plan.Upkeep;
        int life = answers.Take("upkeep.filmLife", UpkeepDefaults.FilmLife, rules.FilmLife);
        DateOnly? told = StepMarks.Of(tunnel.Plan).GetValueOrDefault(StepNames.RoofFilm, StepMark.None).Day;
        return new UpkeepReport
        {
            Card = card,
            NoCard = card is null ? strength.NotChecked ?? "It is not worked out what the frame stands." : null,
            Rounds = InspectionRounds.Of(tunnel, cover),
            Film = new FilmAge(rules.FilmOn ?? told, rules.FilmOn is null && told is not null, life),
            Order = CrewCalendarSheet.Together(recover.Steps.SelectMany(step => step.Materials)),
            Rules = answers.Rules,
            Assumptions = answers.Assumptions,
        };
    }
}
