namespace Hoopwright.Lists;

/// <summary>Two lists as one.</summary>
internal static class JoinedList
{
    /// <summary>Two lists of names as one: each name of the second that the first has not follows the name it follows there.</summary>
    /// <param name="first">The list that leads.</param>
    /// <param name="second">The other one.</param>
    public static List<T> Of<T>(IReadOnlyList<T> first, IReadOnlyList<T> second)
    {
        List<T> joined = [.. first];
        HashSet<T> known = [.. first];
        int at = 0;
        foreach (T name in second)
        {
            if (known.Add(name)) joined.Insert(at++, name);
            else at = joined.IndexOf(name) + 1;
        }
        return joined;
    }
}
