namespace Hoopwright.Sharing;

/// <summary>What became of one pushed entry.</summary>
/// <param name="Outcome">What was done with it.</param>
/// <param name="Id">Its id; none where it had none that could be read.</param>
/// <param name="AheadSeconds">By how many seconds its id is ahead of the server's clock; none when it is not. The device's clock is worth a look.</param>
/// <param name="Why">Why it was refused, for a person; none otherwise.</param>
public sealed record EntryReceipt(EntryOutcome Outcome, string? Id = null, long? AheadSeconds = null, string? Why = null);
