namespace Hoopwright.Cutting;

/// <summary>What found the plan's cost.</summary>
public enum CutMethod
{
    /// <summary>No plan: the job has errors, or nothing is to be cut.</summary>
    None,

    /// <summary>Bars filled one after the other, longest piece first, the best value of bar each time.</summary>
    Greedy,

    /// <summary>The best mixture of patterns, rounded to whole bars step by step.</summary>
    Rounding,

    /// <summary>A search over every pattern that a cheaper plan could use.</summary>
    Search,
}
