namespace Hoopwright.Sheets.Drawings;

/// <summary>What of the paper is taken already, while texts look for room.</summary>
internal sealed class Taken
{
    private const double ClearanceMm = 0.5;
    private readonly List<(TurnedBox Box, SheetBox Bounds)> texts = [];
    private readonly Segments edges = new(), thin = new(), leaders = new();
    private readonly List<SheetBox> textures = [];
    private readonly List<SheetPoint> targets = [];
    private readonly List<SheetPoint[]> arrows = [];

    internal Taken(SheetBox room) => Room = room;

    /// <summary>The part of the paper that texts may stand on.</summary>
    internal SheetBox Room { get; }

    internal void Add(Mark mark)
    {
        switch (mark)
        {
            case TextMark { Text.Length: > 0 } text:
                texts.Add((text.Box, text.Box.Bounds));
                break;
            case LineMark { Role: LineRole.Cut or LineRole.Outline } line:
                edges.Add(line.Layer, line.Path.Flattened());
                break;
            case LineMark { Role: LineRole.Hidden or LineRole.Centre or LineRole.Dimension } line:
                thin.Add(line.Layer, line.Path.Flattened());
                break;
            case HatchMark hatch:
                textures.Add(SheetBox.AroundAll(hatch.Path.Flattened()));
                break;
        }
    }

    /// <summary>Keeps texts off a point that a later note will point at.</summary>
    internal void Reserve(SheetPoint target) => targets.Add(target);

    /// <summary>The point's own note is being placed.</summary>
    internal void Release(SheetPoint target) => targets.Remove(target);

    internal void AddArrow(SheetPath head) => arrows.Add(ConvexOutline.BodyOf(head));

    /// <summary>True when an arrowhead would lie on another or on a text.</summary>
    internal bool IsArrowTaken(SheetPath head)
    {
        SheetPoint[] corners = ConvexOutline.BodyOf(head);
        SheetBox bounds = SheetBox.AroundAll(corners);
        return arrows.Exists(arrow => ConvexOutline.Meet(arrow, corners)) || texts.Exists(text => text.Bounds.Meets(bounds) && ConvexOutline.Meet(text.Box.Corners(), corners));
    }

    internal void AddLeader(IReadOnlyList<SheetPoint> points) => leaders.Add("", points);

    /// <summary>True when a text could stand here without leaving its room, touching another text or hiding what a note points at.</summary>
    internal bool IsFreeOfTexts(TurnedBox box)
    {
        TurnedBox grown = box.Grown(ClearanceMm);
        SheetBox bounds = grown.Bounds;
        if (!Room.Holds(bounds)) return false;
        foreach ((TurnedBox text, SheetBox about) in texts)
        {
            if (about.Meets(bounds) && text.Meets(grown)) return false;
        }
        return !targets.Exists(target => grown.IsCutBy(target, target.Moved(0.01, 0)));
    }

    /// <summary>True when no visible edge runs through the box.</summary>
    internal bool IsFreeOfEdges(TurnedBox box) => !edges.AnyCutting(box.Grown(ClearanceMm));

    /// <summary>True when no thin line or leader runs through the box.</summary>
    internal bool IsFreeOfThinLines(TurnedBox box) =>
        !thin.AnyCutting(box.Grown(ClearanceMm)) && !leaders.AnyCutting(box.Grown(ClearanceMm));

    /// <summary>True when a line or a texture lies under the box.</summary>
    internal bool IsDrawnOver(TurnedBox box) =>
        !IsFreeOfEdges(box) || !IsFreeOfThinLines(box) || textures.Exists(texture => texture.Meets(box.Bounds));

    /// <summary>True when a line would run through a text.</summary>
    internal bool RunsThroughText(SheetPoint from, SheetPoint to)
    {
        const double BesideMm = 0.3;
        SheetBox about = SheetBox.Between(from, to).Inset(-BesideMm);
        foreach ((TurnedBox box, SheetBox bounds) in texts)
        {
            // Most texts are far away.
            if (bounds.Meets(about) && box.Grown(BesideMm).IsCutBy(from, to)) return true;
        }
        return false;
    }

    /// <summary>How much a line through here would disturb: edges, thin lines and, most of all, other leaders crossed.</summary>
    internal double Disturbance(SheetPoint from, SheetPoint to) =>
        (5 * edges.Crossings(from, to)) + (6 * thin.Crossings(from, to)) + (30 * leaders.Crossings(from, to));
}
