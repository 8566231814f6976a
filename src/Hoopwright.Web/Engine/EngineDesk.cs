using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Hoopwright.Web.Engine;

/// <summary>What a worker of the browser may call by name.</summary>
[SupportedOSPlatform("browser")]
internal static partial class EngineDesk
{
    [JSExport]
    internal static string Look(string document) => EngineWork.Look(document);

    [JSExport]
    internal static string Draw(string document, string figure) => EngineWork.Draw(document, figure);

    [JSExport]
    internal static string Stands(string document) => EngineWork.Stands(document);

    [JSExport]
    internal static string Frame(string model) => EngineWork.Frame(model);

    [JSExport]
    internal static string Cut(string job) => EngineWork.Cut(job);

    [JSExport]
    internal static string Whole(string document) => EngineWork.Whole(document);

    [JSExport]
    internal static string Why(string document, string path) => EngineWork.Why(document, path);

    [JSExport]
    internal static string Compare(string before, string after) => EngineWork.Compare(before, after);

    [JSExport]
    internal static string Scene(string document, string withStrength) => EngineWork.Scene(document, withStrength == "true");

    [JSExport]
    internal static string Covering(string document, string film, string language) => EngineWork.Covering(document, film, language);

    [JSExport]
    internal static string Steps(string document, string job, string language) => EngineWork.Steps(document, job, language);

    [JSExport]
    internal static string SiteBook(string document, string language) => EngineWork.SiteBook(document, language);

    [JSExport]
    internal static string Merge(string document, string other) => EngineWork.Merge(document, other);

    [JSExport]
    internal static string Undecided(string document) => EngineWork.Undecided(document);

    [JSExport]
    internal static string Decide(string document, string path, string value, string id, string by, string device) => EngineWork.Decide(document, path, value, id, by, device);

    [JSExport]
    internal static string Record(string before, string document, string id, string by, string device) => EngineWork.Record(before, document, id, by, device);

    [JSExport]
    internal static string Inside(string document, string weather, string language) => EngineWork.Inside(document, weather, language);

    [JSExport]
    internal static string Weather(string document, string weather, string language, string clock) => EngineWork.Weather(document, weather, language, clock);

    [JSExport]
    internal static string Days(string document, string job, string weather, string clock, string today, string language) => EngineWork.Days(document, job, weather, clock, today, language);

    [JSExport]
    internal static string Upkeep(string document, string weather, string clock, string depth, string kind, string today, string language) => EngineWork.Upkeep(document, weather, clock, depth, kind, today, language);

    [JSExport]
    internal static byte[] UpkeepFile(string document, string today, string language, string paper, string what) => EngineWork.UpkeepFile(document, today, language, paper, what);

    [JSExport]
    internal static byte[] DaysFile(string document, string job, string weather, string clock, string today, string language, string paper, string what, string stamp) =>
        EngineWork.DaysFile(document, job, weather, clock, today, language, paper, what, stamp);

    [JSExport]
    internal static byte[] Packet(string document, string paper, string date, string what, string crew, string weather, string clock, string drawings, string dimensions, string revision) =>
        EngineWork.Packet(new PacketWish(document, paper, date, what, crew) { Weather = weather, Clock = clock, Drawings = drawings, Dimensions = dimensions, Revision = revision });
}
