using Hoopwright.Diagnostics;

namespace Hoopwright.Frames;

/// <summary>Solves a frame for its combinations, linear or second-order. Keeps its room and, while nothing changes, its factors.</summary>
internal sealed class StaticSolver
{
    // A frame of tension-only members settles in a few rounds or swings between two sets for ever.
    private const int MostSlackRounds = 40;

    // Second-order iterations of a frame away from its limit need 4 to 10; near it the gain per round sinks to nothing.
    private const int MostRounds = 60;

    // One more solve with the same factors wins back what rounding lost in them.
    private const double RefineAbove = 1e-13;

    private readonly FrameMesh _mesh;
    private readonly FrameWork _work;
    private readonly double[] _rest;
    private readonly bool _mayGoSlack;
    private readonly List<Diagnostic> _found = [];
    private bool _factored;

    internal StaticSolver(FrameMesh mesh)
    {
        _mesh = mesh;
        _work = new(mesh);
        _rest = new double[6 * mesh.Nodes];
        _mayGoSlack = mesh.Beams.Any(beam => beam.Member.TensionOnly);
    }

    /// <summary>What was found wrong or doubtful so far.</summary>
    internal IReadOnlyList<Diagnostic> Found => _found;

    /// <summary>The room it works in, as the last solve left it.</summary>
    internal FrameWork Work => _work;

    /// <summary>Solves on the frame as drawn.</summary>
    /// <returns>The state; null when the frame is a mechanism, which <see cref="Found"/> then says.</returns>
    internal FrameState? Linear(FrameCombination combination) => Linear(combination, isRough: false);

    /// <summary>Solves each of many load cases on the frame as drawn, with one factorisation and to the digits that it leaves.</summary>
    /// <param name="loads">How many there are.</param>
    /// <param name="without">Members that take no part; for a frame without members that slacken of themselves.</param>
    /// <returns>A state for each load case; null when the frame is a mechanism, which <see cref="Found"/> then says.</returns>
    internal FrameState[]? LoadCases(int loads, IReadOnlyCollection<int> without)
    {
        var states = new FrameState[loads];
        _factored = false;
        for (int at = 0; at < loads; at++)
        {
            if (Linear(new FrameCombination(_mesh.Model.LoadCases[at].Id, [new CombinationPart(at, 1)]), isRough: true, without) is not { } state)
                return null;
            states[at] = state;
        }
        _factored &= without.Count == 0;
        return states;
    }

    private FrameState? Linear(FrameCombination combination, bool isRough, IReadOnlyCollection<int>? without = null)
    {
        Array.Clear(_work.Slack);
        foreach (int member in without ?? [])
            _work.Slack[member] = true;
        _work.Load(combination.Parts);
        if (_mayGoSlack)
            _factored = false;
        int rounds = 0;
        double residual;
        do
        {
            if (!Factor(combination))
                return null;
            residual = Balance(isRough);
            rounds++;
        }
        while (_mayGoSlack && SlackChanged(rounds, combination));
        return _work.State(rounds, residual);
    }

    /// <summary>Solves with the stiffness that forces give, until movements, forces and loads are in balance.</summary>
    /// <param name="combination">The loads.</param>
    /// <param name="tolerance">Out-of-balance allowed, as a share of the greatest force.</param>
    /// <returns>The state; null when the frame is a mechanism or cannot stand these loads, which <see cref="Found"/> then says.</returns>
    internal FrameState? SecondOrder(FrameCombination combination, double tolerance)
    {
        return Linear(combination) is { } linear ? Balanced(combination, tolerance, linear.Iterations) : null;
    }

    /// <summary>The same from movements that are near already, such as those that linear states of the load cases add up to; without some members; for a frame without members that slacken of themselves.</summary>
    /// <param name="combination">The loads.</param>
    /// <param name="tolerance">Out-of-balance allowed, as a share of the greatest force.</param>
    /// <param name="movement">Six for each node, linear under the same loads.</param>
    /// <param name="slack">Members that take no part.</param>
    internal FrameState? SecondOrder(FrameCombination combination, double tolerance, ReadOnlySpan<double> movement, IEnumerable<int> slack)
    {
        Array.Clear(_work.Slack);
        foreach (int member in slack)
            _work.Slack[member] = true;
        _work.Load(combination.Parts);
        _work.Move(movement);
        _work.FormBeams(geometric: false);
        _work.OutOfBalance(_rest);
        return Balanced(combination, tolerance, 0);
    }

    private FrameState? Balanced(FrameCombination combination, double tolerance, int rounds)
    {
        while (rounds <= MostRounds)
        {
            _factored = false;
            _work.Form(geometric: true);
            double residual = _work.OutOfBalance(_rest);
            if (residual <= tolerance)
                return _work.State(rounds, residual);
            _work.Factor.Factor();
            rounds++;
            if (Unstable(combination))
                return null;
            _work.Factor.Solve(_rest);
            _work.Move(_rest);
            _work.OutOfBalance(_rest);
            if (_mayGoSlack)
                _work.SetSlack();
        }
        _found.Add(new("model.second-order.no-balance", Severity.Error, $"combinations.{combination.Id}", "The frame comes to no balance under this combination: its movements do not settle.", null, "lower loads or a stiffer frame"));
        return null;
    }

    private double Balance(bool isRough)
    {
        _work.OutOfBalance(_rest);
        _work.Factor.Solve(_rest);
        _work.Move(_rest);
        double residual = _work.OutOfBalance(_rest);
        if (residual > RefineAbove && !isRough)
        {
            _work.Factor.Solve(_rest);
            _work.Move(_rest);
            residual = _work.OutOfBalance(_rest);
        }
        return residual;
    }

    private bool Factor(FrameCombination combination)
    {
        if (_factored)
        {
            _work.TakeEnds();
            return true;
        }
        _work.Form(geometric: false);
        _work.Factor.Factor();
        if (_work.Factor.Lost.Count > 0)
        {
            _found.AddRange(Mechanism.Say(_mesh, _work.Factor));
            return false;
        }
        Conditioning(combination);
        _factored = true;
        return true;
    }

    private bool SlackChanged(int rounds, FrameCombination combination)
    {
        if (!_work.SetSlack())
            return false;
        if (rounds >= MostSlackRounds)
        {
            _found.Add(new("model.tension-only.no-end", Severity.Warning, $"combinations.{combination.Id}", "The members that only take tension find no steady set: the last one is given.", null, "members that take both"));
            return false;
        }
        _factored = false;
        for (int at = 0; at < _work.Movement.Length; at++)
        {
            if (!_mesh.Held[at])
                _work.Movement[at] = 0;
        }
        return true;
    }

    private bool Unstable(FrameCombination combination)
    {
        if (_work.Factor.Negative == 0 && _work.Factor.Lost.Count == 0)
            return false;
        _found.Add(new("model.second-order.buckled", Severity.Error, $"combinations.{combination.Id}", "The frame buckles before it carries this combination.", null, "lower loads or a stiffer frame"));
        return true;
    }

    private void Conditioning(FrameCombination combination)
    {
        if (_work.Factor.LeastShare < 1e-10 && !_found.Any(said => said.Code == "model.ill-conditioned"))
        {
            string share = _work.Factor.LeastShare.ToString("0.0e-0", System.Globalization.CultureInfo.InvariantCulture);
            _found.Add(new("model.ill-conditioned", Severity.Warning, $"combinations.{combination.Id}", "Stiff and soft parts differ so much that digits are lost: look at the residual.", $"least pivot {share} of its diagonal", "members of like stiffness, or fewer very short ones"));
        }
    }
}
