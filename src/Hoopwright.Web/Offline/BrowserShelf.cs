using Microsoft.JSInterop;

namespace Hoopwright.Web.Offline;

/// <summary>The shelf in the browser's own database.</summary>
/// <param name="js">The browser.</param>
/// <param name="clock">Says when a plan was changed.</param>
public sealed class BrowserShelf(IJSRuntime js, TimeProvider clock) : IShelf, IDisposable
{
    private readonly string tab = Guid.NewGuid().ToString("n");
    private Task<IJSObjectReference>? module;
    private DotNetObjectReference<BrowserShelf>? self;

    /// <inheritdoc/>
    public event Action<string>? ChangedElsewhere;

    /// <inheritdoc/>
    public async Task<ShelfState> StateAsync() => await (await Module()).InvokeAsync<ShelfState>("state");

    /// <inheritdoc/>
    public async Task<ShelfAnswer> ListAsync() => await (await Module()).InvokeAsync<ShelfAnswer>("list");

    /// <inheritdoc/>
    public async Task<ShelfAnswer> LoadAsync(string id) => await (await Module()).InvokeAsync<ShelfAnswer>("load", id, false);

    /// <inheritdoc/>
    public async Task<ShelfAnswer> OpenAsync(string id) => await (await Module()).InvokeAsync<ShelfAnswer>("load", id, true);

    /// <inheritdoc/>
    public async Task<ShelfAnswer> AddAsync(string id, string name, string document) => await (await Module()).InvokeAsync<ShelfAnswer>("add", id, name, document, Now);

    /// <inheritdoc/>
    public async Task<ShelfAnswer> RemoveAsync(string id) => await (await Module()).InvokeAsync<ShelfAnswer>("remove", id);

    /// <inheritdoc/>
    public async Task<ShelfAnswer> ChangeAsync(string id, string path, string? value) => await (await Module()).InvokeAsync<ShelfAnswer>("change", id, path, value, Now, tab);

    /// <inheritdoc/>
    public async Task<ShelfAnswer> TurnAsync(string id, bool back) => await (await Module()).InvokeAsync<ShelfAnswer>("turn", id, back, Now, tab);

    /// <summary>Called by the browser when another tab changed a plan.</summary>
    [JSInvokable]
    public void PlanChangedElsewhere(string id) => ChangedElsewhere?.Invoke(id);

    /// <inheritdoc/>
    public void Dispose() => self?.Dispose();

    private double Now => clock.GetUtcNow().ToUnixTimeMilliseconds();

    private Task<IJSObjectReference> Module() => module ??= Open();

    private async Task<IJSObjectReference> Open()
    {
        IJSObjectReference opened = await js.InvokeAsync<IJSObjectReference>("import", "./js/shelf.js");
        self = DotNetObjectReference.Create(this);
        await opened.InvokeVoidAsync("watch", self, tab);
        return opened;
    }
}
