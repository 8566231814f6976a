namespace Hoopwright.Cli;

/// <summary>A file that cannot be read or written; the message is for people.</summary>
internal sealed class FileFault(string message) : Exception(message);
