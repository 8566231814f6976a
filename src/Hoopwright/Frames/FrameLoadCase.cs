using System.Collections.Immutable;

namespace Hoopwright.Frames;

/// <summary>Loads that come and go together.</summary>
/// <param name="Id">Its name in the model.</param>
internal sealed record FrameLoadCase(string Id)
{
    /// <summary>Own weight of all members along this direction, in multiples of standard gravity; (0, 0, -1) is down.</summary>
    public Vector3 SelfWeight { get; init; }

    /// <summary>Forces and moments at nodes.</summary>
    public ImmutableArray<NodeLoad> Nodes { get; init; } = [];

    /// <summary>Loads on members.</summary>
    public ImmutableArray<MemberLoad> Members { get; init; } = [];

    /// <summary>Changes of temperature.</summary>
    public ImmutableArray<MemberTemperature> Temperatures { get; init; } = [];

    /// <summary>Forced movements of supports.</summary>
    public ImmutableArray<SupportMovement> Movements { get; init; } = [];
}
