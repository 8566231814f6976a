using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;
using Microsoft.Net.Http.Headers;

namespace Hoopwright.Server;

/// <summary>Serves the published app: compressed where the browser takes it, kept by the browser but asked about each time.</summary>
internal static class AppFiles
{
    private static readonly (string Coding, string Ending)[] Compressed = [("br", ".br"), ("gzip", ".gz")];

    /// <summary>Where the build puts the app: beside the server when published with it, else in the project's own folder.</summary>
    public static string DefaultFolder()
    {
        string beside = Path.Combine(AppContext.BaseDirectory, "app", "wwwroot");
        if (IsComplete(beside)) return beside;
        for (DirectoryInfo? up = new(AppContext.BaseDirectory); up is not null; up = up.Parent)
        {
            string built = Path.Combine(up.FullName, "obj", "app", "wwwroot");
            if (IsComplete(built)) return built;
        }
        return beside;
    }

    /// <summary>True when a folder holds the app.</summary>
    public static bool IsComplete(string folder) => File.Exists(Path.Combine(folder, "index.html")) && Directory.Exists(Path.Combine(folder, "_framework"));

    /// <summary>Serves the app's files.</summary>
    public static void UseAppFiles(this IApplicationBuilder app, string folder)
    {
        PhysicalFileProvider files = new(folder);
        FileExtensionContentTypeProvider types = new();
        types.Mappings[".br"] = types.Mappings[".gz"] = "application/octet-stream";
        types.Mappings[".dat"] = "application/octet-stream";
        types.Mappings[".webmanifest"] = "application/manifest+json";
        app.Use((context, next) =>
        {
            Compress(context, files, types);
            return next(context);
        });
        app.UseStaticFiles(new StaticFileOptions
        {
            FileProvider = files,
            ContentTypeProvider = types,
            OnPrepareResponse = sent =>
            {
                // Names stay the same from version to version, so the browser asks each time; the answer is "not changed" in most cases.
                sent.Context.Response.Headers[HeaderNames.CacheControl] = "no-cache";
                if (sent.Context.Items.TryGetValue(nameof(Compressed), out object? found) && found is (string coding, string type))
                {
                    sent.Context.Response.Headers[HeaderNames.ContentEncoding] = coding;
                    sent.Context.Response.ContentType = type;
                }
                sent.Context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptEncoding);
            },
        });
    }

    /// <summary>Sends the page itself for an address within the app; nothing for a missing file.</summary>
    public static async Task SendPage(HttpContext context, string folder)
    {
        if (Path.HasExtension(context.Request.Path))
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers[HeaderNames.CacheControl] = "no-cache";
        await context.Response.SendFileAsync(Path.Combine(folder, "index.html"));
    }

    // The publisher wrote the same file compressed beside it: that one is sent where the browser takes it.
    private static void Compress(HttpContext context, PhysicalFileProvider files, FileExtensionContentTypeProvider types)
    {
        if (!HttpMethods.IsGet(context.Request.Method) && !HttpMethods.IsHead(context.Request.Method)) return;
        string path = context.Request.Path.Value ?? "";
        if (!types.TryGetContentType(path, out string? type)) return;
        string accepted = context.Request.Headers.AcceptEncoding.ToString();
        foreach ((string coding, string ending) in Compressed)
        {
            if (!accepted.Contains(coding, StringComparison.OrdinalIgnoreCase) || !files.GetFileInfo(path + ending).Exists) continue;
            context.Items[nameof(Compressed)] = (coding, type);
            context.Request.Path = path + ending;
            return;
        }
    }
}
