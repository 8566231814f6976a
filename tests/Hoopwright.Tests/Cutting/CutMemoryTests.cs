using Hoopwright.Cutting;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cutting;

public sealed class CutMemoryTests
{
    private static CutJob Job(double pieceFeet, int count = 7) => new()
    {
        Stock = [new CutStock("a", Length.FromFeet(16), new Money(12m)), new CutStock("b", Length.FromFeet(10), new Money(7m), 3)],
        Pieces = [new CutPiece("p", Length.FromFeet(pieceFeet), count)],
        Kerf = Length.FromInches(0.125),
    };

    [Fact]
    public void The_same_job_is_worked_out_once()
    {
        CutMemory memory = new();
        Assert.Same(memory.Solve(Job(5), CutEffort.Live), memory.Solve(Job(5), CutEffort.Live));
    }

    [Fact]
    public void A_job_that_differs_in_anything_is_worked_out_anew()
    {
        CutMemory memory = new();
        CutPlan plan = memory.Solve(Job(5), CutEffort.Live);
        Assert.NotSame(plan, memory.Solve(Job(5), CutEffort.Usual));
        Assert.NotSame(plan, memory.Solve(Job(5) with { Trim = Length.FromInches(1) }, CutEffort.Live));
        Assert.Equal(Cutter.Solve(Job(5, 8), CutEffort.Live).Cost, memory.Solve(Job(5, 8), CutEffort.Live).Cost);
        Assert.Equal(Cutter.Solve(Job(4.999), CutEffort.Live).Cost, memory.Solve(Job(4.999), CutEffort.Live).Cost);
    }

    [Fact]
    public void No_more_is_remembered_than_said()
    {
        CutMemory memory = new(most: 1);
        CutPlan first = memory.Solve(Job(5), CutEffort.Live);
        memory.Solve(Job(6), CutEffort.Live);
        Assert.NotSame(first, memory.Solve(Job(5), CutEffort.Live));
    }
}
