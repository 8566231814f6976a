namespace Hoopwright.Web.Offline;

/// <summary>Whether this browser keeps what is put on the shelf.</summary>
/// <param name="Keeps">False when it keeps nothing, as in private windows of some browsers.</param>
/// <param name="Persisted">True when the browser has promised not to clear it by itself.</param>
/// <param name="Why">What it said when it refused.</param>
public sealed record ShelfState(bool Keeps, bool Persisted, string Why);
