namespace Hoopwright.Web.Offline;

/// <summary>What the browser's database answered.</summary>
public sealed record ShelfAnswer
{
    /// <summary>True when it did what was asked.</summary>
    public bool Ok { get; init; }

    /// <summary>full when there is no room left, gone when the plan is no longer there, newer, blocked or refused as in <see cref="ShelfState"/>, failed for anything else; null when all is well.</summary>
    public string? Fault { get; init; }

    /// <summary>What the browser said.</summary>
    public string? Message { get; init; }

    /// <summary>True when there is such a plan.</summary>
    public bool Found { get; init; }

    /// <summary>What the plan is called; may be empty.</summary>
    public string Name { get; init; } = "";

    /// <summary>True when the plan is as the page knows it, with the changes on it that it sent: then the text is left out.</summary>
    public bool Same { get; init; }

    /// <summary>The plan as text.</summary>
    public string Document { get; init; } = "";

    /// <summary>Steps of the history that are applied.</summary>
    public int At { get; init; }

    /// <summary>Steps of the history there are.</summary>
    public int Of { get; init; }

    /// <summary>Where the plan changed.</summary>
    public string? Path { get; init; }

    /// <summary>The plans on the shelf.</summary>
    public IReadOnlyList<ShelfEntry> Plans { get; init; } = [];
}
