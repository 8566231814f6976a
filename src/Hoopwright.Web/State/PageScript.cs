using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Hoopwright.Web.State;

/// <summary>The small things that only the page itself can do.</summary>
/// <param name="js">The browser.</param>
public sealed class PageScript(IJSRuntime js)
{
    private Task<IJSObjectReference>? module;

    /// <summary>Saves text as a file.</summary>
    public async Task SaveTextAsync(string text, string fileName) => await (await Module()).InvokeVoidAsync("saveText", text, fileName, "application/json");

    /// <summary>Saves bytes as a file.</summary>
    public async Task SaveBytesAsync(byte[] bytes, string fileName, string type) => await (await Module()).InvokeVoidAsync("saveBytes", bytes, fileName, type);

    /// <summary>Keeps a choice of the reader on this device.</summary>
    public async Task RememberAsync(string name, string value) => await (await Module()).InvokeVoidAsync("remember", name, value);

    /// <summary>A choice kept before; null when there is none.</summary>
    public async Task<string?> RecallAsync(string name) => await (await Module()).InvokeAsync<string?>("recall", name);

    /// <summary>Light, dark, or as the device says when empty.</summary>
    public async Task ThemeAsync(string name) => await (await Module()).InvokeVoidAsync("theme", name);

    /// <summary>Says which language the page speaks.</summary>
    public async Task LanguageAsync(string code) => await (await Module()).InvokeVoidAsync("language", code);

    /// <summary>The picture chosen in a file field, made small enough for a plan, as a data address; null when it is no picture.</summary>
    public async Task<string?> SmallPictureAsync(ElementReference field) => await (await Module()).InvokeAsync<string?>("smallPicture", field);

    /// <summary>Opens the browser's printing.</summary>
    public async Task PrintAsync() => await (await Module()).InvokeVoidAsync("print");

    /// <summary>Marks the parts of a drawing on certain layers.</summary>
    public async Task HighlightAsync(ElementReference host, IEnumerable<string> layers) => await (await Module()).InvokeVoidAsync("highlight", host, layers);

    /// <summary>Tells a component which layer of a drawing was touched, by its method LayerTouched.</summary>
    public async Task WatchLayersAsync<T>(ElementReference host, DotNetObjectReference<T> page)
        where T : class => await (await Module()).InvokeVoidAsync("watchLayers", host, page);

    /// <summary>Tells a component when a drawing is touched on a narrow screen, by its method Touched.</summary>
    public async Task WatchTouchAsync<T>(ElementReference host, DotNetObjectReference<T> page)
        where T : class => await (await Module()).InvokeVoidAsync("watchTouch", host, page);

    /// <summary>Puts the keyboard on the heading of the stage in sight.</summary>
    public async Task FocusHeadingAsync() => await (await Module()).InvokeVoidAsync("focusHeading");

    /// <summary>Brings the chosen stage and drawing into sight in their rows.</summary>
    public async Task SettleRowsAsync() => await (await Module()).InvokeVoidAsync("settleRows");

    /// <summary>Shows a dialog over the whole screen; its component is told by its method Closed when it is left.</summary>
    public async Task OpenDialogAsync<T>(ElementReference dialog, DotNetObjectReference<T> page)
        where T : class => await (await Module()).InvokeVoidAsync("openDialog", dialog, page);

    /// <summary>Closes a dialog.</summary>
    public async Task CloseDialogAsync(ElementReference dialog) => await (await Module()).InvokeVoidAsync("closeDialog", dialog);

    /// <summary>Puts the keyboard on the field of a path; false when there is none on the page.</summary>
    public async Task<bool> FocusFieldAsync(string path) => await (await Module()).InvokeAsync<bool>("focusField", path);

    /// <summary>Tells a component of dropped files, by its method FileDropped, without the text of one that has more bytes.</summary>
    public async Task WatchDropsAsync<T>(DotNetObjectReference<T> page, long mostBytes)
        where T : class => await (await Module()).InvokeVoidAsync("watchDrops", page, mostBytes);

    /// <summary>Tells a component when the network comes and goes, by its method NetworkChanged; whether there is one now.</summary>
    public async Task<bool> WatchNetworkAsync<T>(DotNetObjectReference<T> page)
        where T : class => await (await Module()).InvokeAsync<bool>("watchNetwork", page);

    private Task<IJSObjectReference> Module() => module ??= js.InvokeAsync<IJSObjectReference>("import", "./js/page.js").AsTask();
}
