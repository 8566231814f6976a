using Microsoft.Net.Http.Headers;

namespace Hoopwright.Server;

/// <summary>Headers that keep the page to itself: no scripts but its own, nothing framed, nothing sent elsewhere.</summary>
internal static class AppHeaders
{
    // WebAssembly needs 'wasm-unsafe-eval'; drawings carry their own styles; the browser saves files through blobs.
    private const string Policy =
        "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; connect-src 'self'; worker-src 'self'; manifest-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Adds them to every answer, also to one that takes the place of another after a fault: at the last moment before it is sent.</summary>
    public static void UseAppHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(() =>
        {
            Add(context.Response.Headers);
            // What the API answers depends on the link, and is for whoever has it alone.
            if (context.Request.Path.StartsWithSegments("/api")) context.Response.Headers[HeaderNames.CacheControl] = "no-store";
            return Task.CompletedTask;
        });
        return next(context);
    });

    private static void Add(IHeaderDictionary headers)
    {
        headers[HeaderNames.ContentSecurityPolicy] = Policy;
        headers[HeaderNames.XContentTypeOptions] = "nosniff";
        headers[HeaderNames.XFrameOptions] = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }
}
