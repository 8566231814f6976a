namespace Hoopwright.Frames;

/// <summary>How a frame is solved.</summary>
internal enum FrameAnalysisKind
{
    /// <summary>On the frame as drawn.</summary>
    Linear,

    /// <summary>With the stiffness that axial forces, moments and torques give or take, iterated to equilibrium.</summary>
    SecondOrder,

    /// <summary>Linear, then the multiples of the load at which the frame buckles.</summary>
    Buckling,

    /// <summary>Following the frame through displacements and turns of any size.</summary>
    LargeDisplacement,
}
