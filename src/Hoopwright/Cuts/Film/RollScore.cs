namespace Hoopwright.Cuts.Film;

/// <summary>How good a choice of rolls is; the less the better, first by cost, then by the others in turn.</summary>
/// <param name="Cost">Money or area of what is bought.</param>
/// <param name="Bought">How many rolls are bought.</param>
/// <param name="BoughtArea">Their area, in ticks squared; past what 64 bits hold for a few of the largest rolls.</param>
/// <param name="CutArea">Whole width times the marks, in ticks squared: the film taken off all rolls.</param>
internal readonly record struct RollScore(decimal Cost, int Bought, Int128 BoughtArea, Int128 CutArea) : IComparable<RollScore>
{
    internal static RollScore None { get; } = new(decimal.MaxValue, int.MaxValue, Int128.MaxValue, Int128.MaxValue);

    internal bool IsNone => Bought == int.MaxValue;

    public int CompareTo(RollScore other)
    {
        int byCost = Cost.CompareTo(other.Cost);
        if (byCost != 0) return byCost;
        int byCount = Bought.CompareTo(other.Bought);
        if (byCount != 0) return byCount;
        int byArea = BoughtArea.CompareTo(other.BoughtArea);
        return byArea != 0 ? byArea : CutArea.CompareTo(other.CutArea);
    }

    internal RollScore Plus(RollScore other) => IsNone || other.IsNone
        ? None
        : new(Cost + other.Cost, Bought + other.Bought, BoughtArea + other.BoughtArea, CutArea + other.CutArea);
}
