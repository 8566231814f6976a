using Hoopwright.Web;
using Hoopwright.Web.Engine;
using Hoopwright.Web.Fields;
using Hoopwright.Web.Offline;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

if (!OperatingSystem.IsBrowser()) throw new PlatformNotSupportedException("The app runs in a browser.");
WebAssemblyHostBuilder builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.Services
    .AddSingleton(TimeProvider.System)
    .AddSingleton(new HttpClient { BaseAddress = new Uri(builder.HostEnvironment.BaseAddress) })
    .AddSingleton<IEngine, WorkerEngine>()
    .AddSingleton<IShelf, BrowserShelf>()
    .AddSingleton<Wording>()
    .AddSingleton(_ => FieldSheet.Read())
    .AddSingleton<OpenPlan>()
    .AddSingleton<Intake>()
    .AddSingleton<WeatherDesk>()
    .AddSingleton<Live>()
    .AddSingleton<PageScript>()
    .AddSingleton<Scribe>()
    .AddSingleton<SharedPlan>();
builder.RootComponents.Add<App>("#app");
await builder.Build().RunAsync();
