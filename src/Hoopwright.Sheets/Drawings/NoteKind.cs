namespace Hoopwright.Sheets.Drawings;

/// <summary>How a note is tied to what it is about.</summary>
internal enum NoteKind
{
    /// <summary>By a leader with an arrowhead, for an edge.</summary>
    Arrow,

    /// <summary>By a leader with a dot, for a surface.</summary>
    Dot,

    /// <summary>By lying there.</summary>
    Label,
}
