namespace Hoopwright.Sources;

/// <summary>A standard, book or paper, so that its title is written once.</summary>
/// <param name="Title">Title, edition and publisher.</param>
internal sealed record PublishedWork(string Title)
{
    /// <summary>A place in it. Unless said otherwise it was written from memory of it, and is to be confirmed.</summary>
    /// <param name="place">Clause, equation, table or row.</param>
    /// <param name="standing">How surely it is known.</param>
    internal Citation At(string place, Standing standing = Standing.FromMemory) => new(Title, place, standing);
}
