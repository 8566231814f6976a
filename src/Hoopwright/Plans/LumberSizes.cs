using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.Plans;

/// <summary>What boards and posts really measure. A nominal 2x6 is 1-1/2 in by 5-1/2 in once dressed and dry.</summary>
public static partial class LumberSizes
{
    // Takes in every solid section that one person can lift; below lie strips, above beams.
    private const double LeastMm = 10;
    private const double MostMm = 300;

    /// <summary>Where the actual sizes come from.</summary>
    public static Citation Source { get; } = new(
        "American Softwood Lumber Standard, Voluntary Product Standard PS 20, dressed dry sizes", "Tables 2 to 4",
        Standing.FromMemory);

    /// <summary>The nominal sizes, thin to thick and narrow to wide, from 1x2 to 6x6.</summary>
    public static ImmutableArray<LumberSize> Nominal { get; } =
    [
        Of(1, 2), Of(1, 3), Of(1, 4), Of(1, 6), Of(1, 8), Of(1, 10), Of(1, 12),
        Of(2, 2), Of(2, 3), Of(2, 4), Of(2, 6), Of(2, 8), Of(2, 10), Of(2, 12),
        Of(4, 4), Of(4, 6), Of(4, 8),
        Of(6, 6),
    ];

    /// <summary>Finds a size as people write it: 2x6, 2 x 6, 2×6, 6x2, 2 by 6, or 45x145 mm for an actual size.</summary>
    /// <param name="size">As typed.</param>
    /// <returns>Null when boards are not sold so.</returns>
    public static LumberSize? Find(string? size)
    {
        if (Parse(size) is not { } parsed)
            return null;
        if (parsed.Millimetres)
        {
            return parsed.Small >= LeastMm && parsed.Large <= MostMm
                ? new LumberSize(
                    string.Create(CultureInfo.InvariantCulture, $"{parsed.Small}x{parsed.Large} mm"),
                    Length.FromMillimetres(parsed.Small), Length.FromMillimetres(parsed.Large), IsNominal: false)
                : null;
        }

        var name = string.Create(CultureInfo.InvariantCulture, $"{parsed.Small}x{parsed.Large}");
        return Nominal.FirstOrDefault(nominal => nominal.Name == name);
    }

    /// <summary>The nominal size nearest to what was typed; 2x4 when that holds no two numbers.</summary>
    internal static LumberSize Nearest(string? size)
    {
        var (small, large) = Parse(size) is { } parsed
            ? (parsed.Small / (parsed.Millimetres ? 25.4 : 1), parsed.Large / (parsed.Millimetres ? 25.4 : 1))
            : (2, 4);
        return Nominal.MinBy(nominal =>
        {
            var (thickness, width) = Numbers(nominal.Name);
            return Math.Abs(thickness - small) + Math.Abs(width - large);
        })!;
    }

    /// <summary>
    /// The actual size in millimetres that is taken where a nominal one would be; null for a size without one. Each is at least as
    /// strong across. From memory of planed sawn timber as it is sold; common practice, no source.
    /// </summary>
    internal static string? MetricFor(string nominal) => nominal switch
    {
        "1x4" => "22x95 mm",
        "2x4" => "45x95 mm",
        "2x6" => "45x145 mm",
        "2x8" => "45x195 mm",
        "2x10" => "45x220 mm",
        "4x4" => "95x95 mm",
        "4x6" => "95x145 mm",
        "6x6" => "145x145 mm",
        _ => null,
    };

    private static LumberSize Of(int thickness, int width) => new(
        string.Create(CultureInfo.InvariantCulture, $"{thickness}x{width}"),
        Length.FromInches(DressedIn(thickness)), Length.FromInches(DressedIn(width)), IsNominal: true);

    /// <summary>Dressed dry size in inches of a nominal dimension, thickness or width alike for the sizes above.</summary>
    private static double DressedIn(int nominal) => nominal switch
    {
        1 => 0.75,
        2 => 1.5,
        3 => 2.5,
        4 => 3.5,
        6 => 5.5,
        8 => 7.25,
        10 => 9.25,
        12 => 11.25,
        _ => throw new ArgumentOutOfRangeException(nameof(nominal), nominal, "No such nominal dimension."),
    };

    private static (double Small, double Large) Numbers(string name) => Parse(name) is { } parsed ? (parsed.Small, parsed.Large) : (0, 0);

    private static (double Small, double Large, bool Millimetres)? Parse(string? size)
    {
        if (size is null || size.Length > 40 || Written().Match(size) is not { Success: true } match)
            return null;
        var one = double.Parse(match.Groups["one"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        var other = double.Parse(match.Groups["other"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return (Math.Min(one, other), Math.Max(one, other), match.Groups["unit"].Success);
    }

    [GeneratedRegex(@"^\s*(?<one>[0-9]{1,4}(\.[0-9]{1,2})?)\s*([xX×*]|by)\s*(?<other>[0-9]{1,4}(\.[0-9]{1,2})?)\s*(?<unit>mm)?\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
