using Hoopwright.Web.State;
using Microsoft.AspNetCore.Components;

namespace Hoopwright.Web.Parts;

/// <summary>A part of the page that asks the engine something of the plan and the weather file that is open.</summary>
public abstract class WeatherView : AskingView
{
    /// <summary>The weather file that is open.</summary>
    [Inject] protected WeatherDesk Desk { get; set; } = null!;

    /// <inheritdoc/>
    protected override string? Question => Desk.Text.Length == 0 ? null : Desk.Text;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Desk.Enter();
        Desk.Changed += Ask;
        base.OnInitialized();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Desk.Leave();
        Desk.Changed -= Ask;
        base.Dispose(disposing);
    }
}
