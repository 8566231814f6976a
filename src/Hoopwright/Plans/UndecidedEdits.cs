namespace Hoopwright.Plans;

/// <summary>Finds the fields of which copies of the plan said different things when they were put together.</summary>
internal static class UndecidedEdits
{
    /// <summary>Says which fields nobody has decided yet.</summary>
    /// <param name="plan">The document.</param>
    /// <param name="problems">Where to say it.</param>
    public static void Check(PlanNode plan, PlanProblems problems)
    {
        var edits = plan.Children.FirstOrDefault(field => field.Name == "edits")?.Children ?? [];
        foreach (var field in edits.GroupBy(edit => Text(edit, "path") ?? "", StringComparer.Ordinal).Where(field => field.Key.Length > 0))
        {
            var said = field.GroupBy(edit => Text(edit, "value"), StringComparer.Ordinal).ToList();
            if (said.Count < 2)
                continue;
            var node = plan.Nearest(field.Key, out var isThere);
            var stands = isThere ? node.ToJson() : null;
            // Somebody typed something else since, or took it out, and that decides.
            if (!said.Exists(value => value.Key == stands) && !(isThere && node.Kind == PlanNodeKind.Group))
                continue;
            problems.Warning(
                PlanCodes.Undecided, isThere ? node : field.First(), $"Copies of the plan say different things of {field.Key}: {string.Join("; ", said.Select(Saying))}. The plan goes by {Shown(stands)} until somebody decides.",
                string.Join(", or ", said.Select(value => Shown(value.Key))));
        }
    }

    private static string Saying(IGrouping<string?, PlanNode> value)
    {
        var by = value.Select(edit => Text(edit, "by") ?? Text(edit, "device")).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        return by.Count == 0 ? Shown(value.Key) : $"{Shown(value.Key)} ({string.Join(", ", by.Select(Diagnostics.SeenText.Shorten))})";
    }

    private static string Shown(string? json) => json is null ? "nothing" : Diagnostics.SeenText.Shorten(json);

    private static string? Text(PlanNode edit, string name) => edit.Children.FirstOrDefault(field => field.Name == name) is { Kind: PlanNodeKind.Text } node ? node.Text : null;
}
