using System.Text.Json.Nodes;
using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;
using static Hoopwright.Plans.PlanRanges;

namespace Hoopwright.Plans;

/// <summary>Site, tubes, boards and frame.</summary>
internal static class FrameFormats
{
    public static PlanFormat<Obstacle> Obstacle { get; } = new(
        Text<Obstacle>("name", "spruces", each => each.Name, (each, value) => each with { Name = value }),
        Quantity<Obstacle, Angle>("from", Bearings, each => each.From, (each, value) => each with { From = value }, required: true),
        Quantity<Obstacle, Angle>("to", Bearings, each => each.To, (each, value) => each with { To = value }, required: true),
        Quantity<Obstacle, Length>(
            "distance", PlanQuantities.Length.Within("1 ft", "6000 ft", "0.31 m", "1800 m").Like("60 ft", "20 m"), each => each.Distance, (each, value) => each with { Distance = value }, required: true),
        Quantity<Obstacle, Length>(
            "height", PlanQuantities.Length.Within("0 ft", "400 ft", "0 m", "120 m").Like("30 ft", "10 m"), each => each.Height, (each, value) => each with { Height = value }, required: true),
        Quantity<Obstacle, Ratio>("lets", PlanQuantities.Percentage.Within("0 %", "100 %").Like("0 %", "0 %"), each => each.Lets, (each, value) => each with { Lets = value }));

    public static PlanFormat<HorizonPoint> HorizonPoint { get; } = new(
        Quantity<HorizonPoint, Angle>("direction", Bearings, point => point.Direction, (point, value) => point with { Direction = value }, required: true),
        Quantity<HorizonPoint, Angle>(
            "rises", PlanQuantities.Angle.Within("0°", "80°").Like("5°", "5°"), point => point.Rises, (point, value) => point with { Rises = value }, required: true));

    public static PlanFormat<Site> Site { get; } = new(
        Text<Site>("place", "the field behind the barn", site => site.Place, (site, value) => site with { Place = value }),
        Quantity<Site, Angle>(
            "frontFaces", Bearings, site => site.FrontFaces, (site, value) => site with { FrontFaces = value }),
        Quantity<Site, Ratio>("fallAlong", Fall, site => site.FallAlong, (site, value) => site with { FallAlong = value }),
        Quantity<Site, Ratio>("fallAcross", Fall, site => site.FallAcross, (site, value) => site with { FallAcross = value }),
        Choice<Site, PostTopLine>("postTops", site => site.PostTops, (site, value) => site with { PostTops = value }),
        Quantity<Site, Length>("roomFront", Room, site => site.RoomFront, (site, value) => site with { RoomFront = value }),
        Quantity<Site, Length>("roomBack", Room, site => site.RoomBack, (site, value) => site with { RoomBack = value }),
        Quantity<Site, Length>("roomLeft", Room, site => site.RoomLeft, (site, value) => site with { RoomLeft = value }),
        Quantity<Site, Length>("roomRight", Room, site => site.RoomRight, (site, value) => site with { RoomRight = value }),
        Quantity<Site, Pressure>(
            "groundSnow", PlanQuantities.Pressure.Within("0 psf", "500 psf", "0 kPa", "23.9 kPa").Like("30 psf", "1.4 kPa"),
            site => site.GroundSnow, (site, value) => site with { GroundSnow = value }),
        Quantity<Site, Speed>(
            "wind", PlanQuantities.Speed.Within("0 mph", "250 mph", "0 m/s", "111 m/s").Like("105 mph", "47 m/s"), site => site.Wind, (site, value) => site with { Wind = value }),
        Quantity<Site, Length>("frostDepth", Depths, site => site.FrostDepth, (site, value) => site with { FrostDepth = value }),
        Text<Site>("soil", "loam", site => site.Soil, (site, value) => site with { Soil = value }),
        Choice<Site, SoilClass>("soilClass", site => site.SoilClass, (site, value) => site with { SoilClass = value }),
        Quantity<Site, Length>(
            "elevation", PlanQuantities.Length.Within("-1500 ft", "20000 ft", "-450 m", "6000 m").Like("900 ft", "300 m"),
            site => site.Elevation, (site, value) => site with { Elevation = value }),
        Quantity<Site, Angle>("latitude", PlanQuantities.Angle.Within("-90°", "90°").Like("42.9°", "42.9°"), site => site.Latitude, (site, value) => site with { Latitude = value }),
        Quantity<Site, Angle>("longitude", PlanQuantities.Angle.Within("-180°", "180°").Like("-78.7°", "-78.7°"), site => site.Longitude, (site, value) => site with { Longitude = value }),
        Quantity<Site, Length>("neighbourLeft", Room, site => site.NeighbourLeft, (site, value) => site with { NeighbourLeft = value }),
        Quantity<Site, Length>("neighbourRight", Room, site => site.NeighbourRight, (site, value) => site with { NeighbourRight = value }),
        Groups<Site, Obstacle>("obstacles", Obstacle, site => site.Obstacles, (site, value) => site with { Obstacles = value }),
        Groups<Site, HorizonPoint>("horizon", HorizonPoint, site => site.Horizon, (site, value) => site with { Horizon = value }),
        YesNo<Site>("organic", site => site.Organic, (site, value) => site with { Organic = value }));

    public static PlanFormat<Tube> Tube { get; } = new(
        Quantity<Tube, Length>(
            "outside", PlanQuantities.Length.Within("0.25 in", "12 in", "7 mm", "300 mm").Like("1.9 in", "48.3 mm"), tube => tube.Outside, (tube, value) => tube with { Outside = value }),
        Quantity<Tube, Length>(
            "wall", PlanQuantities.Wall.Within("0.01 in", "1 in", "0.3 mm", "25 mm").Like("14 ga", "2.1 mm"), tube => tube.Wall, (tube, value) => tube with { Wall = value }),
        Choice<Tube, TubeForm>("form", tube => tube.Form, (tube, value) => tube with { Form = value }),
        Choice<Tube, TubeMaterial>("material", tube => tube.Material, (tube, value) => tube with { Material = value }),
        Quantity<Tube, Pressure>(
            "yield", PlanQuantities.Pressure.Within("1 ksi", "150 ksi", "7 MPa", "1000 MPa").Like("50 ksi", "345 MPa"), tube => tube.Yield, (tube, value) => tube with { Yield = value }),
        Quantities<Tube, Length>("stockLengths", Stick, tube => tube.StockLengths, (tube, value) => tube with { StockLengths = value }));

    public static PlanFormat<Board> Board { get; } = new(
        Lumber<Board>("size", "2x6", board => board.Size, (board, value) => board with { Size = value }),
        YesNo<Board>("treated", board => board.Treated, (board, value) => board with { Treated = value }),
        Quantities<Board, Length>("stockLengths", Stick, board => board.StockLengths, (board, value) => board with { StockLengths = value }),
        YesNo<Board>("splice", board => board.Splice, (board, value) => board with { Splice = value }));

    public static PlanFormat<BowOffset> BowOffset { get; } = new(
        Quantity<BowOffset, Length>("across", Across, offset => offset.Across, (offset, value) => offset with { Across = value }, required: true),
        Quantity<BowOffset, Length>("height", Heights, offset => offset.Height, (offset, value) => offset with { Height = value }, required: true));

    public static PlanFormat<Bow> Bow { get; } = new(
        Choice<Bow, BowKind>("shape", bow => bow.Shape, (bow, value) => bow with { Shape = value }, required: true),
        Quantity<Bow, Length>("sideHeight", Heights, bow => bow.SideHeight, (bow, value) => bow with { SideHeight = value }),
        Quantity<Bow, Length>("peakHeight", PeakHeight, bow => bow.PeakHeight, (bow, value) => bow with { PeakHeight = value }),
        Quantity<Bow, Length>(
            "shoulderRadius", PlanQuantities.Length.Within("1 in", "50 ft", "30 mm", "15 m").Like("2 ft", "0.6 m"),
            bow => bow.ShoulderRadius, (bow, value) => bow with { ShoulderRadius = value }),
        Quantity<Bow, Length>(
            "archRadius", PlanQuantities.Length.Within("1 ft", "500 ft", "0.31 m", "150 m").Like("22 ft", "6.7 m"),
            bow => bow.ArchRadius, (bow, value) => bow with { ArchRadius = value }),
        Groups<Bow, BowOffset>("offsets", BowOffset, bow => bow.Offsets, (bow, value) => bow with { Offsets = value }))
    {
        Check = CheckBow,
        DescribeCheck = DescribeBow,
    };

    public static PlanFormat<Tie> Tie { get; } = new(
        Quantity<Tie, Length>("height", Heights, tie => tie.Height, (tie, value) => tie with { Height = value }),
        Count<Tie>("every", 1, 100, tie => tie.Every, (tie, value) => tie with { Every = value }),
        Group<Tie, Tube>("tube", Tube, tie => tie.Tube, (tie, value) => tie with { Tube = value }));

    public static PlanFormat<Purlins> Purlins { get; } = new(
        CountOf<Purlins>(
            "count", [0, 1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21], purlins => purlins.Count, (purlins, value) => purlins with { Count = value }),
        Group<Purlins, Tube>("tube", Tube, purlins => purlins.Tube, (purlins, value) => purlins with { Tube = value }));

    public static PlanFormat<Braces> Braces { get; } = new(
        CountOf<Braces>("corners", [0, 2, 4], braces => braces.Corners, (braces, value) => braces with { Corners = value }),
        Count<Braces>("bays", 1, 10, braces => braces.Bays, (braces, value) => braces with { Bays = value }),
        Quantity<Braces, Length>("topHeight", Heights, braces => braces.TopHeight, (braces, value) => braces with { TopHeight = value }),
        Group<Braces, Tube>("tube", Tube, braces => braces.Tube, (braces, value) => braces with { Tube = value }));

    public static PlanFormat<Frame> Frame { get; } = new(
        Quantity<Frame, Length>(
            "span", PlanQuantities.Length.Within("4 ft", "100 ft", "1.22 m", "30.48 m").Like("26 ft", "8 m"),
            frame => frame.Span, (frame, value) => frame with { Span = value }, required: true),
        Quantity<Frame, Length>(
            "length", PlanQuantities.Length.Within("4 ft", "1000 ft", "1.22 m", "304.8 m").Like("72 ft", "24 m"),
            frame => frame.Length, (frame, value) => frame with { Length = value }, required: true),
        Quantity<Frame, Length>(
            "bowSpacing", PlanQuantities.Length.Within("1 ft", "20 ft", "0.31 m", "6 m").Like("4 ft", "1.2 m"),
            frame => frame.BowSpacing, (frame, value) => frame with { BowSpacing = value }),
        Choice<Frame, BayRule>("bays", frame => frame.Bays, (frame, value) => frame with { Bays = value }),
        Group<Frame, Bow>("bow", Bow, frame => frame.Bow, (frame, value) => frame with { Bow = value }, required: true),
        Group<Frame, Tube>("bowTube", Tube, frame => frame.BowTube, (frame, value) => frame with { BowTube = value }),
        Count<Frame>("bowPieces", 1, 12, frame => frame.BowPieces, (frame, value) => frame with { BowPieces = value }),
        MaybeGroup<Frame, Tie>("tie", Tie, frame => frame.Tie, (frame, value) => frame with { Tie = value }),
        MaybeGroup<Frame, Purlins>("purlins", Purlins, frame => frame.Purlins, (frame, value) => frame with { Purlins = value }),
        MaybeGroup<Frame, Braces>("braces", Braces, frame => frame.Braces, (frame, value) => frame with { Braces = value }));

    // A measured table brings its own peak; every other shape needs it.
    private static void CheckBow(PlanNode bow, PlanProblems problems)
    {
        PlanNode? Field(string name) => bow.Children.FirstOrDefault(field => field.Name == name);
        if (Field("shape") is { Kind: PlanNodeKind.Text, Text: "offsets" })
        {
            if (Field("offsets") is null)
                problems.Missing(bow, "offsets", "[{ \"across\": \"0 ft\", \"height\": \"4 ft\" }, … ]");
        }
        else if (Field("peakHeight") is null)
        {
            problems.Missing(bow, "peakHeight", problems.Units == UnitSystem.Metric ? "\"3.7 m\"" : "\"12 ft\"");
        }
    }

    private static void DescribeBow(JsonObject schema)
    {
        schema["if"] = new JsonObject { ["properties"] = new JsonObject { ["shape"] = new JsonObject { ["const"] = "offsets" } }, ["required"] = new JsonArray("shape") };
        schema["then"] = new JsonObject { ["required"] = new JsonArray("offsets") };
        schema["else"] = new JsonObject { ["required"] = new JsonArray("peakHeight") };
    }
}
