namespace Hoopwright.BeforeCuts;

/// <summary>What is about to be cut or poured.</summary>
public enum CutCheckKind
{
    /// <summary>Film.</summary>
    Film,

    /// <summary>End-wall posts.</summary>
    Posts,

    /// <summary>Lock channel.</summary>
    Channel,

    /// <summary>Boards.</summary>
    Boards,

    /// <summary>Concrete.</summary>
    Concrete,
}
