namespace Hoopwright.Inside.Heat;

/// <summary>
/// The ground under the tunnel in layers that thicken downwards, a step of an hour at a time. Before the step it says what it asks of its surface, as if it were a
/// conductance to one temperature; after it the layers take up the temperature that the surface got.
/// </summary>
internal sealed class SoilColumn
{
    // Moist loam, W/mK and J/m³K; from memory.
    internal const double ConductivityWPerMK = 1.0, HeatJPerM3K = 2.2e6;

    /// <summary>Depth at which the ground keeps the mean of the year, m; from memory.</summary>
    internal const double DeepM = 3;

    private static readonly double[] ThicknessM = [0.02, 0.04, 0.08, 0.16, 0.32, 0.64];

    private readonly double[] _temperatureK, _capacity, _down, _diagonal, _right;
    private readonly double _top, _share;
    private readonly double _deepK;

    internal SoilColumn(double startK, double deepK, double stepS = 3600)
    {
        int layers = ThicknessM.Length;
        _deepK = deepK;
        (_temperatureK, _capacity, _down, _diagonal, _right) = (new double[layers], new double[layers], new double[layers], new double[layers], new double[layers]);
        double depth = ThicknessM.Sum(), middle = 0;
        for (int layer = 0; layer < layers; layer++)
        {
            // From the surface to the deep ground in a straight line.
            middle += ThicknessM[layer] / 2;
            _temperatureK[layer] = startK + ((deepK - startK) * middle / DeepM);
            middle += ThicknessM[layer] / 2;
            _capacity[layer] = HeatJPerM3K * ThicknessM[layer] / stepS;
            double to = layer + 1 < layers ? (ThicknessM[layer] + ThicknessM[layer + 1]) / 2 : (ThicknessM[layer] / 2) + DeepM - depth;
            _down[layer] = ConductivityWPerMK / to;
        }
        _top = ConductivityWPerMK / (ThicknessM[0] / 2);
        // Eliminated from the bottom up: the diagonal does not change from step to step.
        for (int layer = layers - 1; layer >= 0; layer--)
        {
            _diagonal[layer] = _capacity[layer] + _down[layer] + (layer == 0 ? _top : _down[layer - 1]);
            if (layer + 1 < layers) _diagonal[layer] -= _down[layer] * _down[layer] / _diagonal[layer + 1];
        }
        _share = _top / _diagonal[0];
        ConductanceWPerM2K = _top * (1 - _share);
    }

    /// <summary>What the surface gives off, over how much warmer it is than <see cref="AskedK"/>.</summary>
    internal double ConductanceWPerM2K { get; }

    /// <summary>The temperature that the ground would bring its surface to in this step by itself, K.</summary>
    internal double AskedK { get; private set; }

    /// <summary>Heat in the layers over 0 K, in W for one step over m².</summary>
    internal double Stored => _temperatureK.Zip(_capacity).Sum(layer => layer.First * layer.Second);

    /// <summary>Heat lost downwards from the lowest layer in the last step, W/m².</summary>
    internal double LostDownWPerM2 { get; private set; }

    internal void Begin()
    {
        int layers = _temperatureK.Length;
        for (int layer = layers - 1; layer >= 0; layer--)
        {
            _right[layer] = _capacity[layer] * _temperatureK[layer];
            if (layer == layers - 1) _right[layer] += _down[layer] * _deepK;
            else _right[layer] += _down[layer] / _diagonal[layer + 1] * _right[layer + 1];
        }
        AskedK = _right[0] / _diagonal[0] / (1 - _share);
    }

    internal void End(double surfaceK)
    {
        double above = surfaceK, conductance = _top;
        for (int layer = 0; layer < _temperatureK.Length; layer++)
        {
            _temperatureK[layer] = (_right[layer] + (conductance * above)) / _diagonal[layer];
            (above, conductance) = (_temperatureK[layer], _down[layer]);
        }
        LostDownWPerM2 = _down[^1] * (_temperatureK[^1] - _deepK);
    }
}
