using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Cuts;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Tests.Cuts;

public class JointLayoutsTests
{
    [Fact]
    public void A_20_ft_run_of_10_and_12_ft_boards_is_joined_in_the_ways_a_carpenter_would()
    {
        // Bows every 20/7 ft: 10 ft falls in the middle of a bay, 12 ft clear of the bows at 11.43 and 14.29 ft.
        ImmutableArray<JointLayout> layouts = Of(20, 20.0 / 7, 10, 12);
        Assert.Contains(layouts, layout => Feet(layout).SequenceEqual([10.0, 10.0]));
        Assert.Contains(layouts, layout => Feet(layout).Order().SequenceEqual([8.0, 12.0]));
        Assert.Equal(layouts.Length, layouts.Select(layout => layout.SamePieces).Distinct().Count());
    }

    [Fact]
    public void A_joint_that_would_stand_at_a_bow_moves_back_before_it()
    {
        // Bows at 4 ft: the end of a 16 ft board stands on one, so it is cut at 15 ft 9 in.
        JointLayout layout = Of(24, 4, 16).First(layout => layout.Pieces.Length == 2 && layout.Pieces[0] > layout.Pieces[1]);
        Assert.Equal([15.75, 8.25], Feet(layout));
    }

    [Fact]
    public void A_run_that_fits_one_board_may_stay_whole() => Assert.Contains(Of(14, 4, 12, 16), layout => layout.Joints.IsEmpty);

    [Fact]
    public void Whole_boards_stay_whole_whatever_the_tape()
    {
        PieceNeed run = new("run", "run", Length.FromMillimetres(11_000));
        JointLayout layout = JointLayouts.Of(run, new Joining([], Length.FromFeet(1), []), [Length.FromFeet(8)]).MinBy(layout => layout.Pieces.Length)!;
        Assert.Equal(4, layout.Pieces.Count(piece => Math.Abs(piece.Feet - 8) < 1e-9));
        Assert.Equal(11, layout.Pieces.Sum(piece => piece.Metres), 1e-12);
    }

    [Fact]
    public void Every_layout_keeps_the_rules() => Gen.Select(Gen.Double[5, 150], Gen.Double[2, 8], Gen.Int[0, 6]).Sample((feet, bows, which) =>
    {
        double[] stock = which switch { 0 => [8], 1 => [16], 2 => [8, 12], 3 => [10, 12, 16], 4 => [20, 21, 24], 5 => [8, 10, 12, 14, 16], _ => [6.5] };
        Length length = TapeText.RoundForMember(Length.FromFeet(feet), UnitSystem.UsCustomary);
        Joining joining = CutNeeds.OffTheBows(feet, bows) with { ShortestPiece = Length.FromFeet(1) };
        foreach (JointLayout layout in JointLayouts.Of(new PieceNeed("run", "run", length), joining, Usable(stock)))
        {
            if (Math.Abs(layout.Pieces.Sum(piece => piece.Metres) - length.Metres) > 1e-9) return false;
            if (layout.Pieces.Any(piece => piece.Feet > stock.Max() + 1e-5)) return false;
            if (!layout.Joints.IsEmpty && layout.Pieces.Any(piece => piece.Feet < 1 - 1e-5)) return false;
            if (layout.Joints.Any(joint => joining.NoJoints.Any(none => joint.Metres > none.From.Metres + 1e-5 && joint.Metres < none.To.Metres - 1e-5))) return false;
        }
        return true;
    });

    [Fact]
    public void Runs_side_by_side_are_turned_so_that_their_joints_part()
    {
        PieceNeed run = new("run", "run", Length.FromFeet(20)) { Joining = new Joining([], Length.FromFeet(1), []) };
        var layout = new JointLayout([Length.FromFeet(12)], [Length.FromFeet(12), Length.FromFeet(8)]);
        var line = CutNeeds.Pieces(1).Lines[0];
        ImmutableArray<JointLayout> placed = Staggering.Of([new CutNeed(run, line), new CutNeed(run, line)], [layout, layout]);
        Assert.Equal([12.0, 8.0], placed.Select(each => Math.Round(each.Joints[0].Feet, 6)));
        Assert.Equal(0, Staggering.Beside(placed[0], [placed[1]]));
    }

    private static ImmutableArray<JointLayout> Of(double feet, double bows, params double[] stock) => JointLayouts.Of(
        new PieceNeed("run", "run", Length.FromFeet(feet)), CutNeeds.OffTheBows(feet, bows), Usable(stock));

    private static ImmutableArray<Length> Usable(double[] stock) => [.. stock.OrderDescending().Select(Length.FromFeet)];

    private static IEnumerable<double> Feet(JointLayout layout) => layout.Pieces.Select(piece => Math.Round(piece.Feet, 6));
}
