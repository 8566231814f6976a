using Hoopwright.Web.Engine;

namespace Hoopwright.Web.Tests;

/// <summary>The real engine without a browser, asked at once.</summary>
internal sealed class StraightEngine : IEngine
{
    /// <summary>Packets that were asked for, with the names they were to be saved under.</summary>
    internal List<(PacketWish Wish, string FileName)> Wishes { get; } = [];

    /// <summary>What happens on the page while copies are put together.</summary>
    internal Func<Task> BeforeMerging { get; set; } = () => Task.CompletedTask;

    public Task<string> LookAsync(string document) => Task.FromResult(EngineWork.Look(document));

    public Task<string> DrawAsync(string document, string figure) => Task.FromResult(EngineWork.Draw(document, figure));

    public Task<string> WholeAsync(string document) => Task.FromResult(EngineWork.Whole(document));

    public Task<string> StandsAsync(string document) => Task.FromResult(EngineWork.Stands(document));

    public Task<string> FrameAsync(string model) => throw new NotSupportedException();

    public Task<string> CutAsync(string job) => throw new NotSupportedException();

    public Task<string> WhyAsync(string document, string path) => Task.FromResult(EngineWork.Why(document, path));

    public Task<string> CompareAsync(string before, string after) => Task.FromResult(EngineWork.Compare(before, after));

    public Task<string> SceneAsync(string document, bool withStrength) => Task.FromResult(EngineWork.Scene(document, withStrength));

    public Task<string> CoveringAsync(string document, string film, string language) => Task.FromResult(EngineWork.Covering(document, film, language));

    public Task<string> StepsAsync(string document, string job, string language) => Task.FromResult(EngineWork.Steps(document, job, language));

    public Task<string> SiteBookAsync(string document, string language) => Task.FromResult(EngineWork.SiteBook(document, language));

    public async Task<string> MergeAsync(string document, string other)
    {
        await BeforeMerging();
        return EngineWork.Merge(document, other);
    }

    public Task<string> UndecidedAsync(string document) => Task.FromResult(EngineWork.Undecided(document));

    public Task<string> DecideAsync(string document, string path, string value, string id, string by, string device) => Task.FromResult(EngineWork.Decide(document, path, value, id, by, device));

    public Task<string> RecordAsync(string before, string document, string id, string by, string device) => Task.FromResult(EngineWork.Record(before, document, id, by, device));

    public Task<string> InsideAsync(string document, string weather, string language) => Task.FromResult(EngineWork.Inside(document, weather, language));

    public Task<string> WeatherAsync(string document, string weather, string language, string clock) => Task.FromResult(EngineWork.Weather(document, weather, language, clock));

    public Task<string> DaysAsync(string document, string job, string weather, string clock, string today, string language) => Task.FromResult(EngineWork.Days(document, job, weather, clock, today, language));

    public Task<string> UpkeepAsync(string document, string weather, string clock, string depth, string kind, string today, string language) => Task.FromResult(EngineWork.Upkeep(document, weather, clock, depth, kind, today, language));

    public Task<bool> DownloadUpkeepAsync(string[] asked, string fileName) => Task.FromResult(false);

    public Task<bool> DownloadDaysAsync(string[] asked, string fileName) => Task.FromResult(false);

    public Task<bool> DownloadPacketAsync(PacketWish wish, string fileName)
    {
        Wishes.Add((wish, fileName));
        return Task.FromResult(EngineWork.Packet(wish).Length > 0);
    }
}
