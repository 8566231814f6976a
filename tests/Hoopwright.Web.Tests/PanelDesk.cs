using System.Text;
using System.Text.Json.Nodes;
using Hoopwright.Testing;
using Hoopwright.Web.Engine;
using Hoopwright.Web.Fields;
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
    private readonly StraightEngine engine = new();

    internal PanelDesk(IServiceCollection services)
    {
        plan = new OpenPlan(shelf);
        live = new Live(plan, engine);
        services.AddSingleton<IEngine>(engine).AddSingleton(plan).AddSingleton(live).AddSingleton<Wording>().AddSingleton<WeatherDesk>().AddSingleton<PageScript>().AddSingleton<Scribe>().AddSingleton(new HttpClient { BaseAddress = new Uri("http://nowhere.invalid/") }).AddSingleton<SharedPlan>().AddSingleton(TimeProvider.System).AddSingleton(FieldSheet.Read());
    }

    /// <summary>Packets that were asked for, with the names they were to be saved under.</summary>
    internal IReadOnlyList<(PacketWish Wish, string FileName)> Wishes => engine.Wishes;

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
}
