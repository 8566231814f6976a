using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>The rules of the cover as answered by the plan or by the usual values.</summary>
internal sealed record CoverRules
{
    private CoverRules(Plans.Cover cover, Answers answers)
    {
        Layers = answers.Take("cover.layers", CoverDefaults.Layers, cover.Layers);
        Thickness = answers.Take("cover.thickness", CoverDefaults.Thickness, cover.Thickness);
        Order = answers.Take("cover.order", CoverDefaults.Order, cover.Order);
        RoofEndAllowance = answers.Take("cover.roofEndAllowance", CoverDefaults.RoofEndAllowance, cover.RoofEndAllowance);
        RoofEndTrim = answers.Take("cover.roofEndTrim", CoverDefaults.RoofEndTrim, cover.RoofEndTrim);
        RoofSideAllowance = answers.Take("cover.roofSideAllowance", CoverDefaults.RoofSideAllowance, cover.RoofSideAllowance);
        EndBelow = answers.Take("cover.endBelow", CoverDefaults.EndBelow, cover.EndBelow);
        EndAbove = answers.Take("cover.endAbove", CoverDefaults.EndAbove, cover.EndAbove);
        EndWorking = answers.Take("cover.endWorking", CoverDefaults.EndWorking, cover.EndWorking);
        EndSide = answers.Take("cover.endSide", CoverDefaults.EndSide, cover.EndSide);
        CutStep = answers.Take("cover.cutStep", CoverDefaults.CutStep, cover.CutStep);
        TemporaryWireSpacing = answers.Take("cover.temporaryWireSpacing", CoverDefaults.TemporaryWireSpacing, cover.TemporaryWireSpacing);
        EndsOnBow = answers.Take("cover.endsOnBow", CoverDefaults.EndsOnBow, cover.EndsOnBow);
    }

    internal int Layers { get; }

    internal Length Thickness { get; }

    internal CoverOrder Order { get; }

    internal Length RoofEndAllowance { get; }

    internal Length RoofEndTrim { get; }

    internal Length RoofSideAllowance { get; }

    internal Length EndBelow { get; }

    internal Length EndAbove { get; }

    internal Length EndWorking { get; }

    internal Length EndSide { get; }

    internal Length CutStep { get; }

    internal Length TemporaryWireSpacing { get; }

    internal bool EndsOnBow { get; }

    internal static CoverRules Of(Plans.Cover cover, Answers answers) => new(cover, answers);
}
