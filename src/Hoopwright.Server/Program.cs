using Hoopwright.Server;

WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
string folder = builder.Configuration["app"] ?? AppFiles.DefaultFolder();
string address = builder.Configuration["urls"] ?? "http://localhost:5080";
builder.WebHost.UseUrls(address);
builder.Logging.AddFilter("Microsoft", LogLevel.Warning);

WebApplication app = builder.Build();
if (!AppFiles.IsComplete(folder))
{
    Console.Error.WriteLine($"The app is not in {folder}. Build the server without -p:SkipApp=true, or say where the app was published: --app FOLDER.");
    return 1;
}

app.UseAppHeaders();
app.UseAppFiles(folder);
app.MapGet("/health", () => Results.Text("ok"));
app.MapFallback(context => AppFiles.SendPage(context, folder));
app.Lifetime.ApplicationStarted.Register(() => Console.WriteLine($"Hoopwright is at {app.Urls.First()} — the example tunnel is one click away. Stop with Ctrl+C."));
try
{
    await app.RunAsync();
    return 0;
}
catch (IOException fault)
{
    Console.Error.WriteLine($"The server could not start: {fault.Message} Another program may be using the address; choose another with --urls http://localhost:5081.");
    return 1;
}
