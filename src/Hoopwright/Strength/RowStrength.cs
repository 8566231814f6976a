using System.Collections.Immutable;
using Hoopwright.Quantities;

namespace Hoopwright.Strength;

/// <summary>How the whole row of bows stands the entered loads, in space.</summary>
/// <param name="Parts">The worst member of each kind.</param>
/// <param name="SnowBucklingFactor">Multiple of the worst entered snow combination at which the row, weakened, buckles in space; null when no snow is entered or it does not buckle.</param>
/// <param name="Looked">How many combinations were looked at, linear.</param>
/// <param name="Combinations">The combinations that were solved at second order, in words: those that can be the worst for any kind of member.</param>
/// <param name="Buckles">The combinations under which the row buckles before it carries them.</param>
public sealed record RowStrength(ImmutableArray<RowPart> Parts, Ratio? SnowBucklingFactor, int Looked, ImmutableArray<string> Combinations, ImmutableArray<string> Buckles);

/// <summary>The worst member of a kind.</summary>
/// <param name="Kind">bow, end bow, brace, purlin or tie.</param>
/// <param name="MemberId">The member.</param>
/// <param name="Place">Where it stands, in words.</param>
/// <param name="Utilisation">Demand over strength; null when nothing can be counted on: a member too slender for its compression.</param>
/// <param name="Governs">What governs, in words.</param>
/// <param name="Words">The combination in words.</param>
public sealed record RowPart(string Kind, string MemberId, string Place, Ratio? Utilisation, string Governs, string Words);
