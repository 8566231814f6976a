using System.Globalization;
using CsCheck;

namespace Hoopwright.Testing.Generators;

/// <summary>Random plan documents as text, of sizes that people build.</summary>
internal static class PlanTexts
{
    /// <summary>A document; nearly all can be laid out.</summary>
    public static Gen<string> Document { get; } =
        from metric in Gen.Bool
        from style in Gen.Int[0, 2]
        let say = new Saying(metric, style)
        from spanFt in Gen.Int[11, 34]
        from bays in Gen.Int[3, 24]
        from bayIn in Gen.Int[36, 72]
        from sideIn in Gen.Frequency((4, Gen.Int[42, 66]), (1, Gen.Int[0, 41]))
        from rise in Gen.Int[30, 45]
        let spanIn = spanFt * 12
        let peakIn = sideIn + (spanIn * rise / 100)
        from bow in Bow(say, spanIn, sideIn, peakIn)
        from extra in Gen.Int[0, 30]
        from bayRule in Any("equal", "lastShort")
        from frame in FrameParts(say, sideIn, peakIn)
        from site in Site(say)
        from ground in Ground(say)
        from front in End(say, spanIn, peakIn)
        from back in Maybe(End(say, spanIn, peakIn))
        from left in Side(say, sideIn)
        from right in Maybe(Side(say, sideIn))
        from cover in Cover(say)
        from order in Order(say)
        from cuts in Maybe(Gen.Int[0, 36].Select(usefulIn => $"\"kerf\": \"{say.Halves(0)}\", \"endTrim\": \"{say.Of(1)}\", \"usefulLeftover\": \"{say.Of(usefulIn)}\""))
        select $$"""
            {
              "hoopwright": "1.0",
              "units": "{{(metric ? "metric" : "us")}}",
              "site": { {{site}} },
              "frame": {
                "span": "{{say.Of(spanIn)}}", "length": "{{say.Of((bays * bayIn) + extra)}}",
                "bowSpacing": "{{say.Of(bayIn)}}", "bays": "{{bayRule}}",
                "bow": { {{bow}} }{{frame}}
              },
              "ground": { {{ground}} },
              "ends": { "front": { {{front}} }{{(back.Length > 0 ? $", \"back\": {{ {back} }}" : "")}} },
              "cover": { {{cover}} },
              "cuts": { {{cuts}} },
              "sides": { "left": { {{left}} }{{(right.Length > 0 ? $", \"right\": {{ {right} }}" : "")}} }{{order}}
            }

            """;

    private static Gen<string> Any(params string[] words) => Gen.Int[0, words.Length - 1].Select(index => words[index]);

    private static Gen<string> Maybe(Gen<string> some) => Gen.Bool.SelectMany(given => given ? some : Gen.Const(""));

    private static Gen<string> Bow(Saying say, int spanIn, int sideIn, int peakIn)
    {
        string heights = $"\"sideHeight\": \"{say.Of(sideIn)}\", \"peakHeight\": \"{say.Of(peakIn)}\"";
        Gen<string> shoulder = Maybe(Gen.Int[16, 26].Select(radiusIn => $", \"shoulderRadius\": \"{say.Of(radiusIn)}\""));
        return Gen.OneOf(
            shoulder.Select(bend => $"\"shape\": \"round\", {heights}{bend}"),
            shoulder.Select(bend => $"\"shape\": \"gothic\", {heights}{bend}"),
            shoulder.Select(bend => $"\"shape\": \"peaked\", {heights}{bend}"),
            Gen.Int[5, 9].Select(count => $"\"shape\": \"offsets\", \"offsets\": [ {Offsets(say, spanIn, sideIn, peakIn, count)} ]"),
            from count in Gen.Int[5, 9]
            from topIn in Gen.Int[spanIn * 2 / 5, spanIn * 3 / 5]
            from lessIn in Gen.Int[0, 12]
            select $"\"shape\": \"offsets\", \"offsets\": [ {UnevenOffsets(say, spanIn, sideIn, peakIn, topIn, lessIn, count)} ]");
    }

    // A quarter ellipse on either side of a top that stands off the middle, on legs of two heights.
    private static string UnevenOffsets(Saying say, int spanIn, int sideIn, int peakIn, int topIn, int lessIn, int count)
    {
        IEnumerable<(int AcrossIn, int UpIn)> Quarter(int wideIn, int legIn) => Enumerable.Range(0, count).Select(index =>
        {
            double part = (double)index / (count - 1);
            return ((int)Math.Round(part * wideIn), legIn + (int)Math.Round((peakIn - legIn) * Math.Sqrt(1 - ((1 - part) * (1 - part)))));
        });

        return string.Join(", ", Quarter(topIn, sideIn).Concat(Quarter(spanIn - topIn, Math.Max(0, sideIn - lessIn)).Reverse().Skip(1).Select(point => (spanIn - point.AcrossIn, point.UpIn)))
            .Select(point => $"{{ \"across\": \"{say.Of(point.Item1)}\", \"height\": \"{say.Of(point.Item2)}\" }}"));
    }

    // The left half of an ellipse on legs.
    private static string Offsets(Saying say, int spanIn, int sideIn, int peakIn, int count) => string.Join(", ", Enumerable.Range(0, count).Select(index =>
    {
        double part = (double)index / (count - 1);
        double up = sideIn + ((peakIn - sideIn) * Math.Sqrt(1 - ((1 - part) * (1 - part))));
        return $"{{ \"across\": \"{say.Halves((int)Math.Round(part * spanIn))}\", \"height\": \"{say.Of((int)Math.Round(up))}\" }}";
    }));

    private static Gen<string> FrameParts(Saying say, int sideIn, int peakIn) =>
        from purlins in Any("", ", \"purlins\": { \"count\": 1 }", ", \"purlins\": { \"count\": 3 }", ", \"purlins\": { \"count\": 5 }")
        from braces in Any("", ", \"braces\": { \"corners\": 2, \"bays\": 1 }", ", \"braces\": { \"corners\": 4, \"bays\": 2 }")
        from tie in Any("", $", \"tie\": {{ \"height\": \"{say.Of(sideIn + ((peakIn - sideIn) * 6 / 10))}\", \"every\": 2 }}")
        select purlins + braces + tie;

    private static Gen<string> Site(Saying say) =>
        from along in Any("0 %", "0.5 %", "1:50", "-2 %")
        from across in Any("0 %", "1 %", "-1.5 %", "0.02")
        from tops in Any("level", "followGround")
        from faces in Any("S", "NNE", "200 deg", "12.5°")
        from room in Gen.Int[24, 400]
        select $"\"fallAlong\": \"{along}\", \"fallAcross\": \"{across}\", \"postTops\": \"{tops}\", \"frontFaces\": \"{faces}\", \"roomLeft\": \"{say.Of(room)}\"";

    private static Gen<string> Ground(Saying say) =>
        from anchor in Any("posts", "boards")
        from concrete in Any("none", "corners", "cornersAndMiddle", "all")
        from deep in Gen.Int[24, 36]
        from more in Gen.Int[1, 8]
        select $"\"anchor\": \"{anchor}\", \"postConcrete\": \"{concrete}\", \"postEmbedment\": \"{say.Of(deep)}\", \"holeDepth\": \"{say.Of(deep + more)}\"";

    private static Gen<string> Cover(Saying say) =>
        from layers in Gen.Int[1, 2]
        from order in Any("endsFirst", "roofFirst")
        from spacing in Gen.Int[4, 12]
        from channel in Any("", ", \"sidesInChannel\": true", ", \"endsOnBow\": true")
        select string.Create(CultureInfo.InvariantCulture, $"\"layers\": {layers}, \"order\": \"{order}\", \"battenSpacing\": \"{say.Of(spacing)}\"{channel}");

    private static Gen<string> Side(Saying say, int sideIn) =>
        from kind in Any("fixed", "rollUp", "drop")
        from belowIn in Gen.Int[0, 6]
        select $"\"kind\": \"{kind}\", \"hipHeight\": \"{say.Of(Math.Max(24, sideIn - belowIn))}\"";

    private static Gen<string> End(Saying say, int spanIn, int peakIn) => Gen.Frequency(
        (6, from spacing in Gen.Int[40, 80]
            from top in Any("bow", "bracket")
            from girts in Any("", ", \"withoutGirts\": true", $", \"girts\": [ \"{say.Of(30)}\", \"{say.Of(50)}\" ]")
            from doors in Doors(say, spanIn, peakIn)
            select $"\"closing\": \"framed\", \"postSpacing\": \"{say.Of(spacing)}\", \"postTop\": \"{top}\"{girts}, \"doors\": [ {doors} ]"),
        (1, Gen.Const("\"closing\": \"roofSheet\"")),
        (1, Gen.Const("\"closing\": \"open\"")));

    // Under low bows only a low door in the middle stands; two doors want a wide end.
    private static Gen<string> Doors(Saying say, int spanIn, int peakIn) => peakIn < 108 || spanIn < 160
        ? Maybe(Door(say, 28, Math.Min(40, spanIn / 4), Math.Min(60, peakIn / 2), Math.Min(72, peakIn * 6 / 10), spanIn / 2, 6))
        : spanIn < 280
            ? Maybe(Door(say, 30, Math.Min(96, spanIn / 3), 72, Math.Max(73, Math.Min(96, peakIn - 36)), spanIn / 2, 18))
            : Gen.OneOf(
                Gen.Const(""),
                Door(say, 30, 96, 72, Math.Max(73, Math.Min(96, peakIn - 36)), spanIn / 2, 24),
                from left in Door(say, 30, 40, 72, 78, spanIn * 36 / 100, 8)
                from right in Door(say, 30, 40, 72, 78, spanIn * 64 / 100, 8)
                select $"{left}, {right}");

    private static Gen<string> Door(Saying say, int narrowIn, int wideIn, int lowIn, int highIn, int middleIn, int offIn) =>
        from kind in Any("side", "double", "sliding", "overhead")
        from width in Gen.Int[narrowIn, Math.Max(narrowIn, wideIn)]
        from height in Gen.Int[lowIn, highIn]
        from off in Gen.Int[-offIn, offIn]
        from swing in Any("out", "in")
        from hinge in Any("", ", \"hinge\": \"left\"", ", \"hinge\": \"right\"")
        from cover in Any("film", "sheet", "none")
        from vent in Any("", "", $", \"ventHeight\": \"{say.Of(8)}\"")
        select $"{{ \"kind\": \"{kind}\", \"width\": \"{say.Of(width)}\", \"height\": \"{say.Of(height)}\", \"centre\": \"{say.Of(middleIn + off)}\", \"swing\": \"{swing}\", \"leafCover\": \"{cover}\"{hinge}{vent} }}";

    private static Gen<string> Order(Saying say) =>
        from spare in Maybe(Gen.Int[0, 20].Select(part => string.Create(CultureInfo.InvariantCulture, $", \"orders\": {{ \"fastenerSpare\": \"{part} %\", \"concreteWaste\": \"{20 - part} %\", \"extras\": [ {{ \"item\": \"gravel\", \"quantity\": \"3\", \"unit\": \"load\", \"price\": \"60\" }} ] }}")))
        from prices in Any("", "", ", \"prices\": { \"currency\": \"USD\", \"items\": [ { \"item\": \"lag screw\", \"pack\": 25, \"price\": \"9.50\" }, { \"item\": \"latch\", \"price\": \"7\" } ] }")
        from stock in Maybe(
            from boards in Gen.Int[0, 9]
            from longIn in Gen.Int[60, 200]
            from rolls in Gen.Int[0, 2]
            select string.Create(CultureInfo.InvariantCulture, $", \"stock\": [ {{ \"item\": \"board\", \"size\": \"2x6 treated\", \"length\": \"{say.Of(longIn)}\", \"count\": {boards} }}, {{ \"item\": \"film\", \"width\": \"{say.Of(400)}\", \"length\": \"{say.Of(700)}\", \"count\": {rolls} }} ]"))
        select spare + prices + stock;

    /// <summary>Ways to write a length of so many inches, or of as many times 25 mm.</summary>
    private readonly record struct Saying(bool Metric, int Style)
    {
        public string Of(int inches) => Halves(2 * inches);

        /// <summary>The same from half inches.</summary>
        public string Halves(int halves) => (Metric, Style) switch
        {
            (true, 0) => string.Create(CultureInfo.InvariantCulture, $"{halves * 12.5m} mm"),
            (true, 1) => string.Create(CultureInfo.InvariantCulture, $"{halves * 0.0125m} m"),
            (true, _) => string.Create(CultureInfo.InvariantCulture, $"{halves * 1.25m} cm"),
            (false, 0) => string.Create(CultureInfo.InvariantCulture, $"{halves / 2m} in"),
            (false, 1) => string.Create(CultureInfo.InvariantCulture, $"{halves / 24}′ {halves / 2 % 12}{(halves % 2 == 1 ? "-1/2" : "")}″"),
            (false, _) => string.Create(CultureInfo.InvariantCulture, $"{halves / 24} ft {halves % 24 / 2m} in"),
        };
    }
}
