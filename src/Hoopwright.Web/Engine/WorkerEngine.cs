using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Hoopwright.Web.Engine;

/// <summary>The engine in two workers of the browser: one for the quick look, one for all that takes longer.</summary>
[SupportedOSPlatform("browser")]
public sealed partial class WorkerEngine : IEngine
{
    private const string Desk = "engine";
    private Task<JSObject>? module;

    /// <inheritdoc/>
    public Task<string> LookAsync(string document) => AskAsync("quick", "Look", document);

    /// <inheritdoc/>
    public Task<string> DrawAsync(string document, string figure) => AskAsync("quick", "Draw", document, figure);

    /// <inheritdoc/>
    public Task<string> StandsAsync(string document) => AskAsync("deep", "Stands", document);

    /// <inheritdoc/>
    public Task<string> FrameAsync(string model) => AskAsync("deep", "Frame", model);

    /// <inheritdoc/>
    public Task<string> CutAsync(string job) => AskAsync("deep", "Cut", job);

    /// <inheritdoc/>
    public Task<string> WholeAsync(string document) => AskAsync("deep", "Whole", document);

    /// <inheritdoc/>
    public Task<string> WhyAsync(string document, string path) => AskAsync("deep", "Why", document, path);

    /// <inheritdoc/>
    public Task<string> CompareAsync(string before, string after) => AskAsync("deep", "Compare", before, after);

    /// <inheritdoc/>
    public Task<string> SceneAsync(string document, bool withStrength) => AskAsync(withStrength ? "deep" : "quick", "Scene", document, withStrength ? "true" : "false");

    /// <inheritdoc/>
    public Task<string> CoveringAsync(string document, string film, string language) => AskAsync("quick", "Covering", document, film, language);

    /// <inheritdoc/>
    public Task<string> StepsAsync(string document, string job, string language) => AskAsync("quick", "Steps", document, job, language);

    /// <inheritdoc/>
    public Task<string> SiteBookAsync(string document, string language) => AskAsync("quick", "SiteBook", document, language);

    /// <inheritdoc/>
    public Task<string> MergeAsync(string document, string other) => AskAsync("quick", "Merge", document, other);

    /// <inheritdoc/>
    public Task<string> UndecidedAsync(string document) => AskAsync("quick", "Undecided", document);

    /// <inheritdoc/>
    public Task<string> DecideAsync(string document, string path, string value, string id, string by, string device) => AskAsync("quick", "Decide", document, path, value, id, by, device);

    /// <inheritdoc/>
    public Task<string> RecordAsync(string before, string document, string id, string by, string device) => AskAsync("quick", "Record", before, document, id, by, device);

    /// <inheritdoc/>
    public Task<string> InsideAsync(string document, string weather, string language) => AskAsync("deep", "Inside", document, weather, language);

    /// <inheritdoc/>
    public Task<string> WeatherAsync(string document, string weather, string language, string clock) => AskAsync("deep", "Weather", document, weather, language, clock);

    /// <inheritdoc/>
    public Task<string> DaysAsync(string document, string job, string weather, string clock, string today, string language) => AskAsync("deep", "Days", document, job, weather, clock, today, language);

    /// <inheritdoc/>
    public Task<string> UpkeepAsync(string document, string weather, string clock, string depth, string kind, string today, string language) => AskAsync("deep", "Upkeep", document, weather, clock, depth, kind, today, language);

    /// <inheritdoc/>
    public Task<bool> DownloadUpkeepAsync(string[] asked, string fileName) => ToldAsync(() => Download("UpkeepFile", asked, fileName));

    /// <inheritdoc/>
    public Task<bool> DownloadDaysAsync(string[] asked, string fileName) => ToldAsync(() => Download("DaysFile", asked, fileName));

    /// <inheritdoc/>
    public Task<bool> DownloadPacketAsync(PacketWish wish, string fileName)
    {
        ArgumentNullException.ThrowIfNull(wish);
        return ToldAsync(() => Download("Packet", [wish.Document, wish.Paper, wish.Date, wish.What, wish.Crew, wish.Weather, wish.Clock, wish.Drawings, wish.Dimensions, wish.Revision], fileName));
    }

    private Task<string> AskAsync(string worker, string what, params string[] arguments) => ToldAsync(() => Ask(worker, what, arguments));

    // Answers are long texts: they come straight across, not as JSON within JSON.
    private async Task<T> ToldAsync<T>(Func<Task<T>> ask)
    {
        try
        {
            await (module ??= JSHost.ImportAsync(Desk, "../js/engine.js"));
            return await ask();
        }
        catch (JSException fault)
        {
            throw new EngineException(fault.Message, fault);
        }
    }

    [JSImport("ask", Desk)]
    private static partial Task<string> Ask(string worker, string what, string[] arguments);

    [JSImport("download", Desk)]
    private static partial Task<bool> Download(string what, string[] arguments, string fileName);
}
