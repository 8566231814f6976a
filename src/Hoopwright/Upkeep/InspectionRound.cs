using System.Collections.Immutable;
using Hoopwright.Diagnostics;

namespace Hoopwright.Upkeep;

/// <summary>A round through the tunnel.</summary>
/// <param name="Id">Its name: weekly, winter, storm, after or cover.</param>
/// <param name="Title">When it is made.</param>
/// <param name="Items">What to look at.</param>
public sealed record InspectionRound(string Id, Phrase Title, ImmutableArray<InspectionItem> Items);
