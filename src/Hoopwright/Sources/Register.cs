namespace Hoopwright.Sources;

/// <summary>The standards and books that formulas are taken from. Addresses are in docs/sources.md.</summary>
internal static class Register
{
    internal static PublishedWork Aisc360 { get; } = new("ANSI/AISC 360-16, Specification for Structural Steel Buildings (formulas alike in 360-22), American Institute of Steel Construction");

    internal static PublishedWork Aisc341 { get; } = new("ANSI/AISC 341-16, Seismic Provisions for Structural Steel Buildings, American Institute of Steel Construction");

    internal static PublishedWork AisiS100 { get; } = new("AISI S100-16, North American Specification for the Design of Cold-Formed Steel Structural Members, American Iron and Steel Institute");

    internal static PublishedWork TubeProductStandards { get; } = new("ASTM tube and pipe standards (A53, A500, F1043, F1083), ASTM International");

    internal static PublishedWork En10219 { get; } = new("EN 10219-1, cold formed welded structural hollow sections");

    internal static PublishedWork En1993 { get; } = new("EN 1993-1-1, Eurocode 3: design of steel structures");

    internal static PublishedWork Nds2018 { get; } = new("National Design Specification for Wood Construction, 2018 edition, American Wood Council");

    internal static PublishedWork NdsSupplement { get; } = new("National Design Specification Supplement, Design Values for Wood Construction, 2018 edition, American Wood Council");

    internal static PublishedWork Ibc2021 { get; } = new("International Building Code 2018 and 2021, International Code Council");

    internal static PublishedWork MeyerhofAdams { get; } = new("Meyerhof and Adams, The Ultimate Uplift Capacity of Foundations, Canadian Geotechnical Journal 5 (1968) 225");

    internal static PublishedWork ShallowPosts { get; } = new("ANSI/ASAE EP486, Shallow Post and Pier Foundation Design, American Society of Agricultural and Biological Engineers");

    internal static PublishedWork HelicalPiles { get; } = new("AC358, Acceptance Criteria for Helical Pile Systems and Devices, ICC Evaluation Service");

    internal static PublishedWork SoilMechanics { get; } = new("soil mechanics, any handbook");

    internal static PublishedWork Mechanics { get; } = new("strength of materials, any handbook");

    internal static PublishedWork SolarPosition { get; } = new("NREL/TP-560-34302, Solar Position Algorithm for Solar Radiation Applications (rev. 2008), National Renewable Energy Laboratory");

    internal static PublishedWork KastenYoung { get; } = new("Kasten and Young, Revised optical air mass tables and approximation formula, Applied Optics 28 (1989) 4735");

    internal static PublishedWork IneichenPerez { get; } = new("Ineichen and Perez, A new airmass independent formulation for the Linke turbidity coefficient, Solar Energy 73 (2002) 151");

    internal static PublishedWork AshraeFundamentals { get; } = new("ASHRAE Handbook, Fundamentals");

    internal static PublishedWork Haurwitz { get; } = new("Haurwitz, Insolation in relation to cloudiness and cloud density, Journal of Meteorology 2 (1945) 154");

    internal static PublishedWork HayDavies { get; } = new("Hay and Davies, Calculation of the solar radiation incident on an inclined surface, First Canadian Solar Radiation Data Workshop (1980)");

    internal static PublishedWork Perez { get; } = new("Perez, Ineichen, Seals, Michalsky and Stewart, Modeling daylight availability and irradiance components, Solar Energy 44 (1990) 271");

    internal static PublishedWork Baskerville { get; } = new("Baskerville and Emin, Rapid estimation of heat accumulation from maximum and minimum temperatures, Ecology 50 (1969) 514");

    internal static PublishedWork Fao56 { get; } = new("FAO Irrigation and Drainage Paper 56, Crop evapotranspiration, Food and Agriculture Organization (1998)");
}
