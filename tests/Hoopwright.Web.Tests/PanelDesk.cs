using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Testing;
using Hoopwright.Web.Engine;
using Hoopwright.Web.Fields;
using Hoopwright.Web.Offline;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.Extensions.DependencyInjection;

namespace Hoopwright.Web.Tests;

/// <summary>A page's desk without a browser: the real engine, asked at once, and a shelf with one plan.</summary>
internal sealed class PanelDesk : IDisposable
{
    private readonly OneShelf shelf = new();
    private readonly OpenPlan plan;
    private readonly Live live;

    internal PanelDesk(IServiceCollection services)
    {
        plan = new OpenPlan(shelf);
        StraightEngine engine = new();
        live = new Live(plan, engine);
        services.AddSingleton<IEngine>(engine).AddSingleton(plan).AddSingleton(live).AddSingleton<Wording>().AddSingleton<WeatherDesk>().AddSingleton<PageScript>().AddSingleton<Scribe>().AddSingleton(new HttpClient { BaseAddress = new Uri("http://nowhere.invalid/") }).AddSingleton<SharedPlan>().AddSingleton(TimeProvider.System).AddSingleton(FieldSheet.Read());
    }

    /// <summary>Opens an example.</summary>
    /// <param name="example">Its name.</param>
    /// <param name="change">What is changed in it first; null for nothing.</param>
    internal async Task OpenAsync(string example, Action<JsonObject>? change = null)
    {
        JsonObject document = PlanText.Tree(PlanText.Plain(Encoding.UTF8.GetString(SamplePlans.ExampleBytes(example)))!).AsObject();
        change?.Invoke(document);
        shelf.Document = document.ToJsonString();
        await plan.OpenAsync("a");
        live.Follow();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        live.Dispose();
        plan.Dispose();
    }

    private sealed class StraightEngine : IEngine
    {
        public Task<string> LookAsync(string document) => Task.FromResult(EngineWork.Look(document));

        public Task<string> DrawAsync(string document, string figure) => Task.FromResult(EngineWork.Draw(document, figure));

        public Task<string> WholeAsync(string document) => Task.FromResult(EngineWork.Whole(document));

        public Task<string> StandsAsync(string document) => Task.FromResult(EngineWork.Stands(document));

        public Task<string> FrameAsync(string model) => throw new NotSupportedException();

        public Task<string> WhyAsync(string document, string path) => Task.FromResult(EngineWork.Why(document, path));

        public Task<string> CompareAsync(string before, string after) => Task.FromResult(EngineWork.Compare(before, after));

        public Task<string> SceneAsync(string document, bool withStrength) => Task.FromResult(EngineWork.Scene(document, withStrength));

        public Task<string> CoveringAsync(string document, string film, string language) => Task.FromResult(EngineWork.Covering(document, film, language));

        public Task<string> StepsAsync(string document, string job, string language) => Task.FromResult(EngineWork.Steps(document, job, language));

        public Task<string> SiteBookAsync(string document, string language) => Task.FromResult(EngineWork.SiteBook(document, language));

        public Task<string> MergeAsync(string document, string other) => Task.FromResult(EngineWork.Merge(document, other));

        public Task<string> UndecidedAsync(string document) => Task.FromResult(EngineWork.Undecided(document));

        public Task<string> DecideAsync(string document, string path, string value, string id, string by, string device) => Task.FromResult(EngineWork.Decide(document, path, value, id, by, device));

        public Task<string> RecordAsync(string before, string document, string id, string by, string device) => Task.FromResult(EngineWork.Record(before, document, id, by, device));

        public Task<string> InsideAsync(string document, string weather, string language) => Task.FromResult(EngineWork.Inside(document, weather, language));

        public Task<string> WeatherAsync(string document, string weather, string language, string clock) => Task.FromResult(EngineWork.Weather(document, weather, language, clock));

        public Task<string> DaysAsync(string document, string job, string weather, string clock, string today, string language) => Task.FromResult(EngineWork.Days(document, job, weather, clock, today, language));

        public Task<string> UpkeepAsync(string document, string weather, string clock, string depth, string kind, string today, string language) => Task.FromResult(EngineWork.Upkeep(document, weather, clock, depth, kind, today, language));

        public Task<bool> DownloadUpkeepAsync(string[] asked, string fileName) => Task.FromResult(false);

        public Task<bool> DownloadDaysAsync(string[] asked, string fileName) => Task.FromResult(false);

        public Task<bool> DownloadPacketAsync(string document, string paper, string date, string what, string crew, string weather, string clock, string fileName) => Task.FromResult(false);
    }

    private sealed class OneShelf : IShelf
    {
        public event Action<string>? ChangedElsewhere
        {
            add { }
            remove { }
        }

        public string Document { get; set; } = "{}";

        public Task<ShelfAnswer> LoadAsync(string id) => Task.FromResult(new ShelfAnswer { Ok = true, Found = true, At = 1, Of = 1, Document = Document });

        public Task<ShelfAnswer> ListAsync() => throw new NotSupportedException();

        public Task<ShelfState> StateAsync() => throw new NotSupportedException();

        public Task<ShelfAnswer> AddAsync(string id, string name, string document) => throw new NotSupportedException();

        public Task<ShelfAnswer> RemoveAsync(string id) => throw new NotSupportedException();

        public Task<ShelfAnswer> ChangeAsync(string id, string path, string? value) => throw new NotSupportedException();

        public Task<ShelfAnswer> TurnAsync(string id, bool back) => throw new NotSupportedException();
    }
}
