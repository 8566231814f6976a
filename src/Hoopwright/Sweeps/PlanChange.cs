using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Sweeps;

/// <summary>One change to a plan that may make the tunnel stronger.</summary>
/// <param name="Code">Its stable name, such as <c>closer-bows</c>; changes of one kind and different size share it.</param>
/// <param name="Words">What is done, in the grower's words.</param>
/// <param name="Values">The fields that it sets.</param>
/// <param name="Source">Where the size of the change comes from.</param>
public sealed record PlanChange(string Code, string Words, ImmutableArray<ChangedValue> Values, Citation Source);

/// <summary>A field that a change sets.</summary>
/// <param name="Path">Where in the plan, as dotted names and [index].</param>
/// <param name="Text">The value, as it would be typed.</param>
/// <param name="IsCount">True for a number that stands in the plan without quotes.</param>
public sealed record ChangedValue(string Path, string Text, bool IsCount = false)
{
    internal string Json => IsCount ? Text : PlanEdit.AsText(Text);
}
