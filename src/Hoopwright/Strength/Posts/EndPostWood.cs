using Hoopwright.Plans;
using Hoopwright.Strength.Wood;

namespace Hoopwright.Strength.Posts;

/// <summary>The wood of end-wall posts.</summary>
/// <param name="Species">Species group.</param>
/// <param name="Grade">Grade.</param>
/// <param name="Conditions">Conditions; treated posts in the ground are wet.</param>
internal readonly record struct EndPostWood(WoodSpecies Species, WoodGrade Grade, WoodConditions Conditions);
