namespace Hoopwright.Weather;

/// <summary>A month of a record, or a year of it, in numbers.</summary>
internal sealed record MonthClimate
{
    internal required int Days { get; init; }

    internal required double MeanC { get; init; }

    internal required double HighestC { get; init; }

    internal required double LowestC { get; init; }

    internal required double MeanDewPointC { get; init; }

    internal required double MeanWindMps { get; init; }

    internal required double GlobalWhPerM2Day { get; init; }

    internal required double BeamWhPerM2Day { get; init; }

    internal required double DiffuseWhPerM2Day { get; init; }

    internal required int FrostDays { get; init; }
}
