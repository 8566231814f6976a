using System.Collections.Immutable;

namespace Hoopwright.Web.Fields;

/// <summary>One field of a plan as the schema of the plan describes it.</summary>
public sealed record Field
{
    /// <summary>Its name in the file.</summary>
    public required string Name { get; init; }

    /// <summary>Its path in the schema: dotted names, with [] for the items of a list.</summary>
    public required string Path { get; init; }

    /// <summary>How it is asked for.</summary>
    public required FieldKind Kind { get; init; }

    /// <summary>What it means, in plain words.</summary>
    public string Help { get; init; } = "";

    /// <summary>The words to choose from.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>How a value is written in feet and inches; empty for none.</summary>
    public string Example { get; init; } = "";

    /// <summary>How a value is written in metres; empty for none.</summary>
    public string ExampleMetric { get; init; } = "";

    /// <summary>True when the group means nothing without it.</summary>
    public bool Required { get; init; }

    /// <summary>The fields of a group, or of each group of a list.</summary>
    public ImmutableArray<Field> Fields { get; init; } = [];
}
