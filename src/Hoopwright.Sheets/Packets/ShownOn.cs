using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Sheets.Figures;
using Hoopwright.Strength;
using Hoopwright.Takeoff;

namespace Hoopwright.Sheets.Packets;

/// <summary>Which drawing shows what a row of a table tells of, by its name, such as front-end. A packet that has no such drawing leads nowhere from there.</summary>
/// <param name="tunnel">The tunnel.</param>
internal sealed class ShownOn(Tunnel tunnel)
{
    private const string Posts = "ground-details", LeftSide = "left-side", RightSide = "right-side";

    /// <summary>Where fields of the plan show; the first that a path begins with counts.</summary>
    private static readonly (string Path, string Drawing)[] Fields =
    [
        ("units", "set-out"), ("site.groundSnow", "strength-loads"), ("site.wind", "strength-loads"), ("site.soil", Posts), ("site.frostDepth", Posts), ("site.", "set-out"), ("loads.", "strength-loads"), ("strength.", "strength-bow"),
        ("frame.bays", LeftSide), ("frame.bowSpacing", LeftSide), ("frame.length", "set-out"), ("frame.braces", LeftSide), ("frame.", "bow"),
        ("ground.baseboard", "side-details"), ("ground.", Posts), ("ends.front", "front-end"), ("ends.back", "back-end"), ("ends", "front-end"), ("sides.right", RightSide), ("sides", LeftSide),
        ("cover.batten", "film-details"), ("cover.channel", "film-details"), ("cover.wire", "film-details"), ("cover.staple", "film-details"), ("cover.tubeScrew", "film-details"), ("cover.endsOnBow", "film-details"), ("cover.sidesInChannel", "film-details"),
        ("cover.temporaryWire", "front-end-film"), ("cover.order", "roof-pull"), ("cover.rope", "roof-pull"), ("cover.hotSag", "film-pull"), ("cover.looseSag", "film-pull"), ("cover.coldPart", "film-pull"), ("cover", "film-cuts"),
        ("fasteners.boltsPerPost", "side-details"), ("fasteners.hipScrewsPerBow", "side-details"), ("fasteners.clampsPerBrace", Posts), ("fasteners.clamps", "bow"), ("fasteners.pinsPerPost", Posts),
        ("crew.people", "roof-pull"), ("cuts.", "cut-lists"),
    ];

    /// <summary>The drawing of a side; the left one's where both are alike.</summary>
    public string Side(bool isLeft) => isLeft || !TunnelFigures.HasRightSide(tunnel) ? LeftSide : RightSide;

    /// <summary>What stands in the ground.</summary>
    public string Ground => Drawn(Posts);

    /// <summary>A member, hole, door, run of fastening or piece of film, by its id; null for what no drawing shows.</summary>
    public string? Part(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        if (id.EndsWith("-film", StringComparison.Ordinal)) return "film-cuts";
        if (id.IndexOf("-leaf-", StringComparison.Ordinal) is var leaf and > 0) return id[..leaf] + "-leaf";
        string place = id.StartsWith("hole-", StringComparison.Ordinal) ? id[5..] : id;
        EndWall? end = tunnel.Ends.FirstOrDefault(each => place.StartsWith(each.Name + "-", StringComparison.Ordinal));
        bool isFastening = id.EndsWith("-channel", StringComparison.Ordinal) || id.Contains("-batten", StringComparison.Ordinal);
        if (end is not null)
        {
            return (isFastening, end.Closing) switch
            {
                (true, EndClosing.Framed) => end.Name + "-end-film",
                (true, EndClosing.Open) => "film-details",
                _ => end.Name + "-end",
            };
        }
        if (isFastening) return "side-details";
        string first = place.Split('-', ' ')[0];
        return first switch
        {
            "batter" or "corners" or "string" => "set-out",
            "bow" or "purlin" or "tie" => "bow",
            "brace" => LeftSide,
            "rope" => "roof-pull",
            "left" or "right" => place.Contains("post", StringComparison.Ordinal) ? "set-out" : Side(first == "left"),
            _ => null,
        };
    }

    /// <summary>The first that shows one of several parts; where none does, what shows their stage of the build.</summary>
    public string Parts(IEnumerable<string> ids, BuildStage stage) => ids.Select(Part).FirstOrDefault(drawing => drawing is not null) ?? stage switch
    {
        BuildStage.Site or BuildStage.Ground => "set-out",
        BuildStage.Frame => "bow",
        BuildStage.Ends => Drawn("front-end"),
        BuildStage.Cover => "film-cuts",
    };

    /// <summary>What was or is to be measured.</summary>
    public string? Measured(Measurable what) => what.Kind switch
    {
        MeasurableKind.SquareSide or MeasurableKind.Diagonal or MeasurableKind.BowMark => "set-out",
        MeasurableKind.BowLength or MeasurableKind.BowSpan or MeasurableKind.BowHeight => "bow",
        MeasurableKind.PostDepth or MeasurableKind.PostHeight or MeasurableKind.Place or MeasurableKind.DoorWidth or MeasurableKind.DoorHeight
            or MeasurableKind.HoleDepth or MeasurableKind.HoleDiameter or MeasurableKind.HipHeight => Part(what.About),
    };

    /// <summary>What a cut or a pour makes.</summary>
    public string Cut(CutCheckKind kind) => Drawn(kind switch
    {
        CutCheckKind.Film => "film-cuts",
        CutCheckKind.Posts or CutCheckKind.Channel or CutCheckKind.Boards => "cut-lists",
        CutCheckKind.Concrete => Posts,
    });

    /// <summary>A part whose strength was looked at.</summary>
    public string Strength(PartKind kind) => Drawn(kind switch
    {
        PartKind.GroundPost => Posts,
        PartKind.EndPost or PartKind.EndBoard => "front-end",
        PartKind.Film or PartKind.Fastener => "film-details",
    });

    /// <summary>A field of the plan, by its path; null for what no drawing shows, such as a price.</summary>
    public string? Field(string path) => Fields.FirstOrDefault(field => path.StartsWith(field.Path, StringComparison.Ordinal)).Drawing is { } drawing ? Drawn(drawing) : null;

    /// <summary>The drawing of that name, or what shows the same where this tunnel has none of it.</summary>
    private string Drawn(string drawing) => drawing switch
    {
        Posts when tunnel.GroundPosts.IsEmpty => "set-out",
        RightSide => Side(isLeft: false),
        "front-end" when tunnel.Front.Closing == EndClosing.Open => tunnel.Back.Closing == EndClosing.Open ? "bow" : "back-end",
        "back-end" when tunnel.Back.Closing == EndClosing.Open => Drawn("front-end"),
        "front-end-film" when tunnel.Front.Closing != EndClosing.Framed => tunnel.Back.Closing == EndClosing.Framed ? "back-end-film" : "roof-pull",
        _ => drawing,
    };
}
