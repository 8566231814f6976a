namespace Hoopwright.Sharing;

/// <summary>Told to open pages: something changed, ask for it.</summary>
/// <param name="Version">Version of the plan.</param>
/// <param name="Cursor">Cursor of the newest entry.</param>
public sealed record PlanChange(long Version, long Cursor);
