namespace Hoopwright.Running;

/// <summary>
/// Runs pieces of work that know nothing of each other, and comes back when all are done. The domain has no threads of its own: where
/// there is a second core, the caller hands in a way to use it. What comes out is the same either way, since each piece writes to its own
/// place and they are put together in a fixed order.
/// </summary>
/// <param name="work">The pieces. The first should be the longest.</param>
public delegate void SideBySide(params Action[] work);
