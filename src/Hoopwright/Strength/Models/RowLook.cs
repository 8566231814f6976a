using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Hoopwright.Frames;

namespace Hoopwright.Strength.Models;

/// <summary>
/// The first look at a row: every load case solved once on the frame as drawn, with one factorisation for all, and every combination as a
/// sum of them. It says which combinations are worth solving at second order.
/// </summary>
internal sealed class RowLook
{
    private readonly RowLoads _loads;
    private readonly RowStrengths _strengths;
    private readonly int[] _ties;
    private readonly FrameState[] _states;
    private readonly Lazy<FrameState[]?> _untied;
    private readonly double[] _sections;
    private readonly double[] _movement;

    private RowLook(StaticSolver solver, RowLoads loads, RowStrengths strengths, int[] ties, FrameState[] states)
    {
        (_loads, _strengths, _ties, _states) = (loads, strengths, ties, states);
        _untied = new(() => solver.LoadCases(states.Length, ties));
        _sections = new double[states.Length == 0 ? 0 : states[0].SectionForces.Length];
        _movement = new double[states.Length == 0 ? 0 : states[0].Displacements.Length];
    }

    /// <summary>Solves the load cases; null when the frame is no frame.</summary>
    /// <param name="solver">The frame.</param>
    /// <param name="loads">The load cases.</param>
    /// <param name="strengths">Strengths of its members.</param>
    /// <param name="ties">Its ties.</param>
    internal static RowLook? Of(StaticSolver solver, RowLoads loads, RowStrengths strengths, int[] ties) =>
        solver.LoadCases(loads.Cases.Length, []) is { } states ? new RowLook(solver, loads, strengths, ties, states) : null;

    /// <summary>
    /// Section forces of a combination, twelve for each member; good until the next is asked for. Where a tie is pressed past its strength,
    /// those of the row without any tie.
    /// </summary>
    internal ReadOnlySpan<double> Sections(RowCase each)
    {
        Add(_sections, _loads.Of(each), _states, state => state.SectionForces);
        if (_ties.Any(tie => _strengths.LetsGo(tie, _sections)) && _untied.Value is { } untied)
            Add(_sections, _loads.Of(each), untied, state => state.SectionForces);
        return _sections;
    }

    /// <summary>Ties that a combination presses past their strength while all hold.</summary>
    internal IEnumerable<int> LetGo(RowCase each)
    {
        Add(_sections, _loads.Of(each), _states, state => state.SectionForces);
        return [.. _ties.Where(tie => _strengths.LetsGo(tie, _sections))];
    }

    /// <summary>Movements of a combination while all ties hold, six for each node; good until the next is asked for.</summary>
    internal ReadOnlySpan<double> Movement(RowCase each)
    {
        Add(_movement, _loads.Of(each), _states, state => state.Displacements);
        return _movement;
    }

    /// <summary>What the ground puts on a node under a combination, upwards, while all ties hold.</summary>
    internal double UpN(RowCase each, int node) => _loads.Of(each).Sum(part => part.Factor * _states[part.LoadCase].Reactions[(6 * node) + 2]);

    private static void Add(double[] sum, ImmutableArray<CombinationPart> parts, FrameState[] states, Func<FrameState, ImmutableArray<double>> of)
    {
        Array.Clear(sum);
        foreach (CombinationPart part in parts) Sums.Add(sum, ImmutableCollectionsMarshal.AsArray(of(states[part.LoadCase]))!, part.Factor);
    }
}
