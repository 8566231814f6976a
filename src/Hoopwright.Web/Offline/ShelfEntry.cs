namespace Hoopwright.Web.Offline;

/// <summary>A plan on the shelf.</summary>
/// <param name="Id">Its identity in this browser.</param>
/// <param name="Name">What it is called; may be empty.</param>
/// <param name="Changed">When it was last changed, milliseconds since 1970, UTC.</param>
/// <param name="Sound">False when the stored text is no plan.</param>
public sealed record ShelfEntry(string Id, string Name, double Changed, bool Sound);
