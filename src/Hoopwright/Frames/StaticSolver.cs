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
    internal FrameState? Linear(FrameCombination combination)
    {
        Array.Clear(_work.Slack);
        _work.Load(combination.Parts);
        if (_mayGoSlack)
            _factored = false;
        int rounds = 0;
        double residual;
        do
        {
            if (!Factor(geometric: false, combination))
                return null;
            residual = Balance();
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
        if (Linear(combination) is not { } linear)
            return null;
        int rounds = linear.Iterations;
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

    private double Balance()
    {
        _work.OutOfBalance(_rest);
        _work.Factor.Solve(_rest);
        _work.Move(_rest);
        double residual = _work.OutOfBalance(_rest);
        if (residual > RefineAbove)
        {
            _work.Factor.Solve(_rest);
            _work.Move(_rest);
            residual = _work.OutOfBalance(_rest);
        }
        return residual;
    }

    private bool Factor(bool geometric, FrameCombination combination)
    {
        if (_factored)
        {
            _work.FormBeams(geometric);
            return true;
        }
        _work.Form(geometric);
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
