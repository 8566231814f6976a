namespace Hoopwright.Sharing;

/// <summary>Why the server did not do what was asked (RFC 9457, problem details).</summary>
/// <param name="Title">In a few words.</param>
/// <param name="Status">Status of the answer.</param>
/// <param name="Detail">For the person who asked: what is wrong and what would do.</param>
/// <param name="Code">Stable word for programs; docs/sharing.md lists them.</param>
public sealed record SharingProblem(string Title, int Status, string Detail, string Code);
