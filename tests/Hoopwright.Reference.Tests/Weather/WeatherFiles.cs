using System.IO.Compression;
using Hoopwright.Testing;
using Hoopwright.Weather;

namespace Hoopwright.Reference.Tests.Weather;

/// <summary>Weather files of the U.S. Department of Energy (TMY3) and observed hours of three airports, kept outside the repository.</summary>
internal static class WeatherFiles
{
    private static readonly Dictionary<string, string> Names = new()
    {
        ["Duluth MN"] = "USA_MN_Duluth.727450_TMY3",
        ["Buffalo NY"] = "USA_NY_Buffalo.725280_TMY3",
        ["Baltimore MD"] = "USA_MD_Baltimore.724060_TMY3",
        ["Atlanta GA"] = "USA_GA_Atlanta.722190_TMY3",
        ["Denver CO"] = "USA_CO_Denver.725650_TMY3",
    };

    /// <summary>A typical year.</summary>
    public static WeatherReading Read(string site)
    {
        using Stream file = OpenYear(site);
        return WeatherReader.Read(file);
    }

    /// <summary>A typical year as it stands.</summary>
    public static Stream OpenYear(string site) => Open(Names[site] + ".epw.gz");

    /// <summary>A file of the folder, unpacked.</summary>
    public static Stream Open(string name) => new GZipStream(File.OpenRead(Path.Combine(OutsideData.Folder("weather"), name)), CompressionMode.Decompress);

    /// <summary>Lines of the statistics that were published with a typical year.</summary>
    public static string[] Statistics(string site) => File.ReadAllLines(Path.Combine(OutsideData.Folder("weather"), Names[site] + ".stat"), System.Text.Encoding.Latin1);

    /// <summary>A table of reference values.</summary>
    public static IReadOnlyList<CsvRows> Table(string name) => CsvRows.Of(Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Reference.Tests", "Weather", "Data", name));
}
