using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.Web.Engine;

namespace Hoopwright.Web.State;

/// <summary>
/// Keeps results true to the open plan: first the drawing in sight and what is wrong, then orders, then everything. A newer
/// change always goes before what an older one still asked for.
/// </summary>
/// <param name="plan">The open plan.</param>
/// <param name="engine">Who works it out.</param>
public sealed class Live(OpenPlan plan, IEngine engine) : IDisposable
{
    private readonly Dictionary<string, Picture> deepPictures = [];
    private string figure = "bow", lookedAt = "", lookedFigure = "", workedOn = "";
    private bool started, isLooking, isWorking;
    private JsonElement? look, orders, whole;

    /// <summary>There is something new to show.</summary>
    public event Action? Changed;

    /// <summary>The drawing in sight; null when there is none yet.</summary>
    public Picture? Picture { get; private set; }

    /// <summary>Names of the drawings that can be had.</summary>
    public ImmutableArray<string> Figures { get; private set; } = [];

    /// <summary>Names of the drawings that rest on loads, film and cuts, once they are there.</summary>
    public ImmutableArray<string> DeepFigures => [.. deepPictures.Keys];

    /// <summary>What was found, errors first.</summary>
    public ImmutableArray<Finding> Findings { get; private set; } = [];

    /// <summary>The values that results rest on, by path.</summary>
    public ImmutableDictionary<string, Rule> Rules { get; private set; } = ImmutableDictionary<string, Rule>.Empty;

    /// <summary>What the engine said when it failed; null when all is well.</summary>
    public string? Fault { get; private set; }

    /// <summary>True when the plan has no errors, as far as was looked.</summary>
    public bool IsUsable { get; private set; }

    /// <summary>True while something newer than what is shown is being worked out.</summary>
    public bool IsBehind => workedOn != plan.Document;

    /// <summary>The last complete results that were marked as seen; changes are told against them.</summary>
    public JsonElement? Seen { get; private set; }

    /// <summary>The last complete results, possibly of the plan before its last change.</summary>
    public JsonElement? Whole => whole;

    /// <summary>The freshest value at a path of the results.</summary>
    /// <param name="path">Such as orders.total.</param>
    public JsonElement? Result(string path) =>
        Results.Find(IsBehind ? null : whole, path) ?? Results.Find(look, path) ?? Results.Find(orders, path) ?? Results.Find(whole, path);

    /// <summary>The freshest text at a path of the results; empty when there is none.</summary>
    /// <param name="path">Such as frame.bow.filmLineText.</param>
    public string Text(string path) => Result(path) is { } value ? (value.ValueKind == JsonValueKind.String ? value.GetString() ?? "" : value.ToString()) : "";

    /// <summary>Starts to follow the open plan.</summary>
    public void Follow()
    {
        if (!started)
        {
            started = true;
            plan.Changed += Kick;
        }
        Kick();
    }

    /// <summary>Forgets another plan's results.</summary>
    public void Forget()
    {
        look = orders = whole = Seen = null;
        (Picture, workedOn, lookedAt) = (null, "", "");
        deepPictures.Clear();
    }

    /// <summary>Puts a drawing in sight.</summary>
    /// <param name="name">Its name.</param>
    public void Show(string name)
    {
        figure = name;
        if (Deep(name) is { } picture)
        {
            Picture = picture;
            Changed?.Invoke();
        }
        else Kick();
    }

    /// <summary>Changes are told against what is shown now from here on.</summary>
    public void MarkSeen()
    {
        Seen = whole;
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose() => plan.Changed -= Kick;

    // A drawing that goes over several sheets is found by the beginning of its name.
    private Picture? Deep(string name) => deepPictures.GetValueOrDefault(name) ?? deepPictures.Values.FirstOrDefault(each => each.Name.StartsWith(name, StringComparison.Ordinal));

    private void Kick()
    {
        if (!isLooking) _ = Guard(LookOn);
        if (!isWorking) _ = Guard(WorkOn);
        Changed?.Invoke();
    }

    private async Task Guard(Func<Task> work)
    {
        try
        {
            await work();
        }
        catch (Exception fault) when (fault is Microsoft.JSInterop.JSException or JsonException or InvalidOperationException)
        {
            (Fault, isLooking, isWorking) = (fault.Message, false, false);
            Changed?.Invoke();
        }
    }

    private async Task LookOn()
    {
        isLooking = true;
        bool hasOrders = true;
        while (lookedAt != plan.Document || lookedFigure != figure || !hasOrders)
        {
            if (lookedAt != plan.Document || lookedFigure != figure)
            {
                bool isNew = lookedAt != plan.Document;
                (string document, string name) = (plan.Document, figure);
                JsonElement answer = Parse(await engine.LookAsync(document, name));
                (lookedAt, lookedFigure, Fault) = (document, name, null);
                Take(answer, name);
                hasOrders = hasOrders && !isNew;
            }
            else
            {
                hasOrders = true;
                if (IsUsable) orders = Results.Find(Parse(await engine.OrdersAsync(lookedAt)), "results");
            }
            Changed?.Invoke();
        }
        isLooking = false;
    }

    private async Task WorkOn()
    {
        isWorking = true;
        while (workedOn != plan.Document)
        {
            // Someone who types goes on typing; the long work waits for the pause.
            string document;
            do
            {
                document = plan.Document;
                await Task.Delay(350);
            }
            while (document != plan.Document);
            JsonElement answer = Parse(await engine.WholeAsync(document));
            workedOn = document;
            if (Results.Find(answer, "results.frame") is null) continue;
            whole = Results.Find(answer, "results");
            Seen ??= whole;
            deepPictures.Clear();
            foreach (JsonElement drawing in Results.Items(Results.Find(answer, "drawings"))) deepPictures[Results.Word(drawing, "name")] = PictureOf(drawing);
            if (workedOn == plan.Document) TakeFindings(whole);
            if (Deep(figure) is { } picture) Picture = picture;
            Changed?.Invoke();
        }
        isWorking = false;
        Changed?.Invoke();
    }

    private void Take(JsonElement answer, string name)
    {
        look = Results.Find(answer, "results");
        IsUsable = Results.Find(look, "frame") is not null;
        if (IsUsable)
        {
            Figures = [.. answer.GetProperty("figures").EnumerateArray().Select(each => each.GetString() ?? "")];
            if (Results.Find(answer, "drawing") is { } drawing && (Results.Word(drawing, "name") == name || Deep(name) is null)) Picture = PictureOf(drawing);
        }
        if (workedOn != lookedAt || !IsUsable) TakeFindings(look);
    }

    private void TakeFindings(JsonElement? results)
    {
        Findings =
        [
            .. Results.Items(Results.Find(results, "diagnostics")).Concat(Results.Items(Results.Find(results, "assumptions"))).Select(each =>
                new Finding(Results.Word(each, "severity"), Results.Word(each, "path"), Results.Word(each, "message"), Maybe(each, "seen"), Maybe(each, "accepted"))),
        ];
        Rules = Results.Items(Results.Find(results, "rules"))
            .Select(each => new Rule(Results.Word(each, "path"), Results.Word(each, "value"), Results.Word(each, "says"), Flag(each, "given"), Flag(each, "assumption"), Results.Word(each, "source")))
            .GroupBy(rule => rule.Path).ToImmutableDictionary(same => same.Key, same => same.First());
    }

    private static Picture PictureOf(JsonElement drawing) => new(Results.Word(drawing, "name"), Results.Word(drawing, "title"), Results.Word(drawing, "description"), Results.Word(drawing, "svg"));

    private static string? Maybe(JsonElement group, string name) => Results.Find(group, name)?.GetString();

    private static bool Flag(JsonElement group, string name) => Results.Find(group, name) is { ValueKind: JsonValueKind.True };

    private static JsonElement Parse(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return document.RootElement.Clone();
    }
}
