namespace Hoopwright.Frames;

/// <summary>Reads how a model is to be solved.</summary>
internal static class FrameFileAnalysis
{
    private const int MostModes = 50;

    /// <summary>The analysis; what is not said is assumed, and told.</summary>
    internal static FrameAnalysis Read(ModelGroup file, ModelNames<int> nodes, ModelProblems problems)
    {
        if (!file.Has("analysis"))
        {
            problems.Assume("model.analysis", "analysis", "The model does not say how it is to be solved.", "linear, in space");
            return new();
        }
        if (file.Group("analysis") is not { } group)
            return new();
        group.Only(["kind", "modes", "planar", "tolerance"]);
        if (!group.Has("kind"))
            problems.Assume("model.analysis", "analysis.kind", "The model does not say how it is to be solved.", "linear");
        var usual = new FrameAnalysis();
        return usual with
        {
            Kind = group.Word("kind", FrameWords.Kinds) ?? usual.Kind,
            Modes = group.Count("modes", 1, MostModes) ?? usual.Modes,
            Planar = group.Flag("planar") ?? usual.Planar,
            Tolerance = Tolerance(group, problems) ?? usual.Tolerance,
        };
    }

    private static double? Tolerance(ModelGroup group, ModelProblems problems)
    {
        if (group.Number("tolerance") is not { } share)
            return null;
        if (share is >= 1e-12 and <= 1e-3)
            return share;
        problems.Error("model.analysis.tolerance", group.PathOf("tolerance"), "The tolerance is the force that may be left out of balance, as a share of the greatest; this one is out of reach.", null, "1e-12 to 1e-3");
        return null;
    }
}
