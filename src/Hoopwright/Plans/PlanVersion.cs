using System.Globalization;

namespace Hoopwright.Plans;

/// <summary>
/// The version of the plan format. A new minor version adds fields; a new major one changes what fields mean, so that an
/// older program refuses it.
/// </summary>
/// <param name="Major">From 1.</param>
/// <param name="Minor">From 0.</param>
public readonly record struct PlanVersion(int Major, int Minor) : IComparable<PlanVersion>
{
    /// <summary>The version that this program writes.</summary>
    public static PlanVersion Current => new(1, 0);

    /// <summary>Reads a version such as 1.0.</summary>
    /// <returns>Null when the text is no version.</returns>
    public static PlanVersion? Read(string text)
    {
        var parts = text.Split('.');
        return parts.Length == 2 && IsNumber(parts[0], out var major) && IsNumber(parts[1], out var minor) && major > 0
            ? new PlanVersion(major, minor)
            : null;
    }

    /// <inheritdoc/>
    public int CompareTo(PlanVersion other) => (Major, Minor).CompareTo((other.Major, other.Minor));

    /// <summary>Major and minor with a point between.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Major}.{Minor}");

    // "01.0" would be written back as "1.0", so it is not read.
    private static bool IsNumber(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number)
        && text == number.ToString(CultureInfo.InvariantCulture);
}
