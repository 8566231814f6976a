namespace Hoopwright.Mutants;

/// <summary>A fault that can be planted: one place in the source where one thing is said otherwise.</summary>
/// <param name="Number">By which it is switched on; stays the same while others are dropped.</param>
/// <param name="Area">The area it lies in.</param>
/// <param name="File">Its file, from the root of the copy.</param>
/// <param name="Line">Its line, counted from 1.</param>
/// <param name="Is">What stands there.</param>
/// <param name="Becomes">What stands there instead.</param>
internal sealed record Fault(int Number, Area Area, string File, int Line, string Is, string Becomes);
