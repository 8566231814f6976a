namespace Hoopwright.Server.Storage;

/// <summary>The database could not do its work. Nothing that was confirmed before is lost.</summary>
/// <param name="fault">What is the matter.</param>
/// <param name="message">The same for the person who runs the server.</param>
/// <param name="cause">What the database said.</param>
internal sealed class StorageException(StorageFault fault, string message, Exception? cause = null) : Exception(message, cause)
{
    public StorageFault Fault { get; } = fault;
}
