using System.Collections.Immutable;
using CsCheck;
using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Cuts.Film;
using Hoopwright.Diagnostics;
using Hoopwright.Geometry;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Tests.Cover;

namespace Hoopwright.Tests.Cuts.Film;

public sealed class FilmCutterTests
{
    // Common practice, no source.
    [Fact]
    public void Roof_and_ends_of_a_30_by_72_ft_tunnel_are_cut_from_one_roll_at_75_91_and_107_ft()
    {
        (var tunnel, var answers) = CoverSamples.Lay(CoverSamples.RollUp);
        FilmCutPlan cut = FilmCutter.Cut(CoverPlanner.Plan(tunnel, answers).Plan, tunnel.Plan, answers).Plan;

        CutRoll first = cut.Rolls[0];
        Assert.Equal([75, 91, 107], first.Marks.Select(mark => Math.Round(mark.Feet, 9)).Take(3));
        Assert.Equal(["roof-film", "front-end-film", "back-end-film"], first.Levels.Take(3).Select(level => level.Pieces[0].PieceId));
        Assert.Empty(cut.UnplacedIds);
        Assert.True(cut.Proven);
    }

    // Low-Investment Propagation/Winter Protection Structure, Horticulture Information Leaflet 404, North Carolina State
    // Extension, row 2 of the materials of 2023: one sheet 12 ft x 30 ft at 32.64.
    [Fact]
    public void The_leaflets_tunnel_takes_the_12_by_30_ft_sheet_at_its_price()
    {
        (var tunnel, var answers) = CoverSamples.Lay(CoverSamples.Leaflet404);
        CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;
        FilmCutPlan cut = FilmCutter.Cut(cover, Offering((10, 30, 25m), (12, 30, 32.64m), (14, 30, 38m), (12, 28, 30m)), answers).Plan;

        CutRoll roll = Assert.Single(cut.Rolls);
        Assert.Equal((12.0, 30.0), (Math.Round(roll.Offer.Width.Feet, 6), Math.Round(roll.Offer.Length.Feet, 6)));
        Assert.Equal(new Money(32.64m), cut.Cost);
        Assert.Equal(32.64m, cut.LowerBound);
        Assert.True(cut.Proven);
    }

    // The same leaflet: 12 ft less the arc leaves 15-1/2 in a side, so any tail of 12 in up to that must choose its sheet.
    [Theory]
    [InlineData("12 in")]
    [InlineData("13-1/2 in")]
    [InlineData("15-3/8 in")]
    public void A_tail_of_12_in_and_more_chooses_the_leaflets_sheet(string tail)
    {
        (var tunnel, var answers) = CoverSamples.Lay(CoverSamples.Leaflet404.Replace("\"frame\"", $$"""
            "cover": { "roofSideAllowance": "{{tail}}" }, "frame"
            """, StringComparison.Ordinal));
        FilmCutPlan cut = FilmCutter.Cut(CoverPlanner.Plan(tunnel, answers).Plan, Offering((10, 30, 25m), (11, 30, 28m), (12, 30, 32.64m), (14, 30, 38m)), answers).Plan;

        Assert.Equal(12, Assert.Single(cut.Rolls).Offer.Width.Feet, 6);
    }

    [Fact]
    public void Film_that_may_not_be_slit_is_cut_straight_across_only()
    {
        Plan plan = Offering((16, 100, 50m));
        FilmCutPlan cut = Cut(plan with { Cover = plan.Cover with { SlitFilm = false } }, ("left", 7, 74), ("right", 7, 74), ("leaf", 1.5, 8)).Plan;

        Assert.Equal(2, cut.Rolls.Length);
        Assert.All(cut.Rolls.SelectMany(roll => roll.Levels), level => Assert.Single(level.Pieces));
        Assert.Equal(new Money(100m), cut.Cost);
        Assert.True(cut.Proven);
    }

    [Fact]
    public void Dear_wide_rolls_give_way_to_cheap_narrow_ones()
    {
        Plan plan = Offering((40, 200, 1000m), (40, 100, 300m), (32, 50, 100m));
        FilmCutPlan cut = Cut(plan, ("roof", 38, 75), ("front", 32, 16), ("back", 32, 16)).Plan;

        // 300 + 100 for roof and both ends apart; 16 ft ends would also go on the first roll one at a time, 75 + 16 < 100.
        Assert.Equal(new Money(400m), cut.Cost);
        Assert.Equal(RollRank.Price, cut.RankedBy);
        Assert.True(cut.Proven);
    }

    [Fact]
    public void Film_on_hand_is_used_before_any_is_bought()
    {
        Plan plan = Offering((40, 100, 300m)) with
        {
            Stock = [new StockOnHand { Item = "film", Width = Feet(36), Length = Feet(40), Count = 1 }],
        };
        FilmCutPlan cut = Cut(plan, ("front", 32, 16), ("back", 32, 16)).Plan;

        CutRoll roll = Assert.Single(cut.Rolls);
        Assert.Equal(("stock[0]", true), (roll.Offer.Id, roll.Offer.OnHand));
        Assert.Equal((Money.Zero, 0.0), (cut.Cost, cut.BoughtArea.SquareMetres));
    }

    [Fact]
    public void Narrow_pieces_lie_side_by_side()
    {
        FilmCutPlan cut = Cut(Offering((16, 100, 50m)), ("left", 7, 74), ("right", 7, 74), ("leaf", 1.5, 8)).Plan;

        FilmLevel level = Assert.Single(Assert.Single(cut.Rolls).Levels);
        Assert.Equal([0, 7, 14], level.Pieces.Select(piece => Math.Round(piece.Offset.Feet, 6)));
        Assert.Equal([(1.5, 66.0), (0.5, 74.0)], level.Offcuts.Select(offcut => (Math.Round(offcut.Width.Feet, 6), Math.Round(offcut.Length.Feet, 6))));
    }

    [Fact]
    public void Alike_layers_are_each_cut_and_labelled()
    {
        FilmCutPlan cut = FilmCutter.Cut(CoverOf([Piece("roof", 38, 75) with { Count = 2 }]), Offering((40, 150, 500m)), Answers()).Plan;

        Assert.Equal(["roof, layer 1 of 2", "roof, layer 2 of 2"], Assert.Single(cut.Rolls).Levels.Select(level => level.Pieces[0].Label));
    }

    [Fact]
    public void A_piece_wider_than_every_roll_is_an_error_that_names_what_would_do()
    {
        FilmCutOutcome outcome = Cut(Offering((32, 100, 300m)), ("roof", 38, 75), ("front", 30, 16));

        Assert.Equal(["roof"], outcome.Plan.UnplacedIds);
        Diagnostic error = Assert.Single(outcome.Diagnostics, diagnostic => diagnostic.Severity == Severity.Error);
        Assert.Equal("cuts.film.no-roll", error.Code);
        Assert.Equal("a roll at least 38' 0\" wide and 75' 0\" long, such as 38 ft x 100 ft", error.Accepted);
        Assert.Single(outcome.Plan.Rolls);
    }

    [Fact]
    public void A_piece_wider_than_the_usual_rolls_is_an_error_too() =>
        Assert.Contains(Cut(new Plan(), ("roof", 90, 75)).Diagnostics, diagnostic => diagnostic.Code == "cuts.film.no-roll");

    [Fact]
    public void Rolls_that_run_out_are_an_error_and_the_rest_is_still_cut()
    {
        Plan plan = Offering((40, 80, 300m));
        plan = plan with { Cover = plan.Cover with { Rolls = [plan.Cover.Rolls[0] with { Limit = 1 }] } };
        FilmCutOutcome outcome = Cut(plan, ("roof", 38, 75), ("front", 32, 16));

        Assert.Equal(["front"], outcome.Plan.UnplacedIds);
        Assert.False(outcome.Plan.Proven);
        Assert.Contains(outcome.Diagnostics, diagnostic => diagnostic.Code == "cuts.film.rolls-run-out");
    }

    [Fact]
    public void A_roll_without_size_is_an_error()
    {
        var plan = new Plan { Cover = new Plans.Cover { Rolls = [new FilmRoll { Width = Feet(40) }] } };

        Assert.Contains(Cut(plan, ("roof", 38, 75)).Diagnostics, diagnostic => diagnostic.Code == "cuts.film.roll-without-size");
    }

    [Fact]
    public void Without_rolls_in_the_plan_the_usual_sizes_are_an_assumption_and_area_decides()
    {
        Answers answers = Answers();
        FilmCutOutcome outcome = FilmCutter.Cut(CoverOf([Piece("roof", 38, 75)]), new Plan(), answers);

        Assert.Equal(RollRank.Area, outcome.Plan.RankedBy);
        Assert.Equal("38 ft x 100 ft", Assert.Single(outcome.Plan.Rolls).Offer.Id);
        Assert.Null(outcome.Plan.Cost);
        Assert.Contains(outcome.Diagnostics, diagnostic => diagnostic.Code == "cuts.film.ranked-by-area");
        Assert.Contains(answers.Assumptions, assumption => assumption.Path == "cover.rolls");
    }

    [Fact]
    public void Very_many_sizes_have_a_bound_and_a_proof_only_where_it_is_met()
    {
        ImmutableArray<CoverPiece> pieces = [.. Enumerable.Range(0, 40).Select(index => Piece("leaf-" + index, 3 + (index * 0.1), 7 + (index % 5)))];
        FilmCutPlan cut = FilmCutter.Cut(CoverOf(pieces), new Plan(), Answers()).Plan;

        Assert.Empty(cut.UnplacedIds);
        Assert.InRange(cut.LowerBound, 0.9m * (decimal)cut.BoughtArea.SquareMetres, (decimal)cut.BoughtArea.SquareMetres);
        Assert.True(!cut.Proven || cut.LowerBound == (decimal)cut.BoughtArea.SquareMetres);
        Assert.Equal(40, cut.Rolls.Sum(roll => roll.Levels.Sum(level => level.Pieces.Length)));
    }

    [Fact]
    public void Hundreds_of_pieces_are_cut_within_three_hundredths_of_what_no_choice_can_beat()
    {
        // 360 pieces of 12 sizes from four sizes of roll.
        ImmutableArray<CoverPiece> pieces = [.. Enumerable.Range(0, 12).Select(index => Piece("sheet-" + index, 4.5 + (index * 1.25), 9 + (index * 7 % 12)) with { Count = 19 + (2 * index) })];
        FilmCutPlan cut = FilmCutter.Cut(CoverOf(pieces), Offering((20, 100, 210m), (24, 150, 385m), (32, 100, 345m), (40, 150, 610m)), Answers()).Plan;

        Assert.Equal(pieces.Sum(piece => piece.Count), cut.Rolls.Sum(roll => roll.Levels.Sum(level => level.Pieces.Length)));
        Assert.All(cut.Rolls, roll => Assert.True(roll.Remainder.Metres > -1e-6));
        Assert.Equal(cut.Rolls.Sum(roll => roll.Offer.Price!.Value.Amount), cut.Cost!.Value.Amount);
        Assert.InRange(cut.LowerBound, 0.97m * cut.Cost.Value.Amount, cut.Cost.Value.Amount);
        Assert.Equal(cut.LowerBound == cut.Cost.Value.Amount, cut.Proven);
    }

    [Fact]
    public void Hundreds_of_pieces_and_too_few_rolls_leave_over_what_no_roll_is_left_for()
    {
        Plan plan = Offering((20, 100, 210m));
        plan = plan with { Cover = plan.Cover with { Rolls = [plan.Cover.Rolls[0] with { Limit = 3 }] } };
        ImmutableArray<CoverPiece> pieces = [.. Enumerable.Range(0, 10).Select(index => Piece("sheet-" + index, 4.5 + index, 9 + (index * 7 % 12)) with { Count = 20 })];
        FilmCutOutcome outcome = FilmCutter.Cut(CoverOf(pieces), plan, Answers());

        Assert.Equal(3, outcome.Plan.Rolls.Length);
        Assert.False(outcome.Plan.Proven);
        int cut = outcome.Plan.Rolls.Sum(roll => roll.Levels.Sum(level => level.Pieces.Length));
        Assert.Equal(200 - cut, outcome.Diagnostics.Count(diagnostic => diagnostic.Code == "cuts.film.rolls-run-out"));
    }

    [Fact]
    public void Area_of_rolls_is_pieces_and_offcuts_and_remainders_and_marks_rise_within_the_roll() =>
        Pieces.Sample(pieces =>
        {
            FilmCutPlan cut = FilmCutter.Cut(CoverOf(pieces), new Plan(), Answers()).Plan;
            Assert.Equal(pieces.Sum(piece => piece.Count), cut.Rolls.Sum(roll => roll.Levels.Sum(level => level.Pieces.Length)));
            foreach (CutRoll roll in cut.Rolls)
            {
                double inM2 = roll.Offer.Area.SquareMetres;
                double outM2 = roll.Levels.Sum(level => level.Pieces.Sum(piece => (piece.Across * piece.Along).SquareMetres) + level.Offcuts.Sum(offcut => offcut.Area.SquareMetres));
                Assert.Equal(inM2, outM2 + (roll.Offer.Width * roll.Remainder).SquareMetres, 6);
                Assert.True(roll.Marks.Zip(roll.Marks.Skip(1)).All(pair => pair.First < pair.Second));
                Assert.True(roll.Remainder.Metres > -1e-6);
                // The search counts in tenths of a micrometre.
                Assert.All(roll.Levels.SelectMany(level => level.Pieces), piece =>
                    Assert.True(piece.Across.Metres >= pieces.Single(wanted => wanted.Id == piece.PieceId).AcrossRoll.Metres - 1e-7));
            }
        }, iter: 60);

    [Fact]
    public void No_split_of_the_pieces_over_rolls_is_cheaper_than_the_proven_choice() =>
        Gen.Select(Gen.Int[2, 4], Gen.Int[0, 10_000]).Sample((count, seed) =>
        {
            // Every way to put pieces one after another onto rolls of one width and two lengths, by trying them all.
            double[] alongs = [.. Enumerable.Range(0, count).Select(index => 10.0 + ((seed * (index + 3) * 37) % 50))];
            (string, double, double)[] pieces = [.. alongs.Select((along, index) => ("p" + index, 21.0, along))];
            FilmCutPlan cut = Cut(Offering((40, 100, 100m), (40, 60, 70m)), pieces).Plan;
            return cut.Proven && cut.Cost == new Money(CheapestByTrying(alongs));
        }, iter: 200);

    [Fact]
    public void A_piece_too_wide_for_the_roll_is_turned_where_that_is_allowed()
    {
        Plan plan = Offering((24, 100, 90m));
        Assert.Equal(["curtain"], Cut(plan, ("curtain", 30, 20)).Plan.UnplacedIds);
        PlacedPiece placed = Assert.Single(Assert.Single(Cut(plan with { Cover = plan.Cover with { TurnFilm = true } }, ("curtain", 30, 20)).Plan.Rolls[0].Levels).Pieces);
        Assert.Equal((30, "curtain, turned"), (Math.Round(placed.Along.Feet, 9), placed.Label));
    }

    [Fact]
    public void Trying_every_level_of_every_roll_finds_nothing_cheaper_than_the_proven_choice() =>
        Gen.Select(
            Gen.Select(Gen.Int[2, 24], Gen.Int[5, 60]).Array[1, 5],
            Gen.Select(Gen.Int[8, 26], Gen.Int[20, 110], Gen.Int[20, 200], Gen.Int[0, 2]).Array[1, 3],
            Gen.Bool, Gen.Bool).Sample((sizes, rolls, slit, turn) =>
        {
            // A limit of 0 stands for any number.
            Plan plan = Offering([.. rolls.Select(roll => ((double)roll.Item1, (double)roll.Item2, (decimal)roll.Item3))]);
            plan = plan with
            {
                Cover = plan.Cover with
                {
                    SlitFilm = slit,
                    TurnFilm = turn,
                    Rolls = [.. plan.Cover.Rolls.Select((roll, index) => rolls[index].Item4 == 0 ? roll : roll with { Limit = rolls[index].Item4 })],
                },
            };
            FilmCutPlan cut = Cut(plan, [.. sizes.Select((size, index) => ("p" + index, (double)size.Item1, (double)size.Item2))]).Plan;

            // Every way of turning the pieces, each tried for itself.
            int? cheapest = Enumerable.Range(0, turn ? 1 << sizes.Length : 1)
                .Select(turned => new EveryCut([.. sizes.Select((size, index) => (turned >> index & 1) == 1 ? (size.Item2, size.Item1) : size)], rolls, slit).Least).Min();
            return cheapest is { } least
                ? cut.Proven && cut.Cost == new Money(least) && cut.UnplacedIds.IsEmpty
                : !cut.UnplacedIds.IsEmpty;
        }, iter: 400);

    /// <summary>Tries every way to put every piece on a level that there is, on a new level, or on a new roll.</summary>
    private sealed class EveryCut
    {
        private readonly (int Across, int Along)[] sizes;
        private readonly (int Width, int Length, int Price, int Limit)[] rolls;
        private readonly bool slit;
        private readonly List<(int Offer, List<(int Across, int Along)> Levels)> open = [];

        internal EveryCut((int Across, int Along)[] sizes, (int Width, int Length, int Price, int Limit)[] rolls, bool slit)
        {
            (this.sizes, this.rolls, this.slit) = (sizes, rolls, slit);
            Try(0);
        }

        internal int? Least { get; private set; }

        private void Try(int piece)
        {
            int cost = open.Sum(roll => rolls[roll.Offer].Price);
            if (cost >= Least) return;
            if (piece == sizes.Length)
            {
                Least = cost;
                return;
            }
            for (int index = 0; index < open.Count; index++) TryOn(piece, open[index]);
            for (int offer = 0; offer < rolls.Length; offer++)
            {
                if (rolls[offer].Limit > 0 && open.Count(roll => roll.Offer == offer) == rolls[offer].Limit) continue;
                (int Offer, List<(int Across, int Along)> Levels) fresh = (offer, []);
                open.Add(fresh);
                TryOn(piece, fresh);
                open.RemoveAt(open.Count - 1);
            }
        }

        private void TryOn(int piece, (int Offer, List<(int Across, int Along)> Levels) roll)
        {
            (int across, int along) = sizes[piece];
            for (int level = 0; slit && level < roll.Levels.Count; level++)
            {
                (int Across, int Along) before = roll.Levels[level];
                roll.Levels[level] = (before.Across + across, Math.Max(before.Along, along));
                if (Fits(roll)) Try(piece + 1);
                roll.Levels[level] = before;
            }
            roll.Levels.Add((across, along));
            if (Fits(roll)) Try(piece + 1);
            roll.Levels.RemoveAt(roll.Levels.Count - 1);
        }

        private bool Fits((int Offer, List<(int Across, int Along)> Levels) roll) =>
            roll.Levels.All(level => level.Across <= rolls[roll.Offer].Width) && roll.Levels.Sum(level => level.Along) <= rolls[roll.Offer].Length;
    }

    private static readonly Gen<ImmutableArray<CoverPiece>> Pieces =
        Gen.Select(Gen.Double[2, 50], Gen.Double[5, 150], Gen.Int[1, 2]).Array[1, 5].Select(sizes =>
            sizes.Select((size, index) => Piece(FormattableString.Invariant($"p{index}"), size.Item1, Math.Ceiling(size.Item2)) with { Count = size.Item3 }).ToImmutableArray());

    /// <summary>Least cost over all assignments of pieces to rolls, counted out in base of the number of pieces.</summary>
    private static decimal CheapestByTrying(double[] alongs)
    {
        decimal best = decimal.MaxValue;
        int ways = (int)Math.Pow(alongs.Length, alongs.Length);
        for (int way = 0; way < ways; way++)
        {
            double[] loads = new double[alongs.Length];
            for (int index = 0, digits = way; index < alongs.Length; index++, digits /= alongs.Length) loads[digits % alongs.Length] += alongs[index];
            if (loads.Any(load => load > 100)) continue;
            best = Math.Min(best, loads.Sum(load => load == 0 ? 0m : load <= 60 ? 70m : 100m));
        }
        return best;
    }

    private static FilmCutOutcome Cut(Plan plan, params (string Id, double AcrossFt, double AlongFt)[] pieces) =>
        FilmCutter.Cut(CoverOf([.. pieces.Select(piece => Piece(piece.Id, piece.AcrossFt, piece.AlongFt))]), plan, Answers());

    private static Answers Answers() => new(UnitSystem.UsCustomary);

    private static Plan Offering(params (double WidthFt, double LengthFt, decimal Price)[] rolls) => new()
    {
        Cover = new Plans.Cover
        {
            Rolls = [.. rolls.Select(roll => new FilmRoll { Width = Feet(roll.WidthFt), Length = Feet(roll.LengthFt), Price = new Written<Money>("", new Money(roll.Price)) })],
        },
    };

    private static Written<Length> Feet(double feet) => new(FormattableString.Invariant($"{feet} ft"), Length.FromFeet(feet));

    private static CoverPiece Piece(string id, double acrossFt, double alongFt) => new()
    {
        Id = id,
        Role = CoverRole.Roof,
        Place = id,
        AlongRoll = Length.FromFeet(alongFt),
        AcrossRoll = Length.FromFeet(acrossFt),
        AlongParts = [],
        AcrossParts = [],
        Finished = PlanePath.Of(new LineSegment(new PlanePoint(Length.Zero, Length.Zero), new PlanePoint(Length.Zero, Length.FromFeet(1)))),
        FinishedArea = Area.Zero,
        Count = 1,
    };

    private static CoverPlan CoverOf(ImmutableArray<CoverPiece> pieces) => new()
    {
        Pieces = pieces,
        Runs = [],
        Order = CoverOrder.EndsFirst,
        Thickness = Length.FromInches(0.006),
        Layers = 1,
        Inflation = null,
        SharpPoints = 0,
        RoofEndTrim = Length.Zero,
        EndAbove = Length.Zero,
        RoofSideAllowance = Length.Zero,
        TemporaryWireSpacing = Length.FromFeet(4),
        Band = new PullBand(Temperature.FromFahrenheit(50), Temperature.FromFahrenheit(75)),
        Ropes = new PullingRopes(0, Length.Zero, []),
        BowTape = Length.Zero,
    };
}
