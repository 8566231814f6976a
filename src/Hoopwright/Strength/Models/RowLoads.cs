using System.Collections.Immutable;
using Hoopwright.Frames;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Models;

/// <summary>The load cases of a tunnel on the frame of its row, each in parts that combinations take or leave.</summary>
internal sealed class RowLoads
{
    private const int Parts = 4;
    private readonly RowFrame _frame;
    private readonly TunnelLoads _loads;
    private readonly int[] _index;
    private readonly List<FrameLoadCase> _cases = [];
    private readonly List<(double AcrossN, double AlongN, double DownN)> _sums = [];

    /// <summary>Puts load cases on a frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="loads">The cases.</param>
    /// <param name="wanted">Which of them, by their index.</param>
    internal RowLoads(RowFrame frame, TunnelLoads loads, IEnumerable<int> wanted)
    {
        (_frame, _loads) = (frame, loads);
        _index = new int[Parts * loads.Cases.Length];
        Array.Fill(_index, -1);
        foreach (int load in wanted.Distinct().Order()) Add(load);
    }

    /// <summary>The cases as the frame solver takes them.</summary>
    internal ImmutableArray<FrameLoadCase> Cases => [.. _cases];

    /// <summary>The parts of a combination.</summary>
    internal ImmutableArray<CombinationPart> Of(RowCase each)
    {
        var parts = ImmutableArray.CreateBuilder<CombinationPart>();
        foreach (BowTerm term in each.Case.Fixed)
        {
            Take(term, RowLoadPart.Loads, 1);
            if (!each.IsSlack) Take(term, RowLoadPart.FilmPull, 1);
            Take(term, RowLoadPart.LeanAcross, each.LeanAcross);
            Take(term, RowLoadPart.LeanAlong, each.LeanAlong);
        }
        return parts.ToImmutable();

        void Take(BowTerm term, RowLoadPart part, int sign)
        {
            if (sign != 0 && IndexOf(term.Load, part) is >= 0 and var at) parts.Add(new CombinationPart(at, sign * term.Times));
        }
    }

    /// <summary>True when a combination has a pull of the film in it that creeps away, so that the row must hold without it too.</summary>
    internal bool MayGoSlack(LoadedCase each) => each.Fixed.Any(term => IndexOf(term.Load, RowLoadPart.FilmPull) >= 0);

    /// <summary>What a combination puts on the whole row: to the right, to the back and down.</summary>
    internal (double AcrossN, double AlongN, double DownN) SumOf(LoadedCase each)
    {
        (double acrossN, double alongN, double downN) = (0, 0, 0);
        foreach (BowTerm term in each.Fixed)
        {
            (double across, double along, double down) = _sums[IndexOf(term.Load, RowLoadPart.Loads)];
            (acrossN, alongN, downN) = (acrossN + (term.Times * across), alongN + (term.Times * along), downN + Math.Abs(term.Times * down));
        }
        return (acrossN, alongN, downN);
    }

    private int IndexOf(int load, RowLoadPart part) => _index[(Parts * load) + (int)part];

    private void Add(int load)
    {
        LoadCase each = _loads.Cases[load];
        var draft = new RowLoadDraft(_frame, each);
        Add(load, RowLoadPart.Loads, draft.Loads(), draft.Temperatures());
        _sums[^1] = draft.Sum;
        if (each.FilmPull is { Steady.NewtonsPerMetre: > 0 }) Add(load, RowLoadPart.FilmPull, draft.SteadyPull(), []);
        if (draft.Sum.DownN > 0)
        {
            // Out of plumb, as the code asks of every direction.
            Add(load, RowLoadPart.LeanAcross, draft.Lean(across: true, DirectAnalysis.NotionalLoadPartWithoutTau), []);
            Add(load, RowLoadPart.LeanAlong, draft.Lean(across: false, DirectAnalysis.NotionalLoadPartWithoutTau), []);
        }
    }

    private void Add(int load, RowLoadPart part, ImmutableArray<NodeLoad> nodes, ImmutableArray<MemberTemperature> temperatures)
    {
        _index[(Parts * load) + (int)part] = _cases.Count;
        _cases.Add(new FrameLoadCase(FormattableString.Invariant($"{_loads.Cases[load].Code} {part}")) { Nodes = nodes, Temperatures = temperatures });
        _sums.Add(default);
    }
}

/// <summary>A part of a load case that a combination takes or leaves.</summary>
internal enum RowLoadPart
{
    /// <summary>Everything but what follows.</summary>
    Loads,

    /// <summary>Pull of the film that is there without any pressure.</summary>
    FilmPull,

    /// <summary>Notional loads to the right.</summary>
    LeanAcross,

    /// <summary>Notional loads to the back.</summary>
    LeanAlong,
}
