using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.Days;
using Hoopwright.Diagnostics;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sources;

namespace Hoopwright.CoverSteps;

/// <summary>How many people a roof sheet takes.</summary>
internal sealed class CrewSize(Tunnel tunnel, CoverPlan cover, CoverDayNeeds day)
{
    /// <summary>People beside those on the ropes: two on the roll side feed the film and look for snags.</summary>
    internal const int Feeders = 2;

    // From memory: a flat plate square to the wind; air at sea level.
    private const double DragFactor = 1.2, AirKgM3 = 1.225;

    private Mass OneCarries => tunnel.Units switch { UnitSystem.UsCustomary => Mass.FromPounds(35), UnitSystem.Metric => Mass.FromKilograms(16) };

    private Force OneHolds => PullPlanner.OneHandIn(tunnel.Units);

    private IEnumerable<Speed> Winds => tunnel.Units switch
    {
        UnitSystem.UsCustomary => ((double[])[3, 5, 8, 10, 13, 15]).Select(Speed.FromMilesPerHour),
        UnitSystem.Metric => ((double[])[1, 3, 6, 7]).Select(Speed.FromMetresPerSecond),
    };

    internal static readonly Formula Drag = new("F", "cd·½·ρ·v²·(length of the sheet)·(height of the bows), cd = 1.2, ρ = 1.225 kg/m³", "N", new("fluid mechanics, any handbook", "drag of a flat plate", Standing.FromMemory));

    /// <summary>The roof sheet.</summary>
    internal CoverPiece Roof { get; } = cover.Pieces.First(piece => piece.Role == CoverRole.Roof);

    /// <summary>Mass of all its layers.</summary>
    internal Mass Weight => Mass.FromKilograms(OneLayer.Kilograms * Roof.Count);

    private Mass OneLayer => Mass.FromKilograms(Roof.AlongRoll.Metres * Roof.AcrossRoll.Metres * cover.Thickness.Metres * FilmMaterial.KgM3);

    /// <summary>What a wind pulls at a sheet that stands in it as high as the bows.</summary>
    internal Force Pull(Speed wind) => Force.FromNewtons(DragFactor * AirKgM3 / 2 * wind.MetresPerSecond * wind.MetresPerSecond * Roof.AlongRoll.Metres * tunnel.Bow.PeakHeight.Metres);

    /// <summary>Reasons, each with its number.</summary>
    internal ImmutableArray<CrewRule> Rules =>
    [
        new("ropes", Phrase.Of("One person on each of {0} ropes, and {1} on the roll side who feed the film and look for snags.", Text(cover.Ropes.Count), Text(Feeders)), cover.Ropes.Count + Feeders, Citation.CommonPractice),
        new("carry", Phrase.Of("A layer of the roof film weighs {0}; one person carries {1}.", TapeText.Of(OneLayer, tunnel.Units), TapeText.Of(OneCarries, tunnel.Units)), Carry, Citation.CommonPractice),
        new("wind", Phrase.Of("Wind of {0} pulls {1} at a sheet that stands in it as high as the bows; one person holds {2}.", TapeText.Of(day.Wind, tunnel.Units), TapeText.Of(Pull(day.Wind), tunnel.Units), TapeText.Of(OneHolds, tunnel.Units)), Hold(day.Wind), Drag.Source),
    ];

    /// <summary>People in a wind: on ropes and roll, to carry, and to hold.</summary>
    internal int In(Speed wind) => Math.Max(cover.Ropes.Count + Feeders, Math.Max(Carry, Hold(wind)));

    /// <summary>Winds that people can picture, and both limits of the plan.</summary>
    internal ImmutableArray<CrewInWind> InWinds =>
    [
        .. Winds.Append(day.Wind).Append(day.Gust).DistinctBy(wind => Math.Round(wind.MetresPerSecond, 6)).OrderBy(wind => wind.MetresPerSecond)
            .Select(wind => new CrewInWind(wind, Pull(wind), In(wind), wind.MetresPerSecond <= day.Gust.MetresPerSecond + 1e-9)),
    ];

    /// <summary>People to carry a layer.</summary>
    internal int Carry => Whole(OneLayer.Kilograms / OneCarries.Kilograms);

    private int Hold(Speed wind) => Whole(Pull(wind) / OneHolds);

    private static int Whole(double number) => (int)Math.Ceiling(Math.Round(number, 6));

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
