namespace Hoopwright.Calendar;

/// <summary>What more people would do.</summary>
/// <param name="More">How many more come every day.</param>
/// <param name="End">When all is done then.</param>
public sealed record MoreHelp(int More, DateTime End);
