using Hoopwright.Web.Engine;
using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.AspNetCore.Components;

namespace Hoopwright.Web.Parts;

/// <summary>A part of the page that shows results, and is drawn anew when they or the language change.</summary>
public abstract class LiveView : ComponentBase, IDisposable
{
    private int drawn;

    /// <summary>The results.</summary>
    [Inject] protected Live Live { get; set; } = null!;

    /// <summary>The texts.</summary>
    [Inject] protected Wording Words { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Listens no longer.</summary>
    /// <param name="disposing">True when the page lets the part go.</param>
    protected virtual void Dispose(bool disposing)
    {
        Live.Changed -= Follow;
        Words.Changed -= Redraw;
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Live.Changed += Follow;
        Words.Changed += Redraw;
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender) => drawn = Live.Version;

    // Mostly the page around it was drawn first, and with it this part.
    private void Follow()
    {
        if (drawn != Live.Version) Redraw();
    }

    /// <summary>Has a file made, and tells what came of it.</summary>
    /// <param name="making">Makes it; false when the plan has errors.</param>
    protected async Task<string> SayMadeAsync(Func<Task<bool>> making)
    {
        ArgumentNullException.ThrowIfNull(making);
        try
        {
            return Words[await making() ? "packet.made" : "packet.errors"];
        }
        catch (EngineException fault)
        {
            return Words.Of("fault.engine", fault.Message);
        }
    }

    /// <summary>Draws the part anew.</summary>
    protected void Redraw() => _ = InvokeAsync(StateHasChanged);
}
