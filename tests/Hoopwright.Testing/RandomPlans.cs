using System.Globalization;
using System.Text;
using CsCheck;

namespace Hoopwright.Testing;

/// <summary>Random plans as grower might write them, in feet or in metres, of every shape and kind of door; all of them can be built.</summary>
public static class RandomPlans
{
    /// <summary>JSON text of a plan that lays out without errors.</summary>
    public static Gen<string> Valid { get; } =
        from metric in Gen.Bool
        from shape in Gen.Int[0, 3]
            // Within what film rolls and lumber are sold for: larger tunnels are a diagnostic, not a plan that can be built.
        from spanFt in Gen.Int[11, 30]
        from lengthFt in Gen.Int[10, 110]
        from spacingFt in Gen.Double[3, 6]
        from sideFt in Gen.Double[0, 5.5]
        from rise in Gen.Double[0.45, 0.9]
        from rest in Gen.Int[0, int.MaxValue]
        select Write(metric, shape, spanFt, Math.Max(lengthFt, 8), spacingFt, Math.Round(sideFt * 4) / 4, rise, rest);

    private static string Write(bool metric, int shape, int spanFt, int lengthFt, double spacingFt, double sideFt, double rise, int rest)
    {
        // The choices are the digits of one random number, so that a failing plan shrinks as one.
        int left = rest;
        int Pick(int of)
        {
            int picked = left % of;
            left = (left / of) ^ (rest >> 7 & 1023);
            return picked;
        }

        string Len(double feet) => metric
            ? string.Create(CultureInfo.InvariantCulture, $"\"{Math.Round(feet * 304.8):0} mm\"")
            : Math.Round(feet * 12 * 16) % (12 * 16) == 0
                ? string.Create(CultureInfo.InvariantCulture, $"\"{Math.Round(feet):0} ft\"")
                : string.Create(CultureInfo.InvariantCulture, $"\"{Math.Round(feet * 12 * 16) / 16} in\"");

        double riseFt = Math.Min(rise * spanFt / 2, shape == 0 ? (spanFt / 2.0) - 0.1 : 20);
        riseFt = Math.Min(riseFt, 16 - sideFt);
        double peakFt = Math.Round((sideFt + riseFt) * 4) / 4;
        riseFt = peakFt - sideFt;
        double shoulderFt = Math.Min(2, riseFt / 2.5);
        string bow = shape switch
        {
            0 => $"\"shape\": \"round\", \"sideHeight\": {Len(sideFt)}, \"peakHeight\": {Len(peakFt)}",
            1 => $"\"shape\": \"gothic\", \"sideHeight\": {Len(sideFt)}, \"peakHeight\": {Len(peakFt)}, \"shoulderRadius\": {Len(shoulderFt)}",
            2 => $"\"shape\": \"peaked\", \"sideHeight\": {Len(sideFt)}, \"peakHeight\": {Len(peakFt)}, \"shoulderRadius\": {Len(shoulderFt)}",
            _ => "\"shape\": \"offsets\", \"offsets\": [" + string.Join(", ", Enumerable.Range(0, 9).Select(step =>
            {
                double across = spanFt * step / 16.0;
                double height = sideFt + (riseFt * Math.Sqrt(Math.Max(0, 1 - Math.Pow((across - (spanFt / 2.0)) / (spanFt / 2.0), 2))));
                return $"{{ \"across\": {Len(step == 8 ? spanFt / 2.0 : across)}, \"height\": {Len(height)} }}";
            })) + "]",
        };
        var plan = new StringBuilder();
        plan.Append(CultureInfo.InvariantCulture, $"{{ \"hoopwright\": \"1.0\", \"name\": \"random\", \"units\": \"{(metric ? "metric" : "us")}\",");
        plan.Append(CultureInfo.InvariantCulture, $" \"site\": {{ \"fallAlong\": \"{Pick(5) * 0.5 - 1} %\", \"fallAcross\": \"{Pick(3) - 1} %\", \"postTops\": \"{(Pick(2) == 0 ? "level" : "followGround")}\" }},");
        plan.Append(CultureInfo.InvariantCulture, $" \"frame\": {{ \"span\": {Len(spanFt)}, \"length\": {Len(lengthFt)}, \"bowSpacing\": {Len(Math.Round(spacingFt * 2) / 2)}, \"bays\": \"{(Pick(2) == 0 ? "equal" : "lastShort")}\", \"bow\": {{ {bow} }}");
        if (Pick(3) == 0 && peakFt > 8) plan.Append(CultureInfo.InvariantCulture, $", \"tie\": {{ \"height\": {Len(sideFt + (riseFt * 0.55))}, \"every\": {1 + Pick(3)} }}");
        plan.Append(CultureInfo.InvariantCulture, $", \"purlins\": {{ \"count\": {1 + (2 * Pick(3))} }}, \"braces\": {{ \"corners\": {2 * Pick(3)}, \"bays\": 1 }} }},");
        plan.Append(CultureInfo.InvariantCulture, $" \"ground\": {{ \"anchor\": \"{(Pick(6) == 0 ? "boards" : "posts")}\", \"postConcrete\": \"{new[] { "none", "corners", "cornersAndMiddle", "all" }[Pick(4)]}\" }},");
        plan.Append(" \"ends\": { \"front\": ").Append(End(peakFt, spanFt, Pick, Len));
        if (Pick(2) == 0) plan.Append(", \"back\": ").Append(End(peakFt, spanFt, Pick, Len));
        plan.Append(" },");
        double hipFt = Math.Clamp(peakFt * 0.35, 1, 5);
        plan.Append(CultureInfo.InvariantCulture, $" \"sides\": {{ \"left\": {Side(Pick(3), hipFt, Len)}");
        if (Pick(2) == 0) plan.Append(CultureInfo.InvariantCulture, $", \"right\": {Side(Pick(3), hipFt, Len)}");
        plan.Append(CultureInfo.InvariantCulture, $" }}, \"cover\": {{ \"layers\": {1 + Pick(2)} }} }}");
        return plan.ToString();
    }

    private static string Side(int kind, double hipFt, Func<double, string> len) => kind switch
    {
        0 => "{ \"kind\": \"fixed\" }",
        1 => $"{{ \"kind\": \"rollUp\", \"hipHeight\": {len(hipFt)} }}",
        _ => $"{{ \"kind\": \"drop\", \"hipHeight\": {len(hipFt)} }}",
    };

    private static string End(double peakFt, double spanFt, Func<int, int> pick, Func<double, string> len)
    {
        int closing = pick(8);
        if (closing == 0) return "{ \"closing\": \"open\" }";
        if (closing == 1) return "{ \"closing\": \"roofSheet\" }";
        // A door in the middle fits under the flattest bow when header and all stay under half the peak's height.
        string kind = new[] { "side", "double", "sliding", "overhead" }[pick(4)];
        double width = kind == "side" ? 3 : kind == "double" ? 5 : 4;
        bool door = peakFt > 9.5 && spanFt > 16 && pick(5) > 0;
        string doors = door ? $", \"doors\": [ {{ \"kind\": \"{kind}\", \"width\": {len(width)}, \"height\": {len(peakFt * 0.55)}, \"swing\": \"{(pick(2) == 0 ? "out" : "in")}\" }} ]" : "";
        return $"{{ \"closing\": \"framed\", \"postTop\": \"{(pick(2) == 0 ? "bow" : "bracket")}\"{doors} }}";
    }
}
