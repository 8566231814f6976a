using System.Text.Json;

namespace Hoopwright.ModelFiles;

/// <summary>A named value in a group of a model or job file.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Json">Its value.</param>
/// <param name="Group">Path of the group.</param>
internal readonly record struct ModelEntry(string Id, JsonElement Json, string Group)
{
    /// <summary>Its path.</summary>
    internal string Path => ModelGroup.PathOf(Group, Id);
}
