using Hoopwright.Web.Offline;
using Microsoft.AspNetCore.Components;

namespace Hoopwright.Web.State;

/// <summary>Takes plan files in, from wherever they come: each goes on the shelf and is opened.</summary>
/// <param name="shelf">Where plans are kept.</param>
/// <param name="plan">The open plan.</param>
/// <param name="weather">Where weather files go while a page reads them.</param>
/// <param name="way">The way to a plan's page.</param>
public sealed class Intake(IShelf shelf, OpenPlan plan, WeatherDesk weather, NavigationManager way)
{
    /// <summary>A file was taken in, or turned away.</summary>
    public event Action? Changed;

    /// <summary>Why the last file was turned away, as a word of the page's; empty when it was not.</summary>
    public string Refusal { get; private set; } = "";

    /// <summary>Takes the text of a file in.</summary>
    /// <param name="text">The file; null when it is too large to be read.</param>
    public async Task TakeAsync(string? text)
    {
        if (text is null)
        {
            Refusal = "shelf.large";
            Changed?.Invoke();
            return;
        }
        // Every plan file says so; what does not is weather on the page that reads it.
        if (weather.IsOpen && !text.Contains("\"hoopwright\"", StringComparison.Ordinal))
        {
            Refusal = "";
            weather.Open(text, "");
            Changed?.Invoke();
            return;
        }
        string? plain = PlanText.Plain(text);
        Refusal = plain is null ? "shelf.no-plan" : "";
        if (plain is not null)
        {
            string id = PlanText.NewId();
            ShelfAnswer answer = await shelf.AddAsync(id, PlanPath.TextAt(PlanText.Tree(plain), "name"), plain);
            // A plan that cannot be kept can still be worked on: it opens all the same, and its page says so.
            if (!answer.Ok) plan.Begin(id, plain, answer);
            way.NavigateTo($"plan/{id}");
        }
        Changed?.Invoke();
    }

    /// <summary>The reader has seen that a file was turned away.</summary>
    public void Forget()
    {
        Refusal = "";
        Changed?.Invoke();
    }
}
