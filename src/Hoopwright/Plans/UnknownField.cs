namespace Hoopwright.Plans;

/// <summary>A field that this version does not know.</summary>
/// <param name="Name">The field's name.</param>
/// <param name="Json">Its value as JSON text, compact.</param>
public sealed record UnknownField(string Name, string Json);
