using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.ModelFiles;

namespace Hoopwright.Frames;

/// <summary>Fields that only frame models have.</summary>
internal static class FrameFields
{
    /// <summary>Three numbers in a list; null when there are none.</summary>
    internal static Vector3? Vector(this ModelGroup group, string field) =>
        group.Value(field) is { } json ? Vector(json, group.PathOf(field), group.Problems) : null;

    /// <summary>A value as three numbers.</summary>
    internal static Vector3? Vector(JsonElement json, string path, ModelProblems problems)
    {
        if (json.ValueKind != JsonValueKind.Array || json.GetArrayLength() != 3)
        {
            ModelGroup.Wrong(problems, path, json, "a list of three numbers, such as [0, 0, 3]");
            return null;
        }
        var (x, y, z) = (ModelGroup.Number(json[0], path + "[0]", problems), ModelGroup.Number(json[1], path + "[1]", problems), ModelGroup.Number(json[2], path + "[2]", problems));
        return x is null || y is null || z is null ? null : new Vector3(x.Value, y.Value, z.Value);
    }

    /// <summary>Numbers along and about the three axes under six names; those that are not there are 0.</summary>
    internal static SixValues Six(this ModelGroup group, ImmutableArray<string> names)
    {
        group.Only(names);
        return new(Of(0), Of(1), Of(2), Of(3), Of(4), Of(5));

        double Of(int at) => group.Number(names[at]) ?? 0;
    }
}
