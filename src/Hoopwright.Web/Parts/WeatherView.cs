using System.Text.Json;
using Hoopwright.Web.Engine;
using Hoopwright.Web.State;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Hoopwright.Web.Parts;

/// <summary>A part of the page that asks the engine something of the plan and the weather file that is open, anew when either changes.</summary>
public abstract class WeatherView : LiveView
{
    // A year of hours is under 2 MB; thirty years of them still open.
    private const long MostBytes = 64 * 1024 * 1024;
    private string asked = "";

    /// <summary>The open plan.</summary>
    [Inject] protected OpenPlan Plan { get; set; } = null!;

    /// <summary>Who works it out.</summary>
    [Inject] protected IEngine Engine { get; set; } = null!;

    /// <summary>The weather file that is open.</summary>
    [Inject] protected WeatherDesk Desk { get; set; } = null!;

    /// <summary>The last answer; null when there is none.</summary>
    protected JsonElement? Answer { get; private set; }

    /// <summary>What the engine said when it failed; null when all is well.</summary>
    protected string? Fault { get; private set; }

    /// <summary>True while it is being worked out.</summary>
    protected bool IsWorking { get; private set; }

    /// <summary>True when the file chosen last was no weather file of any length in use.</summary>
    protected bool IsTooLarge { get; private set; }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Desk.Enter();
        Desk.Changed += Ask;
        Live.Changed += Ask;
        Words.Changed += Ask;
        Ask();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Desk.Leave();
        Desk.Changed -= Ask;
        Live.Changed -= Ask;
        Words.Changed -= Ask;
        base.Dispose(disposing);
    }

    /// <summary>Asks the engine.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="weather">The file as text.</param>
    protected abstract Task<string> AskEngineAsync(string document, string weather);

    /// <summary>A word of the answer; empty when it has none at the path.</summary>
    protected string Word(string path) => Results.Word(Answer, path);

    /// <summary>What was found, with what was seen and what would do.</summary>
    protected string Told(JsonElement found) => string.Join(' ', new[]
    {
        Results.Word(found, "message"),
        Results.Word(found, "seen") is { Length: > 0 } seen ? Words.Of("seen", seen) : "",
        Results.Word(found, "accepted") is { Length: > 0 } would ? Words.Of("accepted", would) : "",
    }.Where(part => part.Length > 0));

    /// <summary>Opens the file that was chosen.</summary>
    protected async Task TakeFile(InputFileChangeEventArgs chosen)
    {
        ArgumentNullException.ThrowIfNull(chosen);
        IsTooLarge = chosen.File.Size > MostBytes;
        if (IsTooLarge) return;
        using StreamReader reader = new(chosen.File.OpenReadStream(MostBytes));
        Desk.Open(await reader.ReadToEndAsync(), chosen.File.Name);
    }

    private void Ask() => _ = InvokeAsync(AskAsync);

    private async Task AskAsync()
    {
        string document = Plan.Document, wanted = $"{Words.Language}\n{document}\n{Desk.Text}";
        if (wanted == asked || Desk.Text.Length == 0 || Live.IsLookBehind) return;
        (asked, IsWorking) = (wanted, true);
        StateHasChanged();
        try
        {
            string answer = await AskEngineAsync(document, Desk.Text);
            if (wanted != asked) return;
            Fault = null;
            Answer = answer.Length == 0 ? null : JsonElement.Parse(answer);
        }
        catch (EngineException said)
        {
            if (wanted == asked) (Fault, asked) = (said.Message, "");
        }
        IsWorking = false;
        StateHasChanged();
    }
}
