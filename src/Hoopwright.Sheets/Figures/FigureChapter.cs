namespace Hoopwright.Sheets.Figures;

/// <summary>The chapter of the packet at whose end a drawing stands.</summary>
public enum FigureChapter
{
    /// <summary>Set-out and frame.</summary>
    SetOut,

    /// <summary>Ground and ends.</summary>
    Ends,

    /// <summary>Cover.</summary>
    Cover,

    /// <summary>Putting the film on.</summary>
    Covering,

    /// <summary>Cut lists.</summary>
    Cuts,

    /// <summary>What the tunnel stands.</summary>
    Strength,
}
