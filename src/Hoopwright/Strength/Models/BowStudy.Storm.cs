using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Strength.Loads;

namespace Hoopwright.Strength.Models;

/// <content>What the bows stand of a storm: the load once, reduced strength, state by state.</content>
internal sealed partial class BowStudy
{
    private BowStudy(BowStudy study, TunnelLoads loads)
    {
        (_tunnel, _steel, _feet, _row, _places, _taken, _weak, _strong, _ends) = (study._tunnel, study._steel, study._feet, study._row, study._places, study._taken, study._weak, study._strong, study._ends);
        _loads = loads;
        _cases = new BowCases(loads);
    }

    /// <summary>The same bows under the same cases, of which others count and are taken together otherwise.</summary>
    /// <param name="loads">Loads with the same cases in the same order.</param>
    internal BowStudy Under(TunnelLoads loads) => new(this, loads);

    /// <summary>The cases of a state.</summary>
    internal static IEnumerable<LoadCase> CasesOf(StormState state, TunnelLoads loads) => state switch
    {
        StormState.SnowEven => loads.Cases.Where(load => load.Kind == LoadKind.Snow && (load.Code.StartsWith("snow-balanced", StringComparison.Ordinal) || load.Code.StartsWith("snow-least", StringComparison.Ordinal))),
        StormState.SnowOneSide => loads.Cases.Where(load => load.Kind == LoadKind.Snow && (load.Code.StartsWith("snow-blown", StringComparison.Ordinal) || load.Code.StartsWith("snow-one-side", StringComparison.Ordinal))),
        StormState.SnowBetween => loads.Cases.Where(load => load.Kind == LoadKind.Snow && load.Code.StartsWith("snow-gap", StringComparison.Ordinal)),
        StormState.Shut => Winds(loads).Where(load => load.IsShut),
        // A state that comes to the same loads as shut is one case with it.
        StormState.Open => Winds(loads),
        StormState.BareFrame => loads.Cases.Where(load => load.Kind == LoadKind.Construction && load.Code.StartsWith("building-bare", StringComparison.Ordinal)),
    };

    /// <summary>The limit of the bows in every state that reaches one.</summary>
    internal ImmutableArray<StormLimit> StormLimits()
    {
        ImmutableArray<BowTrial> taken = On(_taken, _feet.Taken), weak = On(_taken, _feet.Least), strong = On(_taken, _feet.Most);
        return [.. Enum.GetValues<StormState>().Select(Of).OfType<StormLimit>()];

        StormLimit? Of(StormState state)
        {
            ImmutableArray<LoadedCase> cases = [.. CasesOf(state, _loads).SelectMany(_cases.Once)];
            if (cases.IsEmpty) return null;
            bool isSnow = state is StormState.SnowEven or StormState.SnowOneSide or StormState.SnowBetween;
            double mostPa = isSnow ? MostSnowPa : MostWindPa;
            BowLimit found = Find(taken, _steel.Grade.YieldPa);
            if (found.Case is not { } governing) return null;
            double[] pa = [found.ReferencePa, Math.Min(mostPa, Find(weak, _steel.Grade.LeastYieldPa).ReferencePa), Math.Min(mostPa, Find(strong, _steel.Grade.MostYieldPa).ReferencePa)];
            var limit = new StormLimit { State = state, CaseCode = governing.Code, CaseWords = governing.Words, Bow = found.Place, Governs = Governs(found.Verdict) };
            return isSnow
                ? limit with { GroundSnow = Snow(1), RoofSnow = Snow(_loads.Case(governing.Code).RoofSnow.Pascals) }
                : limit with { Wind = new SpeedRange(Wind(pa.Min()), Wind(pa[0]), Wind(pa.Max())) };

            BowLimit Find(ImmutableArray<BowTrial> bows, double yieldPa) => LimitFinder.Find(bows, cases, mostPa, DesignMethod.Lrfd, _steel, _steel.Grade.WithYield(yieldPa));
            PressureRange Snow(double times) => new(Pa(times * pa.Min()), Pa(times * pa[0]), Pa(times * pa.Max()));
            // The cases of building carry the square of the part of the wind that is counted meanwhile.
            Speed Wind(double referencePa) => _loads.WindOf(Pa(referencePa)) * (state == StormState.BareFrame ? BuildingWind : 1);
        }
    }

    private double BuildingWind => (_tunnel.Plan.Loads.BuildingWind?.Value ?? LoadDefaults.BuildingWind.Value).Value;

    private static IEnumerable<LoadCase> Winds(TunnelLoads loads) => loads.Cases.Where(load => load is { Kind: LoadKind.Wind, Scale: LoadScale.WindSpeedSquared });
}
