using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;

namespace Hoopwright.AsBuilt;

/// <summary>The outcome of laying out what stands.</summary>
/// <param name="Tunnel">The tunnel as it stands; as planned while nothing was measured; null when the plan has an error that leaves none.</param>
/// <param name="AsBuilt">What was measured; null while the site book has no measurement, or there is no tunnel.</param>
/// <param name="Diagnostics">Everything found, assumptions apart.</param>
public sealed record AsBuiltOutcome(Tunnel? Tunnel, AsBuiltTunnel? AsBuilt, ImmutableArray<Diagnostic> Diagnostics);
