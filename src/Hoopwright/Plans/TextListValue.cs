namespace Hoopwright.Plans;

/// <summary>A list of texts.</summary>
/// <param name="item">How one of them is read and written.</param>
internal sealed class TextListValue(TextValue item) : ListValue<string?, string>(item, "a list of texts in [ ]")
{
    protected override string Given(string? read) => read ?? "";

    protected override string? Read(string one) => one;
}
