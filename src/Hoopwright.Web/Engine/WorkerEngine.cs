using Microsoft.JSInterop;

namespace Hoopwright.Web.Engine;

/// <summary>The engine in two workers of the browser: one for the quick look, one for all that takes longer.</summary>
/// <param name="js">The browser.</param>
public sealed class WorkerEngine(IJSRuntime js) : IEngine, IAsyncDisposable
{
    private Task<IJSObjectReference>? module;

    /// <inheritdoc/>
    public Task<string> LookAsync(string document, string figure) => AskAsync("quick", "Look", document, figure);

    /// <inheritdoc/>
    public Task<string> OrdersAsync(string document) => AskAsync("quick", "Orders", document);

    /// <inheritdoc/>
    public Task<string> WholeAsync(string document) => AskAsync("deep", "Whole", document);

    /// <inheritdoc/>
    public Task<string> WhyAsync(string document, string path) => AskAsync("deep", "Why", document, path);

    /// <inheritdoc/>
    public Task<string> CompareAsync(string before, string after) => AskAsync("deep", "Compare", before, after);

    /// <inheritdoc/>
    public Task<string> SceneAsync(string document) => AskAsync("quick", "Scene", document);

    /// <inheritdoc/>
    public async Task<bool> DownloadPacketAsync(string document, string paper, string date, bool pdfOnly, string fileName) =>
        await (await Module()).InvokeAsync<bool>("downloadPacket", document, paper, date, pdfOnly, fileName);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (module is { IsCompletedSuccessfully: true }) await (await module).DisposeAsync();
    }

    private async Task<string> AskAsync(string worker, string what, params string[] arguments) =>
        await (await Module()).InvokeAsync<string>("ask", worker, what, arguments);

    private Task<IJSObjectReference> Module() => module ??= js.InvokeAsync<IJSObjectReference>("import", "./js/engine.js").AsTask();
}
