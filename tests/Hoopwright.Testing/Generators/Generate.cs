using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Testing.Generators;

/// <summary>Random inputs for property tests.</summary>
public static partial class Generate
{
    private static readonly string[] Intruders =
    [
        "null", "true", "12", "1e400", "-1e308", "99999999999999999999", "\"\"", "\"12\"", "\"1,200 mm\"", "\"-5 ft\"", "\"10 km\"", "\"9999 m\"",
        "\"nothing\"", "[]", "{}", "[[[[]]]]", "{ \"a\": { \"b\": 1 } }", "\"\\ud800\"", "\"0 in\"", "\"0.0001 mm\"", "NaN",
    ];

    private static Gen<Func<byte[], byte[]>> Accident { get; } =
        from kind in Gen.Int[0, 8]
        from place in Gen.Int[0, 1_000_000]
        from number in Gen.Int[0, 1_000_000]
        select (Func<byte[], byte[]>)(bytes => Mangle(bytes, kind, place, number));

    /// <summary>Documents of plans that can be built: laid out without errors, and covered with film that is sold.</summary>
    public static Gen<string> ValidPlanText { get; } = PlanTexts.Document.Where(text => CanBeBuilt(PlanReader.Read(Encoding.UTF8.GetBytes(text))));

    /// <summary>Plans that can be built: every shape, kind of door, side, anchor and end, in both unit systems.</summary>
    public static Gen<Plan> ValidPlan { get; } = ValidPlanText.Select(text => PlanReader.Read(Encoding.UTF8.GetBytes(text)).Plan);

    /// <summary>Documents of plans as drawn, before any is left out for not laying out; to measure how many those are.</summary>
    public static Gen<string> PlanText { get; } = PlanTexts.Document;

    /// <summary>Plan documents after one to four accidents: bytes flipped, text lost, doubled or swapped, values of another kind or size.</summary>
    public static Gen<byte[]> MangledPlanBytes { get; } =
        from text in PlanTexts.Document
        from accidents in Accident.Array[1, 4]
        select accidents.Aggregate(Encoding.UTF8.GetBytes(text), (bytes, accident) => accident(bytes));

    // The widest roll of film taken for granted, less what is cut past the edges: a wider roof is a diagnostic.
    private static readonly Length WidestRoof = Length.FromFeet(52);

    private static bool CanBeBuilt(PlanReading reading) =>
        reading.IsUsable && TunnelPlanner.LayOut(reading.Plan, new Answers(reading.Plan.Units ?? UnitSystem.UsCustomary)).Tunnel is { } tunnel
        && tunnel.Bow.FilmLine.Length < WidestRoof;

    private static byte[] Mangle(byte[] bytes, int kind, int where, int which)
    {
        if (bytes.Length == 0) return bytes;
        int at = where % bytes.Length;
        int size = Math.Min(1 + (which % 40), bytes.Length - at);
        return kind switch
        {
            0 => [.. bytes[..at], (byte)which, .. bytes[(at + 1)..]],
            1 => [.. bytes[..at], .. bytes[(at + size)..]],
            2 => bytes[..at],
            3 => [.. bytes[..(at + size)], .. bytes[at..]],
            4 => [.. bytes[..at], (byte)which, .. bytes[at..]],
            _ => Encoding.UTF8.GetBytes(MangleText(Encoding.UTF8.GetString(bytes), kind, where, which)),
        };
    }

    private static string MangleText(string text, int kind, int where, int which)
    {
        MatchCollection fields = Field().Matches(text);
        if (fields.Count == 0) return text;
        Match one = fields[where % fields.Count], other = fields[which % fields.Count];
        return kind switch
        {
            5 => Replace(text, one.Groups["value"], Intruders[which % Intruders.Length]),
            6 => Replace(text, one.Groups["value"], other.Groups["value"].Value),
            7 => text.Insert(one.Index, one.Value + ", "),
            _ => text.Insert(one.Index, string.Create(CultureInfo.InvariantCulture, $"\"field{which}\": {other.Groups["value"].Value}, ")),
        };
    }

    private static string Replace(string text, Group part, string by) => text[..part.Index] + by + text[(part.Index + part.Length)..];

    [GeneratedRegex("""
        "[a-zA-Z]+": (?<value>"[^"]*"|[0-9]+|true|false)
        """, RegexOptions.CultureInvariant)]
    private static partial Regex Field();
}
