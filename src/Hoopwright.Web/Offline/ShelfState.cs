namespace Hoopwright.Web.Offline;

/// <summary>Whether this browser keeps what is put on the shelf.</summary>
/// <param name="Keeps">False when it keeps nothing, as in private windows of some browsers.</param>
/// <param name="Persisted">True when the browser has promised not to clear it by itself.</param>
/// <param name="Cause">newer when a newer version of the app keeps its plans here, blocked when an older one holds them in another tab, refused for anything else; empty when all is well.</param>
/// <param name="Why">What it said when it refused.</param>
public sealed record ShelfState(bool Keeps, bool Persisted, string Cause, string Why);
