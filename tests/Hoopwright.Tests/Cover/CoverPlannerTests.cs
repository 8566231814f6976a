using CsCheck;
using Hoopwright.Cover;
using Hoopwright.Cuts.Film;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Tests.Cover;

public sealed class CoverPlannerTests
{
    // Common practice, no source.
    [Fact]
    public void The_roof_of_a_72_ft_tunnel_covered_to_its_end_bows_is_cut_at_75_ft() =>
        Assert.Equal(75, CoverSamples.Cover(CoverSamples.RollUp).Piece("roof-film").AlongRoll.Feet, 9);

    // Common practice, no source.
    [Theory]
    [InlineData("12 ft 6 in", 16)]
    [InlineData("13 ft", 17)]
    public void The_end_of_a_30_ft_tunnel_is_cut_at_16_to_17_ft(string peak, double feet)
    {
        CoverPlan cover = CoverSamples.Cover(CoverSamples.RollUp.Replace("12 ft 6 in", peak, StringComparison.Ordinal));

        CoverPiece end = cover.Piece("front-end-film");
        Assert.Equal(feet, end.AlongRoll.Feet, 9);
        Assert.Equal(32, end.AcrossRoll.Feet, 9);
    }

    // Common practice, no source: growers cover a 30 by 96 ft house with film to the ground from a sheet of 48 by 100 ft.
    [Fact]
    public void A_30_by_96_ft_tunnel_with_film_to_the_ground_takes_a_sheet_of_48_by_100_ft()
    {
        CoverPiece roof = CoverSamples.Cover(CoverSamples.RollUp
            .Replace("72 ft", "96 ft", StringComparison.Ordinal).Replace("rollUp", "fixed", StringComparison.Ordinal)).Piece("roof-film");

        Assert.InRange(roof.AlongRoll.Feet, 96, 100);
        Assert.InRange(roof.AcrossRoll.Feet, 46, 48);
    }

    // Low-Investment Propagation/Winter Protection Structure, Horticulture Information Leaflet 404, North Carolina State
    // Extension, materials: one sheet 12 ft x 30 ft, batten tape round four boards, 2 x (20 + 6) ft.
    [Fact]
    public void The_leaflets_sheet_over_a_6_by_20_ft_tunnel_is_12_by_30_ft()
    {
        CoverPlan cover = CoverSamples.Cover(CoverSamples.Leaflet404);

        CoverPiece roof = Assert.Single(cover.Pieces);
        Assert.Equal(30, roof.AlongRoll.Feet, 9);
        Assert.Equal((Math.PI * 3) + 2.5, roof.AcrossRoll.Feet, 6);
        Assert.InRange(roof.AcrossRoll.Feet, 11, 12);
        Assert.Equal(52, cover.Runs.Sum(run => run.Length.Feet), 6);
        Assert.All(cover.Runs, run => Assert.Equal((FasteningKind.Batten, true), (run.Kind, run.OnWood)));
    }

    [Fact]
    public void Pieces_come_in_the_order_they_are_cut() =>
        Assert.Equal(
            ["roof-film", "front-end-film", "back-end-film", "left-curtain-film", "right-curtain-film", "front-door-1-leaf-1-film", "front-door-1-leaf-2-film"],
            CoverSamples.Cover(CoverSamples.RollUp).Pieces.Select(piece => piece.Id));

    [Fact]
    public void Parts_add_up_to_what_is_cut_within_one_step()
    {
        foreach (CoverPiece piece in CoverSamples.Cover(CoverSamples.RollUp).Pieces)
        {
            Assert.Equal(piece.AcrossRoll.Metres, piece.AcrossParts.Sum(part => part.Length.Metres), 9);
            Assert.InRange(piece.AlongRoll.Feet - piece.AlongParts.Sum(part => part.Length.Feet), -1e-9, 1);
        }
    }

    [Fact]
    public void The_roof_of_a_semicircle_runs_from_ground_to_ground_and_15_in_past()
    {
        CoverPiece roof = CoverSamples.Cover(CoverSamples.Fixed).Piece("roof-film");

        Assert.Equal((Math.PI * 7) + 2.5, roof.AcrossRoll.Feet, 6);
        Assert.Equal(27, roof.AlongRoll.Feet, 9);
        // Trimmed 4 in past the end channels.
        Assert.Equal(roof.AcrossRoll.Feet * (24 + (8 / 12.0)), roof.FinishedArea.SquareFeet, 6);
    }

    [Fact]
    public void A_semicircular_end_is_trimmed_to_a_half_circle_6_in_larger_and_a_tail_of_8_in()
    {
        CoverPiece end = CoverSamples.Cover(CoverSamples.Fixed).Piece("front-end-film");

        Assert.Equal((Math.PI * 7.5 * 7.5 / 2) + (15 * 8 / 12.0), end.FinishedArea.SquareFeet, 6);
        Assert.Equal(end.Finished.Start, end.Finished.End);
    }

    [Fact]
    public void A_curtain_hangs_from_the_hip_board_past_the_baseboard_with_two_feet_to_spare()
    {
        // Upright legs to 5 ft: from 4 ft down to 6 in under the top of a 5-1/2 in board is 4 ft 1/2 in.
        CoverPiece curtain = CoverSamples.Cover(CoverSamples.RollUp).Piece("left-curtain-film");

        Assert.Equal(48.5 + 24, curtain.AcrossRoll.Inches, 6);
        Assert.Equal(74, curtain.AlongRoll.Feet, 9);
    }

    [Fact]
    public void Two_layers_double_the_roof_and_nothing_else()
    {
        CoverPlan cover = CoverSamples.Cover(CoverSamples.RollUp.Replace("\"sides\"", "\"cover\": { \"layers\": 2 }, \"sides\"", StringComparison.Ordinal));

        Assert.All(cover.Pieces, piece => Assert.Equal(piece.Role == CoverRole.Roof ? 2 : 1, piece.Count));
    }

    [Fact]
    public void The_end_bow_channel_runs_from_hip_board_to_hip_board_with_a_wire_for_each_sheet()
    {
        (Tunnel tunnel, Answers answers) = CoverSamples.Lay(CoverSamples.RollUp);
        CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;

        FasteningRun run = cover.Run("front-bow-channel");
        // Upright legs: 4 ft of film line under each hip board.
        Assert.Equal(tunnel.Bow.FilmLine.Length.Feet - 8, run.Length.Feet, 6);
        Assert.Equal((FasteningKind.Channel, false, 2), (run.Kind, run.OnWood, run.Wires));
        Assert.Equal(["front-end-film", "roof-film"], run.PieceIds);
        Assert.Equal(1, cover.Run("front-left-leg-channel").Wires);
        Assert.Equal(["bow-01-1"], cover.Run("front-left-leg-channel").OnMemberIds);
        Assert.Equal(["bow-01-2"], cover.Run("front-right-leg-channel").OnMemberIds);
        Assert.Equal(["left-hip-board"], cover.Run("left-hip-channel").OnMemberIds);
    }

    [Fact]
    public void Every_run_lies_on_members_that_exist_and_holds_pieces_that_exist()
    {
        foreach (string json in (string[])[CoverSamples.RollUp, CoverSamples.Fixed, CoverSamples.Leaflet404])
        {
            (Tunnel tunnel, Answers answers) = CoverSamples.Lay(json);
            CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;
            HashSet<string> members = [.. tunnel.Members.Select(member => member.Id)], pieces = [.. cover.Pieces.Select(piece => piece.Id)];

            Assert.Equal(cover.Runs.Length, cover.Runs.Select(run => run.Id).Distinct().Count());
            Assert.All(cover.Runs, run =>
            {
                Assert.NotEmpty(run.OnMemberIds);
                Assert.All(run.OnMemberIds, id => Assert.Contains(id, members));
                Assert.All(run.PieceIds, id => Assert.Contains(id, pieces));
                Assert.True(run.Length > Length.Zero);
            });
            // No piece of film hangs loose.
            Assert.All(pieces, id => Assert.Contains(cover.Runs, run => run.PieceIds.Contains(id)));
        }
    }

    [Fact]
    public void Battens_run_up_both_sides_of_a_door_and_along_its_header()
    {
        CoverPlan cover = CoverSamples.Cover(CoverSamples.RollUp);

        // A rough opening 8 ft and two jambs of 1-1/2 in wide; 7 ft and a 2x8 or 2x10 header high.
        Assert.Equal(8.25, cover.Run("front-door-1-header-batten").Length.Feet, 6);
        Assert.Equal(cover.Run("front-door-1-left-batten").Length, cover.Run("front-door-1-right-batten").Length);
        Assert.InRange(cover.Run("front-door-1-left-batten").Length.Feet, 7.5, 8);
    }

    [Fact]
    public void Battens_on_the_end_bows_are_warned_of()
    {
        CoverOutcome outcome = CoverSamples.Outcome(CoverSamples.Fixed.Replace("\"frame\"", "\"cover\": { \"endsOnBow\": false }, \"frame\"", StringComparison.Ordinal));

        Assert.DoesNotContain(outcome.Plan.Runs, run => run.Kind == FasteningKind.Channel);
        Assert.Contains(outcome.Diagnostics, diagnostic => diagnostic.Code == "cover.batten-on-tube");
        Assert.Equal(0, outcome.Plan.TemporaryWires);
    }

    [Theory]
    [InlineData("\"roofSideAllowance\": \"6 in\"", "cover.side-allowance.short")]
    [InlineData("\"roofEndAllowance\": \"2 in\"", "cover.end-allowance.short")]
    public void Short_allowances_are_warned_of(string field, string code) =>
        Assert.Contains(
            CoverSamples.Outcome(CoverSamples.Fixed.Replace("\"frame\"", $$"""
                "cover": { {{field}} }, "frame"
                """, StringComparison.Ordinal)).Diagnostics,
            diagnostic => diagnostic.Code == code && diagnostic.Severity == Severity.Warning);

    [Fact]
    public void Plastic_bows_are_warned_of() =>
        Assert.Contains(CoverSamples.Outcome(CoverSamples.Leaflet404).Diagnostics, diagnostic => diagnostic.Code == "cover.film-on-pvc");

    // Common practice, no source.
    [Fact]
    public void Four_ropes_10_ft_longer_than_the_sheet_is_wide_pull_a_75_ft_sheet()
    {
        CoverPlan cover = CoverSamples.Cover(CoverSamples.RollUp);

        Assert.Equal(4, cover.Ropes.Count);
        Assert.Equal(cover.Piece("roof-film").AcrossRoll.Feet + 10, cover.Ropes.Length.Feet, 9);
        Assert.Equal([9.375, 28.125, 46.875, 65.625], cover.Ropes.Marks.Select(mark => Math.Round(mark.Feet, 6)));
    }

    [Fact]
    public void Tape_lies_on_every_bow_from_edge_to_edge_and_a_foot_of_it_over_each_sharp_point()
    {
        (Tunnel tunnel, Answers answers) = CoverSamples.Lay(CoverSamples.Fixed);
        int posts = tunnel.Members.Count(member => member.Role == MemberRole.EndPost);
        int tubes = tunnel.Members.Count(member => member.Role is MemberRole.RidgePurlin or MemberRole.Purlin);

        // Seven bows, 4 ft apart over 24 ft, each half a circle of 7 ft.
        Assert.Equal((7 * Math.PI * 7) + posts + (2 * tubes), CoverPlanner.Plan(tunnel, answers).Plan.BowTape.Feet, 5);
        Assert.True(posts > 0 && tubes > 0);
    }

    [Fact]
    public void Allowances_of_the_plan_are_taken_for_curtains_leaves_ropes_and_tape()
    {
        CoverPlan usual = CoverSamples.Cover(CoverSamples.RollUp);
        CoverPlan asked = CoverSamples.Cover(CoverSamples.RollUp.Replace("\"sides\"", """
            "cover": {
              "curtainEndAllowance": "18 in", "curtainAllowance": "30 in", "leafWrap": "6 in",
              "ropeSpacing": "18 ft", "ropeAllowance": "12 ft", "tapePerPoint": "0 in"
            }, "sides"
            """, StringComparison.Ordinal));

        Assert.Equal(75, asked.Piece("left-curtain-film").AlongRoll.Feet, 9);
        Assert.Equal(6, (asked.Piece("left-curtain-film").AcrossRoll - usual.Piece("left-curtain-film").AcrossRoll).Inches, 6);
        Assert.Equal(4, (asked.Piece("front-door-1-leaf-1-film").AcrossRoll - usual.Piece("front-door-1-leaf-1-film").AcrossRoll).Inches, 6);
        Assert.Equal(5, asked.Ropes.Count);
        Assert.Equal(2, (asked.Ropes.Length - usual.Ropes.Length).Feet, 6);
        Assert.True(asked.BowTape < usual.BowTape);
    }

    [Fact]
    public void Every_allowance_in_a_piece_names_the_field_that_changes_it()
    {
        string[] named = [.. CoverSamples.Cover(CoverSamples.RollUp).Pieces
            .SelectMany(piece => piece.AlongParts.Concat(piece.AcrossParts)).Select(part => part.RulePath).OfType<string>().Distinct()];

        Assert.Equal(
            [
                "cover.roofEndAllowance", "cover.roofSideAllowance", "cover.endBelow", "cover.endAbove", "cover.endWorking", "cover.endSide",
                "cover.curtainEndAllowance", "cover.curtainAllowance", "cover.leafWrap",
            ],
            named);
    }

    [Fact]
    public void Fixed_sides_are_held_in_channel_when_so_asked()
    {
        CoverPlan cover = CoverSamples.Cover(CoverSamples.Fixed.Replace("\"frame\"", "\"cover\": { \"sidesInChannel\": true }, \"frame\"", StringComparison.Ordinal));

        FasteningRun run = cover.Run("left-side-channel");
        Assert.Equal((FasteningKind.Channel, true, 1), (run.Kind, run.OnWood, run.Wires));
        Assert.Equal(24, run.Length.Feet, 1);
        Assert.DoesNotContain(cover.Runs, other => other.Id == "left-side-batten");
    }

    [Fact]
    public void The_roof_covered_first_needs_no_wire_for_the_time_being() =>
        Assert.Equal(0, CoverSamples.Cover(CoverSamples.RollUp.Replace("\"sides\"", "\"cover\": { \"order\": \"roofFirst\" }, \"sides\"", StringComparison.Ordinal)).TemporaryWires);

    [Fact]
    public void Layers_thickness_and_order_are_assumptions_to_confirm()
    {
        (Tunnel tunnel, Answers answers) = CoverSamples.Lay(CoverSamples.Fixed);
        CoverPlanner.Plan(tunnel, answers);

        string[] assumed = [.. answers.Assumptions.Select(assumption => assumption.Path)];
        Assert.Contains("cover.layers", assumed);
        Assert.Contains("cover.thickness", assumed);
        Assert.Contains("cover.order", assumed);
    }

    [Fact]
    public void Film_never_shrinks_when_span_peak_or_length_alone_grows() =>
        Gen.Select(Gen.Double[14, 40], Gen.Double[20, 150], Gen.Double[0, 1], Gen.Double[0.5, 6], Gen.Int[0, 2], Gen.Bool).Sample((span, length, rise, more, which, curtains) =>
        {
            // A round bow's shoulders narrow with its peak; between a third and a half of the span both stay in range.
            double peak = (span / 3) + (rise * span / 8), grownPeak = Math.Min(peak + more, span / 2);
            CoverPlan one = CoverOf(span, length, peak, curtains);
            CoverPlan other = which switch
            {
                0 => CoverOf(span + Math.Min(more, 2 * ((peak * 3) - span)), length, peak, curtains),
                1 => CoverOf(span, length + more, peak, curtains),
                _ => CoverOf(span, length, grownPeak, curtains),
            };
            return CutArea(other) >= CutArea(one) - 1e-9;
        });

    [Fact]
    public void Every_tunnel_gets_a_whole_cover_and_every_piece_is_cut_or_named() =>
        AnyPlan.Sample(plan =>
        {
            var answers = new Answers(UnitSystem.Metric);
            if (TunnelPlanner.LayOut(plan, answers).Tunnel is not { } tunnel) return;
            CoverPlan cover = CoverPlanner.Plan(tunnel, answers).Plan;
            Assert.All(cover.Pieces, piece =>
            {
                Assert.True(double.IsFinite(piece.FinishedArea.SquareMetres) && piece.FinishedArea > Area.Zero);
                Assert.True(piece.FinishedArea.SquareMetres <= (piece.AcrossRoll * piece.AlongRoll).SquareMetres + 1e-6, piece.Id);
            });
            Assert.All(cover.Runs, run => Assert.True(double.IsFinite(run.Length.Metres) && run.Length > Length.Zero, run.Id));
            Assert.True(cover.BowTape > Length.Zero);
            FilmCutPlan cut = FilmCutter.Cut(cover, plan, answers).Plan;
            Assert.Equal(
                cover.Pieces.Select(piece => piece.Id).Order(StringComparer.Ordinal),
                cut.Rolls.SelectMany(roll => roll.Levels).SelectMany(level => level.Pieces).Select(piece => piece.PieceId)
                    .Concat(cut.UnplacedIds).Distinct().Order(StringComparer.Ordinal));
        }, iter: 300);

    private static readonly Gen<Plan> AnyPlan =
        from shape in Gen.Enum<BowKind>()
        from span in Gen.Double[6, 60]
        from length in Gen.Double[8, 300]
        from side in Gen.Double[0, 6]
        from rise in Gen.Double[0.3, 0.6]
        from sides in Gen.Enum<SideKind>()
        from closing in Gen.Enum<EndClosing>()
        from kind in Gen.Enum<DoorKind>()
        from doors in Gen.Int[0, 2]
        from layers in Gen.Int[1, 2]
        from allowance in Gen.Double[0, 20]
        select new Plan
        {
            Frame = new Frame
            {
                Span = Feet(span),
                Length = Feet(length),
                Bow = shape == BowKind.Offsets
                    ? new Bow
                    {
                        Shape = shape,
                        Offsets = [.. Enumerable.Range(0, 9).Select(index => new BowOffset
                        {
                            Across = Feet(span * index / 8),
                            Height = Feet(span * rise * Math.Sqrt(Math.Sin(Math.PI * index / 8))),
                        })],
                    }
                    : new Bow { Shape = shape, SideHeight = Feet(side), PeakHeight = Feet(side + (span * rise)) },
            },
            Ends = new Ends
            {
                Front = new End { Closing = closing, Doors = closing == EndClosing.Framed ? [.. Enumerable.Range(1, doors).Select(door => new Door { Kind = kind, Centre = Feet(span * door / (doors + 1)) })] : [] },
                Back = new End(),
            },
            Sides = new Sides { Left = new Side { Kind = sides } },
            Cover = new Plans.Cover { Layers = layers, EndAbove = Feet(allowance), EndSide = Feet(allowance), EndWorking = Feet(allowance) },
        };

    private static double CutArea(CoverPlan cover) =>
        cover.Pieces.Where(piece => piece.Role is CoverRole.Roof or CoverRole.End).Sum(piece => piece.Count * (piece.AcrossRoll * piece.AlongRoll).SquareMetres);

    private static CoverPlan CoverOf(double spanFt, double lengthFt, double peakFt, bool fixedSides)
    {
        var plan = new Plan
        {
            Frame = new Frame
            {
                Span = Feet(spanFt),
                Length = Feet(lengthFt),
                Bow = new Bow { Shape = BowKind.Round, SideHeight = Feet(0), PeakHeight = Feet(peakFt) },
            },
            Sides = new Sides { Left = new Side { Kind = fixedSides ? SideKind.Fixed : SideKind.RollUp, HipHeight = Feet(3) } },
        };
        (Tunnel tunnel, Answers answers) = CoverSamples.Lay(plan);
        return CoverPlanner.Plan(tunnel, answers).Plan;
    }

    private static Written<Length> Feet(double feet) => new(FormattableString.Invariant($"{feet} ft"), Length.FromFeet(feet));
}
