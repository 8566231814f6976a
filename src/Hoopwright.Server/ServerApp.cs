using System.Text.Json;
using Hoopwright.Server.Api;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.HttpOverrides;

namespace Hoopwright.Server;

/// <summary>The web server: the app's files, and the API of shared plans beside them.</summary>
internal static class ServerApp
{
    /// <summary>Puts it together; the caller starts it, and closes the database after it.</summary>
    public static WebApplication Create(ServerOptions options, IDatabase database, TimeProvider clock)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseUrls(options.Urls);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = SharingLimits.BodyBytes;
        });
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);
        builder.Logging.AddFilter(typeof(LinkAuthentication).FullName, LogLevel.Warning);
        // The handler says what is worth saying; a request that is refused is no fault of the server.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Diagnostics.ExceptionHandlerMiddleware", LogLevel.None);
        AddServices(builder.Services, options, database, clock);

        WebApplication app = builder.Build();
        app.UseAppHeaders();
        app.UseExceptionHandler(_ => { });
        app.UseWhen(IsApi, api => api.UseStatusCodePages(page => Problems.OfStatus(page.HttpContext.Response.StatusCode).WriteAsync(page.HttpContext)));
        app.UseForwardedHeaders();
        app.UseAppFiles(options.App);
        app.UseRouting();
        app.UseWhen(context => context.GetEndpoint() is null && !IsApi(context), page => page.Run(context => AppFiles.SendPage(context, options.App)));
        app.UseRateLimiter();
        app.UseAuthentication();
        app.UseAuthorization();
        MapApi(app);
        app.MapGet("/health", () => Results.Text("ok")).ExcludeFromDescription();
        return app;
    }

    private static void AddServices(IServiceCollection services, ServerOptions options, IDatabase database, TimeProvider clock)
    {
        services.AddSingleton(database);
        services.AddSingleton(clock);
        services.AddSingleton<ShareStore>();
        services.AddSingleton<ChangeFeed>();
        services.AddExceptionHandler<ProblemHandler>();
        services.AddRateLimits(options.Rates);
        services.AddAuthentication(LinkAuthentication.SchemeName).AddScheme<AuthenticationSchemeOptions, LinkAuthentication>(LinkAuthentication.SchemeName, null);
        services.AddAuthorization();
        services.AddApiDescription();
        // A proxy on this machine tells who asked; from anywhere else such headers are not believed.
        services.Configure<ForwardedHeadersOptions>(forwarded => forwarded.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto);
        // What cannot be read is thrown, so that one place explains it.
        services.Configure<RouteHandlerOptions>(handlers => handlers.ThrowOnBadRequest = true);
        services.ConfigureHttpJsonOptions(json =>
        {
            JsonSerializerOptions wire = SharingJson.Default.Options;
            json.SerializerOptions.TypeInfoResolverChain.Insert(0, SharingJson.Default);
            json.SerializerOptions.DefaultIgnoreCondition = wire.DefaultIgnoreCondition;
            json.SerializerOptions.NumberHandling = wire.NumberHandling;
            json.SerializerOptions.MaxDepth = wire.MaxDepth;
            json.SerializerOptions.RespectNullableAnnotations = wire.RespectNullableAnnotations;
            json.SerializerOptions.RespectRequiredConstructorParameters = wire.RespectRequiredConstructorParameters;
            json.SerializerOptions.AllowDuplicateProperties = wire.AllowDuplicateProperties;
        });
    }

    private static bool IsApi(HttpContext context) => context.Request.Path.StartsWithSegments("/api");

    private static void MapApi(WebApplication app)
    {
        RouteGroupBuilder api = app.MapGroup("/api/v1");
        ShareEndpoints.Map(api);
        PlanEndpoints.Map(api);
        KeeperEndpoints.Map(api);
        app.MapOpenApi("/api/{documentName}/openapi.json");
    }
}
