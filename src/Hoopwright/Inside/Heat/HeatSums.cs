namespace Hoopwright.Inside.Heat;

/// <summary>What crossed the boundary of a tunnel over its hours and what it keeps, Wh/m² of floor.</summary>
internal sealed class HeatSums
{
    private double _stored;

    internal double Sun { get; private set; }

    internal double Heater { get; private set; }

    /// <summary>By rays to and from the sky.</summary>
    internal double Sky { get; private set; }

    /// <summary>By the air along the film outside.</summary>
    internal double OutsideAir { get; private set; }

    /// <summary>With air that passed, as warmth.</summary>
    internal double PassedAir { get; private set; }

    /// <summary>With air that passed, as vapour.</summary>
    internal double PassedVapour { get; private set; }

    /// <summary>Down into the deep ground.</summary>
    internal double Deep { get; private set; }

    /// <summary>What is left over, as a part of all that crossed: how well the balance closes.</summary>
    internal double Left => Math.Abs(Sun + Heater + Sky + OutsideAir + PassedAir + PassedVapour - Deep - _stored) / Size;

    private double Size { get; set; }

    internal void Add(HeatBalance balance, double sun, double deep, double storedInGround)
    {
        Sun += sun;
        Heater += balance.HeaterWPerM2;
        Sky += balance.SkyWPerM2;
        OutsideAir += balance.OutsideAirWPerM2;
        PassedAir += balance.PassedAirWPerM2;
        PassedVapour += balance.PassedVapourWPerM2;
        Deep += deep;
        _stored += balance.IntoAirWPerM2 + storedInGround;
        Size += sun + balance.HeaterWPerM2 + Math.Abs(balance.SkyWPerM2) + Math.Abs(balance.OutsideAirWPerM2) + Math.Abs(balance.PassedAirWPerM2) + Math.Abs(balance.PassedVapourWPerM2);
    }
}
