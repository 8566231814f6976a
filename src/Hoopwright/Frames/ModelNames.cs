using Hoopwright.Diagnostics;
using Hoopwright.ModelFiles;

namespace Hoopwright.Frames;

/// <summary>The names of one kind of thing in a model file, and where each stands in the model.</summary>
/// <param name="what">The kind, as in "There is no node 7."</param>
/// <param name="problems">Where unknown names are told.</param>
internal sealed class ModelNames<T>(string what, ModelProblems problems)
{
    // Looking for the nearest of more names than this costs more than it helps.
    private const int MostCompared = 2_000;
    private readonly Dictionary<string, (bool Sound, T Value)> _names = new(StringComparer.Ordinal);

    /// <summary>Adds a sound one.</summary>
    internal void Add(string id, T value) => _names.Add(id, (true, value));

    /// <summary>Adds one that is there but faulty, which has been told: naming it is no fault of its own.</summary>
    internal void AddFaulty(string id) => _names.Add(id, (false, default!));

    /// <summary>True with the one of this name; false, and told, when there is none.</summary>
    internal bool Find(string? id, string path, out T value)
    {
        value = default!;
        if (id is null)
            return false;
        if (_names.TryGetValue(id, out var found))
        {
            value = found.Value;
            return found.Sound;
        }
        string? nearest = problems.IsFull || _names.Count > MostCompared ? null : NearestWord.Of(id, [.. _names.Keys]);
        problems.Error("model.unknown-name", path, $"There is no {what} {SeenText.Shorten(id)}.", SeenText.Shorten(id), nearest is null ? $"the name of a {what} of the model" : SeenText.Shorten(nearest));
        return false;
    }
}
