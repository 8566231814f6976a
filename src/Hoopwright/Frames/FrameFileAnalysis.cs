using Hoopwright.ModelFiles;

namespace Hoopwright.Frames;

/// <summary>Reads how a model is to be solved.</summary>
internal static class FrameFileAnalysis
{
    private const int MostModes = 50;
    private const int MostSteps = 10_000;

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
        group.Only(["kind", "modes", "planar", "tolerance", "control"]);
        if (!group.Has("kind"))
            problems.Assume("model.analysis", "analysis.kind", "The model does not say how it is to be solved.", "linear");
        var usual = new FrameAnalysis();
        return usual with
        {
            Kind = group.Word("kind", FrameWords.Kinds) ?? usual.Kind,
            Modes = group.Count("modes", 1, MostModes) ?? usual.Modes,
            Planar = group.Flag("planar") ?? usual.Planar,
            Tolerance = Tolerance(group, problems) ?? usual.Tolerance,
            Path = group.Group("control") is { } control ? Control(control, nodes) : usual.Path,
        };
    }

    private static PathControl Control(ModelGroup group, ModelNames<int> nodes)
    {
        group.Only(["kind", "steps", "node", "freedom", "reach"]);
        var usual = new PathControl();
        usual = usual with { Kind = group.Word("kind", FrameWords.Controls) ?? usual.Kind, Steps = group.Count("steps", 1, MostSteps) ?? usual.Steps };
        return usual.Kind switch
        {
            PathControlKind.Load => usual,
            PathControlKind.Arc => usual with { Reach = group.NeededNumber("reach", "0.05") ?? 0 },
            PathControlKind.Displacement => usual with
            {
                Node = nodes.Find(group.NeededText("node", "\"2\""), group.PathOf("node"), out int node) ? node : 0,
                Freedom = group.NeededWord("freedom", FrameWords.FreedomPlaces) ?? 0,
                Reach = group.NeededNumber("reach", "-0.5") ?? 0,
            },
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
