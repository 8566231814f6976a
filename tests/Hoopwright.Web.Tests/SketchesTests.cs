using System.Globalization;
using System.Text.RegularExpressions;
using Hoopwright.Web.Fields;
using Hoopwright.Web.Parts;

namespace Hoopwright.Web.Tests;

public sealed partial class SketchesTests
{
    [Fact]
    public void Every_field_that_is_more_than_words_has_a_small_drawing()
    {
        string[] without = [.. All(FieldSheet.Read().Fields).Where(field => !field.Path.StartsWith("edits", StringComparison.Ordinal) && field.Kind is not (FieldKind.Words or FieldKind.Group or FieldKind.Groups) && Sketches.Of(field.Path) is null).Select(field => field.Path)];
        Assert.True(without.Length == 0, string.Join('\n', without));
    }

    [Fact]
    public void Every_small_drawing_stays_on_its_sheet_of_72_by_48()
    {
        foreach (Field field in All(FieldSheet.Read().Fields))
        {
            if (Sketches.Of(field.Path) is not { } sketch) continue;
            foreach (string path in new[] { sketch.Thing, sketch.Measure })
            {
                Assert.StartsWith("M", path, StringComparison.Ordinal);
                foreach (Match to in Absolute().Matches(path))
                {
                    double[] at = [.. Number().Matches(to.Groups[2].Value).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture))];
                    bool isInside = to.Groups[1].Value switch
                    {
                        "H" => at.All(IsAcross),
                        "V" => at.All(IsUp),
                        "A" => IsAcross(at[^2]) && IsUp(at[^1]),
                        _ => at.Where((_, index) => index % 2 == 0).All(IsAcross) && at.Where((_, index) => index % 2 == 1).All(IsUp),
                    };
                    Assert.True(isInside, $"{field.Path}: {to.Value} of {path}");
                }
            }
        }

        static bool IsAcross(double at) => at is >= 0 and <= 72;

        static bool IsUp(double at) => at is >= 0 and <= 48;
    }

    private static IEnumerable<Field> All(IEnumerable<Field> fields) => fields.SelectMany(field => All(field.Fields).Prepend(field));

    [GeneratedRegex("([MLHVCA])([^a-zA-Z]*)")]
    private static partial Regex Absolute();

    [GeneratedRegex(@"-?\d+(?:\.\d+)?")]
    private static partial Regex Number();
}
