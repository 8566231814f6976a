namespace Hoopwright.Frames;

/// <summary>Whose axes a member load follows.</summary>
internal enum LoadFrame
{
    /// <summary>The model's.</summary>
    Global,

    /// <summary>The member's own.</summary>
    Member,
}
