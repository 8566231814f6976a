using Hoopwright.Frames;

namespace Hoopwright.Tests.Frames;

/// <summary>A turn of a whole frame in space.</summary>
internal sealed record SpaceTurn(Vector3 X, Vector3 Y, Vector3 Z)
{
    /// <summary>A turn by three angles, rad.</summary>
    internal static SpaceTurn Of(double a, double b, double c)
    {
        Vector3 About(Vector3 v) => RotateX(RotateY(RotateZ(v, a), b), c);
        return new(About(new(1, 0, 0)), About(new(0, 1, 0)), About(new(0, 0, 1)));
    }

    internal Vector3 Of(Vector3 v) => (X * v.X) + (Y * v.Y) + (Z * v.Z);

    /// <summary>A frame turned with its loads, each member rolled so that its section turns along.</summary>
    internal FrameModel Of(FrameModel model)
    {
        var load = model.LoadCases[0];
        return model with
        {
            Nodes = [.. model.Nodes.Select(node => node with { PlaceM = Of(node.PlaceM) })],
            Members = [.. model.Members.Select(member => Of(member, model))],
            LoadCases =
            [
                load with
                {
                    SelfWeight = Of(load.SelfWeight),
                    Nodes = [.. load.Nodes.Select(each => each with { Load = Of(each.Load) })],
                    Movements = [.. load.Movements.Select(each => each with { Movement = Of(each.Movement) })],
                    Members = [.. load.Members.Select(each => each.Frame == LoadFrame.Global ? each with { StartNPerM = Of(each.StartNPerM), EndNPerM = Of(each.EndNPerM) } : each)],
                },
            ],
        };
    }

    /// <summary>A member rolled so that its section goes along with a turn or a mirror of its axes.</summary>
    /// <param name="member">The member.</param>
    /// <param name="axisX">Its local x before.</param>
    /// <param name="map">The turn or mirror.</param>
    /// <param name="sense">-1 for a mirror: local y comes out the other way round.</param>
    internal static FrameMember Follow(FrameMember member, Vector3 axisX, Func<Vector3, Vector3> map, int sense)
    {
        var (y, _) = Beam.CrossAxes(axisX, member.RollRad);
        var (plainY, plainZ) = Beam.CrossAxes(map(axisX), 0);
        var wanted = map(y) * sense;
        return member with { RollRad = Math.Atan2(wanted.Dot(plainZ), wanted.Dot(plainY)) };
    }

    private FrameMember Of(FrameMember member, FrameModel model)
    {
        var runM = model.Nodes[member.To].PlaceM + member.OffsetToM - model.Nodes[member.From].PlaceM - member.OffsetFromM;
        return Follow(member, runM * (1 / runM.Size), Of, 1) with { OffsetFromM = Of(member.OffsetFromM), OffsetToM = Of(member.OffsetToM) };
    }

    private SixValues Of(SixValues six)
    {
        Vector3 straight = Of(new Vector3(six.X, six.Y, six.Z)), turning = Of(new Vector3(six.AboutX, six.AboutY, six.AboutZ));
        return new(straight.X, straight.Y, straight.Z, turning.X, turning.Y, turning.Z);
    }

    private static Vector3 RotateX(Vector3 v, double a) => new(v.X, (v.Y * Math.Cos(a)) - (v.Z * Math.Sin(a)), (v.Y * Math.Sin(a)) + (v.Z * Math.Cos(a)));

    private static Vector3 RotateY(Vector3 v, double a) => new((v.X * Math.Cos(a)) + (v.Z * Math.Sin(a)), v.Y, (v.Z * Math.Cos(a)) - (v.X * Math.Sin(a)));

    private static Vector3 RotateZ(Vector3 v, double a) => new((v.X * Math.Cos(a)) - (v.Y * Math.Sin(a)), (v.X * Math.Sin(a)) + (v.Y * Math.Cos(a)), v.Z);
}
