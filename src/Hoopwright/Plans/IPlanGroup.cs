namespace Hoopwright.Plans;

/// <summary>Marks a kind of value that is a group of fields with a meaning of its own when it is empty.</summary>
internal interface IPlanGroup
{
}
