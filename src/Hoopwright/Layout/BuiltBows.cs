using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// The bows as they stand. What was not measured at a bow is taken from those that were: span and height change evenly from one
/// measured bow to the next and stay beyond the last; a length over the outside is off by as much as the middle one of the
/// measured bows is, since bows of one tunnel come from one bender. The bow that the tunnel is worked out with is as wide, as
/// high and as long as the widest, highest and longest of them, so that film covers and loads are not taken too small; each end has its own.
/// </summary>
internal sealed record BuiltBows
{
    /// <summary>The bow that is worked with between the ends.</summary>
    public required BowShape Working { get; init; }

    /// <summary>The front end's bow.</summary>
    public required BowShape Front { get; init; }

    /// <summary>The back end's bow.</summary>
    public required BowShape Back { get; init; }

    /// <summary>The bows of a tunnel of which something was measured.</summary>
    /// <param name="planned">What a bow is asked to be by the plan.</param>
    /// <param name="shape">The bow as planned.</param>
    /// <param name="built">What was measured.</param>
    /// <param name="units">The units in which diagnostics speak.</param>
    /// <param name="found">Takes what does not go together.</param>
    public static BuiltBows Of(BowRequest planned, BowShape shape, BuiltSizes built, UnitSystem units, List<Diagnostic> found)
    {
        int bows = built.Planned.Stations.Length;
        BowSizes[] sizes = Sizes(shape, built, bows);
        bool lengths = Any(MeasureNames.BowLength), heights = Any(MeasureNames.BowHeight);
        if (!lengths && !heights && sizes.All(size => size.Span == shape.Span)) return new BuiltBows { Working = shape, Front = shape, Back = shape };

        var fit = new BowFit(planned, shape, units);
        BowShape working = Fit("bow", new(sizes.Max(size => size.Span), sizes.Max(size => size.OverOutside), sizes.Max(size => size.Height)));
        return new BuiltBows { Working = working, Front = Fit("bow-01", sizes[0]), Back = Fit(FormattableString.Invariant($"bow-{bows:00}"), sizes[^1]) };

        bool Any(Func<int, string> name) => Enumerable.Range(1, bows).Any(bow => built.Of(name(bow)) is not null);

        BowShape Fit(string bow, BowSizes size)
        {
            if (fit.To(size.Span, lengths || !heights ? size.OverOutside : null, heights ? size.Height : null) is { } fitted) return fitted;
            // Film must reach: the length counts for more than the height.
            if (heights && fit.To(size.Span, size.OverOutside, null) is { } byLength)
            {
                found.Add(new Diagnostic("site-book.height-does-not-fit", Severity.Warning, "siteBook",
                    "No bow of this shape has the measured span, length and height together; the length was kept and the height worked out.",
                    $"{bow}: {TapeText.Of(size.Height, units)} high", $"{TapeText.Of(byLength.PeakHeight, units)}, or measure span, length and height again"));
                return byLength;
            }
            found.Add(new Diagnostic("site-book.bow-does-not-fit", Severity.Warning, "siteBook",
                "No bow of this shape has the measured span and length; the bow as planned stands in.",
                $"{bow}: {TapeText.Of(size.Span, units)} wide, {TapeText.Of(size.OverOutside, units)} over the outside", "measure span and length again, or plan the shape that stands there"));
            return shape;
        }
    }

    /// <summary>What each bow is taken to be, measured or not.</summary>
    internal static BowSizes[] Sizes(BowShape shape, BuiltSizes built, int bows)
    {
        Length filmLine = shape.FilmLine.Length, peak = shape.PeakHeight;
        Length?[] spans = [.. Enumerable.Range(1, bows).Select(bow => built.Of(MeasureNames.BowSpan(bow)))];
        // The end strings run along the outside of the posts at the two end bows.
        spans[0] ??= built.Of(MeasureNames.Square("front"));
        spans[^1] ??= built.Of(MeasureNames.Square("back"));
        Length[] wide = Between([.. spans.Select(span => span - shape.Span)]);
        Length?[] lengths = [.. Enumerable.Range(1, bows).Select(bow => built.Of(MeasureNames.BowLength(bow)))];
        Length usual = Middle([.. lengths.OfType<Length>().Select(length => length - filmLine)]);
        Length[] high = Between([.. Enumerable.Range(1, bows).Select(bow => built.Of(MeasureNames.BowHeight(bow)) - peak)]);
        return [.. Enumerable.Range(0, bows).Select(bow => new BowSizes(spans[bow] ?? shape.Span + wide[bow], lengths[bow] ?? filmLine + usual, peak + high[bow]))];
    }

    /// <summary>Known differences carried evenly from one known place to the next, and on as they are beyond the outermost.</summary>
    internal static Length[] Between(Length?[] known)
    {
        var all = new Length[known.Length];
        int before = -1;
        for (int place = 0; place < known.Length; place++)
        {
            if (known[place] is not { } here) continue;
            for (int gap = before + 1; gap < place; gap++)
            {
                all[gap] = before < 0 ? here : all[before] + ((here - all[before]) * (gap - before) / (place - before));
            }
            all[place] = here;
            before = place;
        }
        for (int beyond = before + 1; before >= 0 && beyond < known.Length; beyond++) all[beyond] = all[before];
        return all;
    }

    /// <summary>The middle one of some; of an even number the longer of the two in the middle, so that film is not cut too short.</summary>
    private static Length Middle(ImmutableArray<Length> values) => values.IsEmpty ? Length.Zero : values.Sort()[values.Length / 2];
}

/// <summary>What one bow is taken to be.</summary>
/// <param name="Span">Width at the ground line, outside to outside.</param>
/// <param name="OverOutside">Length over the outside.</param>
/// <param name="Height">Height of the outside at the middle.</param>
internal readonly record struct BowSizes(Length Span, Length OverOutside, Length Height);
