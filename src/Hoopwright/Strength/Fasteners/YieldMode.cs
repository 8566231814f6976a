namespace Hoopwright.Strength.Fasteners;

/// <summary>How a joint with one plane of shear gives way.</summary>
internal enum YieldMode
{
    /// <summary>Im: the main member crushes.</summary>
    MainCrushes,

    /// <summary>Is: the side member crushes.</summary>
    SideCrushes,

    /// <summary>II: the fastener turns in both.</summary>
    Turns,

    /// <summary>IIIm: it bends at one point, the main member crushes.</summary>
    BendsInSide,

    /// <summary>IIIs: it bends at one point, the side member crushes.</summary>
    BendsInMain,

    /// <summary>IV: it bends in both members.</summary>
    BendsTwice,
}
