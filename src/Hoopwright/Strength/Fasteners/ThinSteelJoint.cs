namespace Hoopwright.Strength.Fasteners;

/// <summary>A screw through two thin steel parts.</summary>
internal readonly record struct ThinSteelJoint
{
    /// <summary>d, nominal diameter of the screw.</summary>
    internal required double ScrewM { get; init; }

    /// <summary>dw, diameter of head or washer.</summary>
    internal required double HeadM { get; init; }

    /// <summary>t1, the part under the head.</summary>
    internal required double HeadSideM { get; init; }

    /// <summary>Fu1 of that part.</summary>
    internal required double HeadSideUltimatePa { get; init; }

    /// <summary>t2, the part the thread holds in.</summary>
    internal required double PointSideM { get; init; }

    /// <summary>Fu2 of that part.</summary>
    internal required double PointSideUltimatePa { get; init; }

    /// <summary>Strength of the screw itself in tension, by its maker; null where not known.</summary>
    internal double? ScrewTensionN { get; init; }

    /// <summary>Strength of the screw itself in shear, by its maker; null where not known.</summary>
    internal double? ScrewShearN { get; init; }
}
