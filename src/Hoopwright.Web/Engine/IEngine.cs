namespace Hoopwright.Web.Engine;

/// <summary>The engine as the page sees it: work done elsewhere, so that typing never waits for it.</summary>
public interface IEngine
{
    /// <summary>See <see cref="EngineWork.Look"/>.</summary>
    Task<string> LookAsync(string document);

    /// <summary>See <see cref="EngineWork.Draw"/>.</summary>
    Task<string> DrawAsync(string document, string figure);

    /// <summary>See <see cref="EngineWork.Stands"/>.</summary>
    Task<string> StandsAsync(string document);

    /// <summary>See <see cref="EngineWork.Frame"/>.</summary>
    Task<string> FrameAsync(string model);

    /// <summary>See <see cref="EngineWork.Cut"/>.</summary>
    Task<string> CutAsync(string job);

    /// <summary>See <see cref="EngineWork.Whole"/>.</summary>
    Task<string> WholeAsync(string document);

    /// <summary>See <see cref="EngineWork.Why"/>.</summary>
    Task<string> WhyAsync(string document, string path);

    /// <summary>See <see cref="EngineWork.Compare"/>.</summary>
    Task<string> CompareAsync(string before, string after);

    /// <summary>See <see cref="EngineWork.Scene"/>.</summary>
    Task<string> SceneAsync(string document, bool withStrength);

    /// <summary>See <see cref="EngineWork.Covering"/>.</summary>
    Task<string> CoveringAsync(string document, string film, string language);

    /// <summary>See <see cref="EngineWork.Steps"/>.</summary>
    Task<string> StepsAsync(string document, string job, string language);

    /// <summary>See <see cref="EngineWork.SiteBook"/>.</summary>
    Task<string> SiteBookAsync(string document, string language);

    /// <summary>See <see cref="EngineWork.Merge"/>.</summary>
    Task<string> MergeAsync(string document, string other);

    /// <summary>See <see cref="EngineWork.Undecided"/>.</summary>
    Task<string> UndecidedAsync(string document);

    /// <summary>See <see cref="EngineWork.Decide"/>.</summary>
    Task<string> DecideAsync(string document, string path, string value, string id, string by, string device);

    /// <summary>See <see cref="EngineWork.Record"/>.</summary>
    Task<string> RecordAsync(string before, string document, string id, string by, string device);

    /// <summary>See <see cref="EngineWork.Inside"/>.</summary>
    Task<string> InsideAsync(string document, string weather, string language);

    /// <summary>See <see cref="EngineWork.Weather"/>.</summary>
    Task<string> WeatherAsync(string document, string weather, string language, string clock);

    /// <summary>See <see cref="EngineWork.Days"/>.</summary>
    Task<string> DaysAsync(string document, string job, string weather, string clock, string today, string language);

    /// <summary>See <see cref="EngineWork.Upkeep"/>.</summary>
    Task<string> UpkeepAsync(string document, string weather, string clock, string depth, string kind, string today, string language);

    /// <summary>Makes a file of the upkeep and hands it to the browser as a download; see <see cref="EngineWork.UpkeepFile"/>.</summary>
    /// <param name="asked">What is asked, in the order in which the engine takes it.</param>
    /// <param name="fileName">The name it is saved under.</param>
    /// <returns>False when the plan has errors.</returns>
    Task<bool> DownloadUpkeepAsync(string[] asked, string fileName);

    /// <summary>Makes a file of the days of the crew and hands it to the browser as a download; see <see cref="EngineWork.DaysFile"/>.</summary>
    /// <param name="asked">What is asked, in the order in which the engine takes it.</param>
    /// <param name="fileName">The name it is saved under.</param>
    /// <returns>False when there is no calendar.</returns>
    Task<bool> DownloadDaysAsync(string[] asked, string fileName);

    /// <summary>Makes the packet and hands it to the browser as a download.</summary>
    /// <param name="wish">What of it.</param>
    /// <param name="fileName">The name it is saved under.</param>
    /// <returns>False when the plan has errors, so that there is no packet.</returns>
    Task<bool> DownloadPacketAsync(PacketWish wish, string fileName);
}
