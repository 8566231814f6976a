namespace Hoopwright.Running;

/// <summary>Work done one piece after the other, where no other way is handed in.</summary>
public static class InTurn
{
    /// <summary>Runs the pieces in their order.</summary>
    /// <param name="work">The pieces.</param>
    public static void Run(params Action[] work)
    {
        foreach (Action piece in work) piece();
    }
}
