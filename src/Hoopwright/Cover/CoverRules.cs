using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Cover;

/// <summary>The rules of the cover as answered by the plan or by the usual values.</summary>
internal sealed record CoverRules
{
    private CoverRules(Plans.Cover cover, Answers answers)
    {
        Layers = answers.Take("cover.layers", CoverDefaults.Layers, cover.Layers);
        Inflated = Layers > 1 && answers.Take("cover.inflated", CoverDefaults.Inflated, cover.Inflated);
        InflationPressure = Inflated ? answers.Take("cover.inflationPressure", CoverDefaults.InflationPressure, cover.InflationPressure) : Pressure.Zero;
        Thickness = answers.Take("cover.thickness", LayoutDefaults.FilmThickness(answers.Units), cover.Thickness);
        Order = answers.Take("cover.order", CoverDefaults.Order, cover.Order);
        RoofEndAllowance = answers.Take("cover.roofEndAllowance", CoverDefaults.RoofEndAllowance, cover.RoofEndAllowance);
        RoofEndTrim = answers.Take("cover.roofEndTrim", CoverDefaults.RoofEndTrim, cover.RoofEndTrim);
        RoofSideAllowance = answers.Take("cover.roofSideAllowance", CoverDefaults.RoofSideAllowance, cover.RoofSideAllowance);
        EndBelow = answers.Take("cover.endBelow", CoverDefaults.EndBelow, cover.EndBelow);
        EndAbove = answers.Take("cover.endAbove", CoverDefaults.EndAbove, cover.EndAbove);
        EndWorking = answers.Take("cover.endWorking", CoverDefaults.EndWorking, cover.EndWorking);
        EndSide = answers.Take("cover.endSide", CoverDefaults.EndSide, cover.EndSide);
        CutStep = answers.Take("cover.cutStep", CoverDefaults.CutStep(answers.Units), cover.CutStep);
        TemporaryWireSpacing = answers.Take("cover.temporaryWireSpacing", CoverDefaults.TemporaryWireSpacing, cover.TemporaryWireSpacing);
        EndsOnBow = answers.Take("cover.endsOnBow", CoverDefaults.EndsOnBow, cover.EndsOnBow);
        CurtainEndAllowance = answers.Take("cover.curtainEndAllowance", CoverDefaults.CurtainEndAllowance, cover.CurtainEndAllowance);
        CurtainAllowance = answers.Take("cover.curtainAllowance", CoverDefaults.CurtainAllowance, cover.CurtainAllowance);
        LeafWrap = answers.Take("cover.leafWrap", CoverDefaults.LeafWrap, cover.LeafWrap);
        SidesInChannel = answers.Take("cover.sidesInChannel", CoverDefaults.SidesInChannel, cover.SidesInChannel);
        RopeSpacing = answers.Take("cover.ropeSpacing", CoverDefaults.RopeSpacing, cover.RopeSpacing);
        RopeAllowance = answers.Take("cover.ropeAllowance", CoverDefaults.RopeAllowance, cover.RopeAllowance);
        TapePerPoint = answers.Take("cover.tapePerPoint", CoverDefaults.TapePerPoint, cover.TapePerPoint);
    }

    internal int Layers { get; }

    internal bool Inflated { get; }

    internal Pressure InflationPressure { get; }

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

    internal Length CurtainEndAllowance { get; }

    internal Length CurtainAllowance { get; }

    internal Length LeafWrap { get; }

    internal bool SidesInChannel { get; }

    internal Length RopeSpacing { get; }

    internal Length RopeAllowance { get; }

    internal Length TapePerPoint { get; }

    internal static CoverRules Of(Plans.Cover cover, Answers answers) => new(cover, answers);
}
