using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Packets;

/// <summary>How a result comes about.</summary>
/// <param name="Pattern">The results it is for: a path without unit endings, in which [*] stands for any place in a list.</param>
/// <param name="Text">The formula or rule, in words and symbols.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Inputs">Results it is computed from; [*] takes the place of the result itself, list by list.</param>
/// <param name="Rules">Places in the plan that it rests on.</param>
public sealed record Working(string Pattern, string Text, Citation Source, ImmutableArray<string> Inputs, ImmutableArray<string> Rules);
