namespace Hoopwright.Cover.Pull;

/// <summary>How film is to be pulled at a temperature.</summary>
public enum PullAdvice
{
    /// <summary>Do not pull: even pulled as hard as hands can, it hangs too far on the hottest day.</summary>
    TooCold,

    /// <summary>Past snug by the amount given.</summary>
    PastSnug,

    /// <summary>Just snug: smooth, without force.</summary>
    Snug,

    /// <summary>Left hanging by the amount given.</summary>
    Loose,

    /// <summary>Do not pull: however loose it may be laid, it is too tight on the coldest day.</summary>
    TooHot,
}
