using System.Collections.Immutable;
using Hoopwright.Sources;

namespace Hoopwright.Takeoff;

/// <summary>Something that every joint of a run takes.</summary>
/// <param name="Item">The item, as in the price book.</param>
/// <param name="Size">Its size.</param>
/// <param name="PerJoint">How many for one joint.</param>
/// <param name="Rule">Why so many.</param>
/// <param name="Source">Where that comes from.</param>
/// <param name="RulePaths">Where in the plan the rule can be given.</param>
public sealed record JointHardware(string Item, string Size, int PerJoint, string Rule, Citation Source, ImmutableArray<string> RulePaths);
