using Hoopwright.Quantities;

namespace Hoopwright.Cover.Pull;

/// <summary>
/// The air in which roof film can be pulled midway between what it bears in the cold and how far it may hang in the heat. Below it
/// hands are too weak for that, above it film would have to be left looser than it can be laid evenly.
/// </summary>
/// <param name="Coldest">Coldest air; the film is as cold as the air, before the sun is on it.</param>
/// <param name="Warmest">Warmest air; the film lies in full sun.</param>
public sealed record PullBand(Temperature Coldest, Temperature Warmest);
