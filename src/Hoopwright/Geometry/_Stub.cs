#pragma warning disable
namespace Hoopwright.Geometry { public sealed record PlanePath; }
namespace Hoopwright.Layout { public sealed record BowShape; }
