namespace Hoopwright.Web.Engine;

/// <summary>The engine stopped, or could not be reached; the message is what it said.</summary>
public sealed class EngineException : Exception
{
    /// <summary>A fault that nothing is known of.</summary>
    public EngineException()
    {
    }

    /// <summary>A fault with what was said of it.</summary>
    public EngineException(string message)
        : base(message)
    {
    }

    /// <summary>A fault with its cause.</summary>
    public EngineException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
