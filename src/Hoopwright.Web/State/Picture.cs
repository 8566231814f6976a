namespace Hoopwright.Web.State;

/// <summary>A drawing to show.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">Its title.</param>
/// <param name="Description">One sentence for those who cannot see it.</param>
/// <param name="Svg">The picture itself.</param>
public sealed record Picture(string Name, string Title, string Description, string Svg);
