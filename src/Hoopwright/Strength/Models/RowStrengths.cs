using System.Runtime.CompilerServices;
using Hoopwright.Frames;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>Strengths of the steel members of a row, and what forces use of them.</summary>
internal sealed class RowStrengths
{
    private readonly int[] _of;
    private readonly TubeStrength[] _kinds;
    private readonly TubeLimits[] _limits;
    private readonly int[] _kindOf;

    internal RowStrengths(RowFrame frame)
    {
        _of = new int[frame.Pieces.Count];
        Dictionary<(BowSteel, double), int> known = [];
        List<TubeStrength> kinds = [];
        for (int at = 0; at < _of.Length; at++)
        {
            if (frame.Pieces[at] is not { Steel: { } steel, FreeM: var freeM })
            {
                _of[at] = -1;
            }
            else if (!known.TryGetValue((steel, freeM), out _of[at]))
            {
                known[(steel, freeM)] = _of[at] = kinds.Count;
                kinds.Add(steel.StrengthOf(Buckling.ElasticStressPa(FrameMaterial.Steel.YoungPa, freeM, steel.GyrationM), freeM, DesignMethod.Lrfd));
            }
        }
        _kinds = [.. kinds];
        _limits = [.. kinds.Select(strength => strength.Limits)];
        _kindOf = [.. frame.Pieces.Select(piece => (int)piece.Kind)];
    }

    /// <summary>Strength of a member that buckles over its free length; null for wood.</summary>
    internal TubeStrength? Of(int member) => _of[member] < 0 ? null : _kinds[_of[member]];

    /// <summary>The greatest use of each kind of member.</summary>
    /// <param name="sections">Twelve for each member: section forces at its start and at its end.</param>
    /// <param name="most">One for each <see cref="RowKind"/>; filled.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Most(ReadOnlySpan<double> sections, Span<double> most)
    {
        most.Clear();
        for (int at = 0; at < _of.Length; at++)
        {
            if (_of[at] < 0) continue;
            ref readonly TubeLimits limits = ref _limits[_of[at]];
            int kind = _kindOf[at];
            if (!Counts(at, sections)) continue;
            for (int end = 12 * at; end < 12 * (at + 1); end += 6)
                most[kind] = Math.Max(most[kind], limits.UseOf(ForcesOf(sections.Slice(end, 6))));
        }
    }

    /// <summary>False for a tie that is pressed: it carries that, or lets go and the bow stands without it, and neither ends anything.</summary>
    internal bool Counts(int member, ReadOnlySpan<double> sections) => _kindOf[member] != (int)RowKind.Tie || sections[12 * member] > 0;

    /// <summary>True for a tie that is pressed past its own strength: it bows out, and the row is taken without it.</summary>
    internal bool LetsGo(int member, ReadOnlySpan<double> sections) =>
        _kindOf[member] == (int)RowKind.Tie && -sections[12 * member] > _kinds[_of[member]].Compression.Strength.Design;

    /// <summary>Section forces as the checks take them.</summary>
    internal static MemberForces ForcesOf(ReadOnlySpan<double> section) => new(section[0], section[1], section[2], section[3], section[4], section[5]);
}
