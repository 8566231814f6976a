namespace Hoopwright.Sources;

/// <summary>Where a figure comes from.</summary>
/// <param name="Title">Title and publisher of the source, or the plain words "common practice, no source".</param>
/// <param name="Place">Page, table, equation or row; empty when there is none.</param>
/// <param name="Standing">How surely it is known.</param>
public sealed record Citation(string Title, string Place, Standing Standing)
{
    /// <summary>What the trade does, without a source to point at.</summary>
    public static Citation CommonPractice { get; } = new("common practice, no source", "", Standing.CommonPractice);

    /// <summary>A figure written from memory.</summary>
    public static Citation FromMemory { get; } = new("from memory", "", Standing.FromMemory);

    /// <summary>Geometry or arithmetic alone.</summary>
    public static Citation Geometry { get; } = new("geometry", "", Standing.Derived);

    /// <summary>What the plan itself gives.</summary>
    public static Citation ThePlan { get; } = new("the plan", "", Standing.Derived);

    /// <summary>Source, place and standing in one line.</summary>
    public override string ToString() => Place.Length == 0 ? Title : $"{Title}, {Place}";
}
