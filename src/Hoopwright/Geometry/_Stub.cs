namespace Hoopwright.Geometry { public sealed record PlanePath; }
namespace Hoopwright.Layout { public sealed record BowShape; }
namespace Hoopwright.Quantities { public static class TapeText { public static string Of(Length l, UnitSystem u) => ""; public static string Of(Mass l, UnitSystem u) => ""; public static string Of(Angle l) => ""; } }
