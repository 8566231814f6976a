using System.Collections.Immutable;

namespace Hoopwright.Web.Parts;

/// <summary>Which layers of the drawings show what a field decides, and the way back from a layer to its field.</summary>
internal static class Layers
{
    private static readonly ImmutableArray<(string Field, ImmutableArray<string> Layers)> Known =
    [
        ("frame.bow.", ["bow", "bows", "ordinates"]),
        ("frame.bowTube", ["bow", "bows"]),
        ("frame.bowSpacing", ["bows", "posts"]),
        ("frame.bays", ["bows", "posts"]),
        ("frame.span", ["bow", "strings", "dimensions"]),
        ("frame.length", ["strings", "bows", "dimensions"]),
        ("frame.purlins", ["purlins", "Purlin", "RidgePurlin"]),
        ("frame.tie", ["tie", "ties", "Tie"]),
        ("frame.braces", ["braces"]),
        ("ground.post", ["posts"]),
        ("ground.hole", ["concrete"]),
        ("ground.bag", ["concrete"]),
        ("ground.collar", ["concrete"]),
        ("ground.baseboard", ["Baseboard", "baseboards", "boards"]),
        ("ends.front.doors", ["leaves", "frame", "swing", "hinges", "doors"]),
        ("ends.back.doors", ["leaves", "frame", "swing", "hinges", "doors"]),
        ("ends.", ["posts", "frame", "baseboards"]),
        ("sides.", ["HipBoard", "RollTube"]),
        ("cover.", ["film", "pieces", "roll", "cuts"]),
        ("site.room", ["strings", "batter boards"]),
        ("site.fall", ["ground"]),
    ];

    private static readonly ImmutableArray<(string Layer, string Field)> Back =
    [
        ("bow", "frame.bow.peakHeight"), ("bows", "frame.bowSpacing"), ("ordinates", "frame.bow.peakHeight"), ("purlins", "frame.purlins.count"),
        ("Purlin", "frame.purlins.count"), ("RidgePurlin", "frame.purlins.count"), ("braces", "frame.braces.corners"), ("posts", "ground.postEmbedment"),
        ("concrete", "ground.holeDiameter"), ("Baseboard", "ground.baseboard.size"), ("boards", "ground.baseboard.size"), ("baseboards", "ground.baseboard.size"),
        ("strings", "site.roomFront"), ("batter boards", "site.roomFront"), ("ground", "site.fallAlong"), ("HipBoard", "sides.left.hipHeight"),
        ("RollTube", "sides.left.rollTube.outside"), ("film", "loads.standard"), ("pieces", "cover.thickness"), ("roll", "cover.thickness"),
    ];

    /// <summary>The layers that show what a field decides.</summary>
    public static ImmutableArray<string> Of(string path)
    {
        (string _, ImmutableArray<string> layers) = Known.FirstOrDefault(known => path.StartsWith(known.Field, StringComparison.Ordinal));
        return layers.IsDefault ? [] : layers;
    }

    /// <summary>The field that decides what a layer shows; null when no one field does.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="drawing">The drawing's name.</param>
    public static string? FieldOf(string layer, string drawing)
    {
        string end = drawing.StartsWith("back", StringComparison.Ordinal) ? "back" : "front";
        if (drawing.EndsWith("-end", StringComparison.Ordinal) || drawing.Contains("-door-", StringComparison.Ordinal))
        {
            if (layer is "leaves" or "frame" or "swing" or "hinges" or "LeafStile" or "LeafRail" or "LeafBrace") return $"ends.{end}.doors[0].width";
            if (layer is "posts") return $"ends.{end}.postSpacing";
            if (layer is "concrete") return $"ends.{end}.holeDepth";
        }
        return Back.FirstOrDefault(known => known.Layer == layer).Field;
    }
}
