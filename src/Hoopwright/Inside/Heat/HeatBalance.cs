using Hoopwright.Inside.Air;
using Hoopwright.Sources;

namespace Hoopwright.Inside.Heat;

/// <summary>
/// Temperatures of ground, air and film at which, over an hour, each gains what it loses: sun, sky, warmth between them, air that passes, water that evaporates and
/// condenses. Solved by Newton's method with all derivatives; what a row cover parts off has its own air.
/// </summary>
internal sealed class HeatBalance
{
    internal static readonly Formula OutsideRule = new("h", "0.95 + 6.76·u^0.49", "W/m²K", new Citation("Papadakis and others (1992), film tunnel", "wind below 6.3 m/s", Standing.FromMemory));

    internal static readonly Formula InsideRule = new("h", "1.95·ΔT^0.3 at the film, 1.86·ΔT^0.33 at the ground", "W/m²K", new Citation("heat transfer in greenhouses, review values", "", Standing.FromMemory));

    internal static readonly Formula WaterRule = new(
        "m", "h/cp·(w - w_s(T)) on the film, h/cp·0.3·(1 - crop)·(w_s(T) - w) from bare ground; a crop gives off 0.945·Δ/(Δ + γ) of the light it takes up", "kg/m²s",
        new Citation("likeness of heat and vapour (Lewis), moist ground; Priestley and Taylor (1972), 1.26 of the balance of rays, three quarters of the light", "", Standing.FromMemory));

    // Part of a wet surface's vapour that bare ground gives, gap between inflated films W/m²K, water in a full crop W h/m²K as a store of heat: all from memory.
    private const double GroundVapour = 0.3, InflatedWPerM2K = 2, CropStoreWhPerM2K = 2.3;

    // Film with so much water is wet all over, kg/m² of film; more drips off. From memory.
    internal const double WetFilmKgPerM2 = 0.05;

    // Air that other surfaces stir carries vapour as if by this difference at the least, K; from memory. It also keeps the balance to one solution.
    private const double StirredK = 1, StepS = 3600, LargestStepK = 15, SmallestStepK = 1e-12, SmallestLeft = 1e-9, StandsStill = 1e-7, WidestK = 200;
    private const double GroundFactor = 1.86, GroundPower = 0.33, FilmFactor = 1.95, FilmPower = 0.3;
    private const int MostSteps = 60, MostHalvings = 12, FlowHalvings = 56, Wetnesses = 10, MostNodes = 6;

    private readonly HeatHouse _house;
    private readonly WarmthExchange?[] _exchanges = new WarmthExchange?[2 * (Wetnesses + 1)];
    private readonly double[,] _system = new double[MostNodes, MostNodes + 1];
    private readonly double[] _black = new double[4], _before = new double[MostNodes], _step = new double[MostNodes];

    // Air that passes, held while its range is halved; not a number otherwise.
    private double _flowM3PerS = double.NaN;

    internal HeatBalance(HeatHouse house) => _house = house;

    /// <summary>Temperatures found: ground, under a row cover its air and itself, air, film or films from below.</summary>
    internal double[] NodesK { get; } = new double[MostNodes];

    internal double GroundK => NodesK[0];

    internal double AirK { get; private set; }

    /// <summary>Air at the crop: under the row cover where there is one.</summary>
    internal double CropAirK { get; private set; }

    /// <summary>Of the lowest film of the roof.</summary>
    internal double FilmK { get; private set; }

    /// <summary>Water in the air inside, kg/kg.</summary>
    internal double Water { get; private set; }

    /// <summary>Water that condensed on the film in the hour, less what dried off, kg/m² of floor.</summary>
    internal double CondensedKg { get; private set; }

    internal double HeaterWPerM2 { get; private set; }

    /// <summary>Air that passed, m³/s.</summary>
    internal double ExchangeM3PerS { get; private set; }

    /// <summary>What crossed the boundary in the hour, W/m² of floor: gains positive.</summary>
    internal double SkyWPerM2 { get; private set; }

    internal double OutsideAirWPerM2 { get; private set; }

    internal double PassedAirWPerM2 { get; private set; }

    internal double PassedVapourWPerM2 { get; private set; }

    internal double IntoGroundWPerM2 { get; private set; }

    internal double IntoAirWPerM2 { get; private set; }

    /// <summary>What is left over of the node with the worst balance, W/m².</summary>
    internal double LeftWPerM2 { get; private set; }

    /// <summary>Sets the temperatures from which the search begins.</summary>
    internal void Start(double kelvins)
    {
        Array.Fill(NodesK, kelvins);
        (AirK, CropAirK, FilmK) = (kelvins, kelvins, kelvins);
    }

    /// <summary>Part of the light it takes up that a watered crop turns into vapour: less in the cold. 0.70 at 25 °C, within the 0.5 to 0.7 that are usual.</summary>
    /// <param name="airK">Air, K; that of the hour before.</param>
    /// <param name="airPa">Pressure of the air, Pa.</param>
    internal static double CropVapour(double airK, double airPa)
    {
        double slope = MoistAir.Saturated(airK, airPa).PerK * MoistAir.EvaporationJPerKg / MoistAir.HeatJPerKgK;
        return 0.945 * slope / (slope + 1);
    }

    /// <summary>Heat that air and crop take up with a kelvin, W h/m²K.</summary>
    private double AirStoreWhPerM2K(double density) => (density * MoistAir.HeatJPerKgK * _house.HeightM / 3600) + (CropStoreWhPerM2K * _house.CropCover);

    /// <summary>Finds the balance of an hour.</summary>
    internal void Solve(in HeatHour hour)
    {
        int first = hour.RowCover ? 3 : 1;
        double ground = NodesK[0], under = CropAirK, cover = (CropAirK + AirK) / 2, air = AirK, film = FilmK;
        (NodesK[0], NodesK[first]) = (ground, air);
        if (hour.RowCover) (NodesK[1], NodesK[2]) = (under, cover);
        for (int layer = 0; layer < _house.Layers; layer++) NodesK[first + 1 + layer] = film;
        bool heated = false;
        Search(hour, first, heated);
        if (!double.IsNaN(hour.HeatToK) && NodesK[first] < hour.HeatToK)
        {
            heated = true;
            NodesK[first] = hour.HeatToK;
            Search(hour, first, heated);
        }
        (AirK, CropAirK, FilmK) = (NodesK[first], hour.RowCover ? NodesK[1] : NodesK[first], NodesK[first + 1]);
    }

    /// <summary>
    /// Newton's method; and where it comes to a stand, since in a calm the air that passes hangs on a difference of next to nothing, by halving the range of that air until
    /// as much passes as the warmth that it leaves behind would drive.
    /// </summary>
    private void Search(in HeatHour hour, int first, bool heated)
    {
        Newton(hour, first, heated);
        if (LeftWPerM2 < StandsStill || hour.Open is not { AreaM2: > 0 } gaps) return;
        double low = gaps.M3PerS(hour.OutsideK, hour.OutsideK, hour.WindAtOpeningsMps), high = gaps.M3PerS(hour.OutsideK + WidestK, hour.OutsideK, hour.WindAtOpeningsMps);
        for (int halving = 0; halving < FlowHalvings; halving++)
        {
            _flowM3PerS = (low + high) / 2;
            Newton(hour, first, heated);
            if (gaps.M3PerS(NodesK[first], hour.OutsideK, hour.WindAtOpeningsMps) > _flowM3PerS) low = _flowM3PerS;
            else high = _flowM3PerS;
        }
        _flowM3PerS = double.NaN;
    }

    private void Newton(in HeatHour hour, int first, bool heated)
    {
        int size = first + 1 + _house.Layers;
        WarmthExchange rays = Rays(hour);
        double squares = Evaluate(hour, first, rays, heated);
        for (int step = 0; step < MostSteps && LeftWPerM2 >= SmallestLeft; step++)
        {
            SmallSystem.Solve(_system, size, 1);
            double largest = 0;
            for (int node = 0; node < size; node++)
            {
                (_before[node], _step[node]) = (NodesK[node], _system[node, size]);
                largest = Math.Max(largest, Math.Abs(_step[node]));
            }
            // Where the balance bends (a film that begins to drip, ground that begins to dry) a shorter step finds the way.
            double part = largest > LargestStepK ? LargestStepK / largest : 1, now = 0;
            for (int halving = 0; halving <= MostHalvings; halving++, part /= 2)
            {
                for (int node = 0; node < size; node++) NodesK[node] = _before[node] + (part * _step[node]);
                now = Evaluate(hour, first, rays, heated);
                if (now < squares) break;
            }
            squares = now;
            if (largest < SmallestStepK) return;
        }
    }

    /// <summary>Assembles the balance where the nodes are; the sum of the squares of what is left over.</summary>
    private double Evaluate(in HeatHour hour, int first, WarmthExchange rays, bool heated)
    {
        Assemble(hour, first, rays);
        int size = first + 1 + _house.Layers;
        HeaterWPerM2 = 0;
        if (heated)
        {
            HeaterWPerM2 = -_system[first, size];
            for (int node = 0; node < size; node++) _system[first, node] = 0;
            (_system[first, first], _system[first, size]) = (1, 0);
        }
        double squares = 0, left = 0;
        for (int node = 0; node < size; node++)
        {
            squares += _system[node, size] * _system[node, size];
            left = Math.Max(left, Math.Abs(_system[node, size]));
        }
        LeftWPerM2 = left;
        return squares;
    }

    private WarmthExchange Rays(in HeatHour hour)
    {
        double filmArea = _house.CoverOverFloor;
        int wetness = _house.Damp ? (int)Math.Round(Wetnesses * Math.Clamp(hour.FilmWaterKg / (WetFilmKgPerM2 * filmArea), 0, 1)) : 0;
        int at = wetness + (hour.RowCover ? Wetnesses + 1 : 0);
        if (_exchanges[at] is { } known) return known;
        FilmWarmthRays lowest = _house.Film.Wetted((double)wetness / Wetnesses);
        List<FilmWarmthRays> films = hour.RowCover ? [FilmWarmthRays.RowCover, lowest] : [lowest];
        if (_house.Layers == 2) films.Add(_house.Film);
        return _exchanges[at] = new WarmthExchange([.. films]);
    }

    /// <summary>Writes the derivatives of what each node loses into the matrix, and what each gains in all into its last column.</summary>
    private void Assemble(in HeatHour hour, int first, WarmthExchange rays)
    {
        int size = first + 1 + _house.Layers, air = first, film = first + 1, outer = size - 1;
        for (int row = 0; row < size; row++)
        {
            for (int column = 0; column <= size; column++) _system[row, column] = 0;
        }
        double coverOver = _house.CoverOverFloor, latent = MoistAir.EvaporationJPerKg, heat = MoistAir.HeatJPerKgK;
        double pressure = _house.Damp ? hour.PressurePa : 101_325, density = _house.Damp ? MoistAir.DensityKgM3(pressure, hour.OutsideK) : 1.25;

        // Warmth by rays.
        bool rowCover = hour.RowCover;
        int planes = 1 + (rowCover ? 1 : 0) + _house.Layers;
        SkyWPerM2 = 0;
        for (int plane = 0; plane < planes; plane++)
        {
            double kelvins = NodesK[NodeOf(plane)];
            _black[plane] = WarmthExchange.StefanBoltzmann * kelvins * kelvins * kelvins;
        }
        for (int plane = 0; plane < planes; plane++)
        {
            int node = NodeOf(plane);
            double gain = rays.FromSky[plane] * hour.SkyWPerM2;
            for (int other = 0; other < planes; other++)
            {
                int from = NodeOf(other);
                gain += rays.Gain[plane, other] * _black[other] * NodesK[from];
                _system[node, from] -= 4 * rays.Gain[plane, other] * _black[other];
            }
            _system[node, size] += gain;
            SkyWPerM2 += gain;
        }

        // Warmth by touch.
        int low = hour.RowCover ? 1 : air;
        Touch(0, low, 1, GroundFactor, GroundPower, size);
        if (hour.RowCover)
        {
            Touch(1, 2, InsideDefaults.RowCoverAreaOverFloor, FilmFactor, FilmPower, size);
            Touch(2, air, InsideDefaults.RowCoverAreaOverFloor, FilmFactor, FilmPower, size);
            Even(1, air, InsideDefaults.RowCoverChanges * InsideDefaults.RowCoverHeightM * density * heat / 3600, size);
        }
        Touch(air, film, coverOver, FilmFactor, FilmPower, size);
        if (_house.Layers == 2) Even(film, outer, coverOver * InflatedWPerM2K, size);
        double outside = coverOver * (0.95 + (6.76 * Math.Pow(hour.WindMps, 0.49)));
        OutsideAirWPerM2 = Boundary(outer, outside, hour.OutsideK, size);
        IntoGroundWPerM2 = -Boundary(0, hour.SoilConductance, hour.SoilK, size);
        IntoAirWPerM2 = 0;
        if (!double.IsNaN(hour.AirBeforeK)) IntoAirWPerM2 = -Boundary(air, AirStoreWhPerM2K(density), hour.AirBeforeK, size);

        // Sun.
        double crop = _house.CropCover * hour.SunWPerM2, vapour = _house.Damp ? CropVapour(double.IsNaN(hour.AirBeforeK) ? hour.OutsideK : hour.AirBeforeK, pressure) * crop : 0;
        _system[0, size] += hour.SunWPerM2 - crop;
        _system[low, size] += crop - vapour;
        for (int layer = film; layer <= outer; layer++) _system[layer, size] += hour.SunOnFilmWPerM2 / _house.Layers;

        // Air that passes.
        double leak = _house.LeakPerHour * _house.HeightM / 3600, open = 0, openPerK = 0;
        if (hour.Open is { AreaM2: > 0 } gaps)
        {
            (double flow, double perK) = double.IsNaN(_flowM3PerS) ? gaps.WithSlope(NodesK[air], hour.OutsideK, hour.WindAtOpeningsMps) : (_flowM3PerS, 0);
            (open, openPerK) = (flow / _house.FloorM2, perK / _house.FloorM2);
        }
        double passed = density * (leak + open);
        ExchangeM3PerS = (leak + open) * _house.FloorM2;
        PassedAirWPerM2 = Boundary(air, passed * heat, hour.OutsideK, size);
        _system[air, air] += density * openPerK * heat * (NodesK[air] - hour.OutsideK);
        if (_house.Damp) Vapour(hour, (low, air, film, size), passed, density * openPerK, vapour / latent);

        int NodeOf(int plane) => plane == 0 ? 0 : rowCover ? (plane == 1 ? 2 : film + plane - 2) : film + plane - 1;
    }

    /// <summary>
    /// Water that ground and crop give to the air and that leaves with the air or on the film: none is stored in the air. The ground takes none back;
    /// into air drier than its surface the film gives what hangs on it.
    /// </summary>
    private void Vapour(in HeatHour hour, (int Low, int Air, int Film, int Size) at, double passed, double passedPerK, double cropKgPerS)
    {
        (int low, int air, int film, int size) = at;
        double latent = MoistAir.EvaporationJPerKg, heat = MoistAir.HeatJPerKgK, bare = GroundVapour * (1 - _house.CropCover);
        (double atGround, double groundPerK) = MoistAir.Saturated(NodesK[0], hour.PressurePa);
        (double atFilm, double filmPerK) = MoistAir.Saturated(NodesK[film], hour.PressurePa);
        double groundK = NodesK[0] - NodesK[low], filmK = NodesK[air] - NodesK[film], groundStir = (groundK * groundK) + (StirredK * StirredK), filmStir = (filmK * filmK) + (StirredK * StirredK);
        double fromGround = GroundFactor * Math.Pow(groundStir, GroundPower / 2) / heat * bare, toFilm = FilmFactor * _house.CoverOverFloor * Math.Pow(filmStir, FilmPower / 2) / heat;
        double source = (passed * hour.Water) + cropKgPerS, most = hour.FilmWaterKg / StepS, driest = atFilm - (most / toFilm);
        // What leaves less what comes grows with the water in the air, so that its sign at each bend says on which side of it the balance lies.
        double groundNow = Left(atGround) > 0 ? fromGround : 0, filmShare = Left(atFilm) <= 0 || (most > 0 && Left(driest) <= 0) ? toFilm : 0, given = filmShare == 0 ? most : 0;
        Water = (source + (groundNow * atGround) + (filmShare * atFilm) + given) / (passed + groundNow + filmShare);
        double all = passed + groundNow + filmShare, waterPerGround = groundNow * groundPerK / all, waterPerFilm = filmShare * filmPerK / all;
        double waterPerAir = passedPerK * (hour.Water - Water) / all, filmNow = (filmShare * (Water - atFilm)) - given, dries = atGround - Water;
        _system[0, size] -= latent * groundNow * dries;
        _system[0, 0] += latent * groundNow * (groundPerK - waterPerGround);
        _system[0, film] -= latent * groundNow * waterPerFilm;
        _system[0, air] -= latent * groundNow * waterPerAir;
        _system[film, size] += latent * filmNow;
        _system[film, film] += latent * filmShare * (filmPerK - waterPerFilm);
        _system[film, 0] -= latent * filmShare * waterPerGround;
        _system[film, air] -= latent * filmShare * waterPerAir;
        // Vapour also moves faster where the difference of temperatures stirs the air more.
        Stirred(0, low, GroundPower * groundNow * groundK / groundStir, dries * (1 - (groundNow / all)), filmShare * dries / all);
        Stirred(air, film, FilmPower * filmShare * filmK / filmStir, groundNow * (Water - atFilm) / all, (Water - atFilm) * (1 - (filmShare / all)));
        CondensedKg = filmNow * StepS;
        PassedVapourWPerM2 = latent * passed * (hour.Water - Water);

        void Stirred(int warm, int cool, double perK, double evaporates, double condenses)
        {
            _system[0, warm] += latent * perK * evaporates;
            _system[0, cool] -= latent * perK * evaporates;
            _system[film, warm] -= latent * perK * condenses;
            _system[film, cool] += latent * perK * condenses;
        }

        double Left(double water) => (passed * water) - source - (fromGround * Math.Max(0, atGround - water)) + (water > atFilm ? toFilm * (water - atFilm) : -Math.Min(toFilm * (atFilm - water), most));
    }

    /// <summary>Convection between two nodes, c·|ΔT|^p·ΔT over an area.</summary>
    private void Touch(int a, int b, double area, double factor, double power, int size)
    {
        double difference = NodesK[a] - NodesK[b], conductance = area * factor * Math.Pow(Math.Abs(difference), power);
        Couple(a, b, conductance * difference, conductance * (1 + power), size);
    }

    private void Even(int a, int b, double conductance, int size) => Couple(a, b, conductance * (NodesK[a] - NodesK[b]), conductance, size);

    // A flow from one node to another, and how it grows with their difference.
    private void Couple(int a, int b, double flow, double slope, int size)
    {
        _system[a, size] -= flow;
        _system[b, size] += flow;
        _system[a, a] += slope;
        _system[b, b] += slope;
        _system[a, b] -= slope;
        _system[b, a] -= slope;
    }

    /// <summary>Heat from a temperature that is given, W/m².</summary>
    private double Boundary(int node, double conductance, double kelvins, int size)
    {
        double gain = conductance * (kelvins - NodesK[node]);
        _system[node, size] += gain;
        _system[node, node] += conductance;
        return gain;
    }
}
