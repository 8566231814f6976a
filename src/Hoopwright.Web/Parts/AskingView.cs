using System.Text.Json;
using Hoopwright.Web.Engine;
using Hoopwright.Web.State;
using Microsoft.AspNetCore.Components;

namespace Hoopwright.Web.Parts;

/// <summary>A part of the page that asks the engine something of its own of the open plan, anew when the plan or what is asked changes.</summary>
public abstract class AskingView : LiveView
{
    private string asked = "";

    /// <summary>The open plan.</summary>
    [Inject] protected OpenPlan Plan { get; set; } = null!;

    /// <summary>Who works it out.</summary>
    [Inject] protected IEngine Engine { get; set; } = null!;

    /// <summary>The last answer; null when there is none.</summary>
    protected JsonElement? Answer { get; private set; }

    /// <summary>What the engine said when it failed; null when all is well.</summary>
    protected string? Fault { get; private set; }

    /// <summary>True while it is being worked out.</summary>
    protected bool IsWorking { get; private set; }

    /// <summary>What is asked besides the plan and the language; null when there is nothing to ask.</summary>
    protected abstract string? Question { get; }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Live.Changed += Ask;
        Words.Changed += Ask;
        Ask();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Live.Changed -= Ask;
        Words.Changed -= Ask;
        base.Dispose(disposing);
    }

    /// <summary>Asks the engine.</summary>
    /// <param name="document">The plan as text.</param>
    /// <param name="question">What is asked of it.</param>
    protected abstract Task<string> AskEngineAsync(string document, string question);

    /// <summary>A word of the answer; empty when it has none at the path.</summary>
    protected string Word(string path) => Results.Word(Answer, path);

    /// <summary>Asks anew, where what was asked has changed.</summary>
    protected void Ask() => _ = InvokeAsync(AskAsync);

    private async Task AskAsync()
    {
        // While someone types the drawing goes first.
        if (Question is not { } question || Live.IsLookBehind) return;
        string document = Plan.Document, wanted = $"{Words.Language}\n{question}\n{document}";
        if (wanted == asked) return;
        (asked, IsWorking) = (wanted, true);
        StateHasChanged();
        try
        {
            string answer = await AskEngineAsync(document, question);
            // An answer to what was asked before comes too late.
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
