using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Plans;
using Hoopwright.Strength.Loads;
using Hoopwright.Strength.Models;
using Hoopwright.Strength.Steel;

namespace Hoopwright.Strength.Parts;

/// <summary>Puts posts and film beside the bows, and joins the verdicts.</summary>
internal static class TunnelParts
{
    /// <summary>A report on the bows with the other parts in it.</summary>
    /// <param name="bows">The report on the bows, with snow or wind entered.</param>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="feet">What the feet put on their posts.</param>
    /// <param name="parts">The other parts.</param>
    internal static StrengthReport Join(StrengthReport bows, Tunnel tunnel, ImmutableArray<FootLoad> feet, ImmutableArray<PartStrength> parts)
    {
        StrengthVerdict verdict = parts.Select(part => part.Verdict).Aggregate(bows.Verdict, Worse);
        return bows with
        {
            Parts = parts,
            FootLoads = FootPeaks.Of(tunnel, feet),
            Verdict = verdict,
            Says = VerdictSentence.Of(verdict, bows.Verdict, bows.FrameParts, parts, bows.Loads),
            Diagnostics = [.. bows.Diagnostics, .. parts.Where(part => part.Verdict != StrengthVerdict.Stands).Select(Told)],
        };
    }

    /// <summary>Posts and film beside the bows.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="loads">What snow and wind put on it.</param>
    /// <param name="study">The bows; with snow or wind entered.</param>
    /// <param name="feet">What feet as stiff as they were taken put on their posts.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    internal static ImmutableArray<PartStrength> Of(Tunnel tunnel, TunnelLoads loads, BowStudy study, ImmutableArray<FootLoad> feet, Answers answers)
    {
        var ground = SiteGround.Of(tunnel, answers);
        ImmutableArray<LoadCombination> combinations = study.Cases.ForGround();
        SteelGrade? posts = tunnel.GroundPosts.IsEmpty ? null : StrengthPlanner.GradeOf(tunnel.Plan.Ground.PostTube, "ground.postTube.yield", "Yield stress of the ground posts' steel; the seller states it.", answers);
        (EndWall End, EndWood Wood, EndWind Wind)[] ends =
        [
            .. from end in tunnel.Ends
               where !end.Posts.IsEmpty
               let wood = EndWood.Of(tunnel, end, answers)
               let wind = EndWind.Of(end, loads, combinations)
               where wind is not null
               select (end, wood, wind),
        ];
        FilmLift? lift = FilmLift.Of(tunnel, loads, combinations);
        var cold = ColdFilm.Of(loads, combinations);
        return
        [
            .. GroundPostParts.Of(tunnel, ground, feet, study.FootLoads(softest: true), study.Cases.GroundMethod, posts),
            .. ends.SelectMany(each => EndPostParts.Of(tunnel, each.End, each.Wood, ground, each.Wind).Concat(EndBoardParts.Of(tunnel, each.End, each.Wood, each.Wind))),
            .. lift is null ? [] : new[] { FilmPart.Of(tunnel, lift) },
            .. cold is null ? [] : new[] { cold.Part(tunnel) },
            .. FastenerParts.Of(tunnel, lift, cold, ends, study.Steel, study.Cases.GroundMethod, answers),
        ];
    }

    /// <summary>The posts of the ends as they stand in the row.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="posts">What they carry there.</param>
    /// <param name="answers">Collects every answer and default used.</param>
    internal static IEnumerable<PartStrength> InRow(Tunnel tunnel, ImmutableArray<RowPostForce> posts, Answers answers)
    {
        var ground = SiteGround.Of(tunnel, answers);
        return tunnel.Ends.Where(end => !end.Posts.IsEmpty).SelectMany(end => EndPostRowParts.Of(tunnel, end, EndWood.Of(tunnel, end, answers), ground, posts));
    }

    private static StrengthVerdict Worse(StrengthVerdict one, StrengthVerdict other) => (one, other) switch
    {
        (StrengthVerdict.DoesNotStand, _) or (_, StrengthVerdict.DoesNotStand) => StrengthVerdict.DoesNotStand,
        (StrengthVerdict.Marginal, _) or (_, StrengthVerdict.Marginal) => StrengthVerdict.Marginal,
        _ => one,
    };

    private static Diagnostic Told(PartStrength part)
    {
        bool fails = part.Verdict == StrengthVerdict.DoesNotStand;
        string sentence = fails
            ? $"On these assumptions this does not stand the entered loads: {part.Words} ({part.Governs})."
            : $"This is marginal under the entered loads, past its limit at the lower end of what is known: {part.Words} ({part.Governs}).";
        string seen = $"{UsedWords.Of(part)} of what is allowed, {part.Where}, under {part.LoadWords}";
        const string DeeperPosts = "deeper posts, concrete, closer bows, a soil test or a pull test on site";
        const string MorePosts = "more or larger posts, deeper feet, or wood of a known kind and grade";
        const string Boards = "another row of girts, closer posts, thicker boards, or wood of a known kind and grade";
        const string Closer = "screws or nails closer together, longer ones, or ropes over the film";
        const string Film = "thicker film, ropes over it, or taking it off before such a storm";
        (string code, string path, string would) = part.Kind switch
        {
            PartKind.GroundPost => fails ? ("strength.post.does-not-stand", "ground", DeeperPosts) : ("strength.post.marginal", "ground", DeeperPosts),
            PartKind.EndPost => fails ? ("strength.end-post.does-not-stand", "ends", MorePosts) : ("strength.end-post.marginal", "ends", MorePosts),
            PartKind.EndBoard => fails ? ("strength.end-board.does-not-stand", "ends", Boards) : ("strength.end-board.marginal", "ends", Boards),
            PartKind.Fastener => fails ? ("strength.fastener.does-not-stand", "cover", Closer) : ("strength.fastener.marginal", "cover", Closer),
            PartKind.Film => fails ? ("strength.film.does-not-stand", "cover", Film) : ("strength.film.marginal", "cover", Film),
        };
        return new Diagnostic(code, Severity.Warning, path, sentence, seen, would);
    }
}
