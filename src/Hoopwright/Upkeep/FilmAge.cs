namespace Hoopwright.Upkeep;

/// <summary>How long the film is on and when its time is up.</summary>
/// <param name="On">The day it was put on; null where neither plan nor site book says.</param>
/// <param name="FromSiteBook">True when the site book says so, false when the plan does.</param>
/// <param name="LifeYears">Years that it is made for.</param>
public sealed record FilmAge(DateOnly? On, bool FromSiteBook, int LifeYears)
{
    private const int WindowMonths = 6;

    /// <summary>The first day of the half year in which to put on new film; null where the day of the old is not known.</summary>
    public DateOnly? RecoverFrom => On?.AddYears(LifeYears).AddMonths(-WindowMonths);

    /// <summary>The day by which new film should be on; null where the day of the old is not known.</summary>
    public DateOnly? RecoverBy => On?.AddYears(LifeYears);

    /// <summary>How many years and months it is on; null where that is not known or it comes later.</summary>
    /// <param name="today">The day asked on.</param>
    public (int Years, int Months)? AgeOn(DateOnly today)
    {
        if (On is not { } on || on > today) return null;
        int months = ((today.Year - on.Year) * 12) + today.Month - on.Month - (today.Day < on.Day ? 1 : 0);
        return (months / 12, months % 12);
    }
}
