using Hoopwright.Web.State;
using Hoopwright.Web.Words;
using Microsoft.AspNetCore.Components;

namespace Hoopwright.Web.Parts;

/// <summary>A part of the page that shows results, and is drawn anew when they or the language change.</summary>
public abstract class LiveView : ComponentBase, IDisposable
{
    /// <summary>The results.</summary>
    [Inject] protected Live Live { get; set; } = null!;

    /// <summary>The texts.</summary>
    [Inject] protected Wording Words { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose()
    {
        Live.Changed -= Redraw;
        Words.Changed -= Redraw;
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Live.Changed += Redraw;
        Words.Changed += Redraw;
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
