namespace Hoopwright.Takeoff;

/// <summary>
/// The names of the items as the takeoff, the price book and the stock on hand write them. Tubes, boards and posts take
/// theirs from their section.
/// </summary>
internal static class Items
{
    internal const string Tube = "tube";
    internal const string PlasticPipe = "plastic pipe";
    internal const string Board = "board";
    internal const string Post = "post";

    internal const string StringLine = "string line";
    internal const string Stake = "stake";

    internal const string DryConcrete = "dry concrete";
    internal const string ReinforcingPin = "reinforcing pin";
    internal const string ConduitHanger = "conduit hanger";
    internal const string CarriageBolt = "carriage bolt";
    internal const string LumberScrew = "lumber screw";
    internal const string BoardToTubeScrew = "board-to-tube screw";
    internal const string MendingPlate = "mending plate";

    internal const string SelfDrillingScrew = "self-drilling screw";
    internal const string TubeSleeve = "tube sleeve";
    internal const string CrossClamp = "cross clamp";
    internal const string EndClamp = "end clamp";

    internal const string LagScrew = "lag screw";
    internal const string PostBracket = "post bracket";
    internal const string Hinge = "hinge";
    internal const string Latch = "latch";
    internal const string DropBolt = "drop bolt";
    internal const string DoorHandle = "door handle";
    internal const string DoorTrack = "door track";
    internal const string TrackBracket = "track bracket";
    internal const string RollerHanger = "roller hanger";
    internal const string OverheadDoor = "overhead door";
    internal const string RigidSheet = "rigid sheet";
    internal const string SheetScrew = "sheet screw";

    internal const string Film = "film";
    internal const string FilmTape = "film tape";
    internal const string LockChannel = "lock channel";
    internal const string SpringWire = "spring wire";
    internal const string ChannelScrew = "channel screw";
    internal const string Washer = "washer";
    internal const string Batten = "batten";
    internal const string Nail = "nail";
    internal const string Staple = "staple";
    internal const string PullingRope = "pulling rope";
    internal const string PullingBall = "pulling ball";

    internal const string InflationBlower = "inflation blower";
    internal const string InflationDuct = "inflation duct";
    internal const string FilmCollar = "film collar";

    internal const string Crank = "crank";
    internal const string RollClip = "roll clip";
    internal const string Lacing = "lacing";
    internal const string RopeEye = "rope eye";
    internal const string CurtainWinch = "curtain winch";
    internal const string CurtainCord = "curtain cord";
    internal const string Pulley = "pulley";

    /// <summary>False for what is cut with a knife at a mark: it loses nothing to a saw and needs no saw stop.</summary>
    internal static bool IsSawn(string item) => item != PullingRope;
}
