namespace Hoopwright.Plans;

/// <summary>Which way a usual length of a US plan goes to the mark that a metric plan takes in its place.</summary>
internal enum MetricWay
{
    /// <summary>To the nearest mark: heights, gaps and margins, where a little more or less is neither safe nor unsafe.</summary>
    Nearest,

    /// <summary>To the mark above: depths and what is "at least".</summary>
    Up,

    /// <summary>To the mark below: spacings and what is "at most".</summary>
    Down,

    /// <summary>Not at all: a size that is metric already, or that follows from what the plan gives.</summary>
    AsItIs,
}
