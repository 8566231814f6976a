using System.Collections.Immutable;
using System.Text.Json;
using Hoopwright.Web.Engine;

namespace Hoopwright.Web.State;

/// <summary>
/// Keeps results true to the open plan: at once the drawing in sight, what is wrong and what it costs; what it stands and the
/// last word on cuts once someone pauses. A newer change always goes before what an older one still asked for.
/// </summary>
/// <param name="plan">The open plan.</param>
/// <param name="engine">Who works it out.</param>
public sealed class Live(OpenPlan plan, IEngine engine) : IDisposable
{
    private readonly Dictionary<string, Picture> deepPictures = [];
    private string figure = "bow", lookedAt = "", lookedFigure = "", workedOn = "", followed = "";
    private int round;
    private bool started, isLooking, isWorking;
    private JsonElement? look, whole;
    private (string Document, JsonElement? Stands) bowsAlone = ("", null);
    private string rulesText = "";
    private ImmutableArray<Finding> lookFindings = [], wholeFindings = [], deepFindings = [];
    private ImmutableDictionary<string, Rule> lookRules = ImmutableDictionary<string, Rule>.Empty, wholeRules = ImmutableDictionary<string, Rule>.Empty;

    /// <summary>There is something new to show.</summary>
    public event Action? Changed;

    /// <summary>The plan changed, so that something new is on its way; what is shown is not of the plan as it is now.</summary>
    public event Action? Begun;

    /// <summary>The drawing in sight; null when there is none yet.</summary>
    public Picture? Picture { get; private set; }

    /// <summary>Names of the drawings that can be had.</summary>
    public ImmutableArray<string> Figures { get; private set; } = [];

    /// <summary>Names of the drawings that rest on loads, film and cuts, once they are there.</summary>
    public ImmutableArray<string> DeepFigures => [.. deepPictures.Keys];

    /// <summary>What was found, errors first.</summary>
    public ImmutableArray<Finding> Findings { get; private set; } = [];

    /// <summary>The values that results rest on, by path; those that the plan gives may be left out.</summary>
    public ImmutableDictionary<string, Rule> Rules { get; private set; } = ImmutableDictionary<string, Rule>.Empty;

    /// <summary>The value taken where the plan is silent; null when nothing rests on it, or the plan may give it by now.</summary>
    /// <param name="path">Its path in the plan.</param>
    public Rule? RuleAt(string path) => Rules.GetValueOrDefault(path) ?? (IsBehind && wholeRules.GetValueOrDefault(path) is { Given: false } strength && PlanPath.At(plan.Root, path) is null ? strength : null);

    /// <summary>What the engine said when it failed; null when all is well.</summary>
    public string? Fault { get; private set; }

    /// <summary>True when the plan has no errors, as far as was looked.</summary>
    public bool IsUsable { get; private set; }

    /// <summary>True once the open plan was looked at, however long ago: before, nothing is known of it.</summary>
    public bool IsLooked => look is not null;

    /// <summary>True while drawing and totals are of the plan before its last change.</summary>
    public bool IsLookBehind => lookedAt != plan.Document;

    /// <summary>True while what the plan stands and its cut lists are still being worked out.</summary>
    public bool IsBehind => workedOn != plan.Document;

    /// <summary>What the bows stand by themselves, of the plan as it is now, until everything is worked out; null when that is not known.</summary>
    public JsonElement? BowsAlone => IsBehind && bowsAlone.Document == plan.Document ? bowsAlone.Stands : null;

    /// <summary>How many times there was something new to show.</summary>
    public int Version { get; private set; }

    /// <summary>The last complete results that were marked as seen; changes are told against them.</summary>
    public JsonElement? Seen { get; private set; }

    /// <summary>The last complete results, possibly of the plan before its last change.</summary>
    public JsonElement? Whole => whole;

    /// <summary>
    /// The value at a path of the results as they are now; null while it is being worked out. Lists of parts and cuts come from
    /// the last complete results until there are newer ones.
    /// </summary>
    /// <param name="path">Such as orders.total.</param>
    public JsonElement? Result(string path) =>
        !IsBehind ? Results.Find(whole, path) ?? Results.Find(look, path)
        : Results.Find(look, path) ?? (path.StartsWith("strength", StringComparison.Ordinal) ? null : Results.Find(whole, path));

    /// <summary>The freshest text at a path of the results; empty when there is none.</summary>
    /// <param name="path">Such as frame.bow.filmLineText.</param>
    public string Text(string path) => Result(path)?.ToString() ?? "";

    /// <summary>The freshest sum of money at a path of the results, to the cent; empty when there is none.</summary>
    /// <param name="path">Such as orders.total.</param>
    public string Money(string path) => Results.Cents(Result(path));

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

    /// <summary>The value at a path of the last complete results, of the plan before its last change while something is being worked out.</summary>
    /// <param name="path">Such as strength.verdict.</param>
    public JsonElement? Was(string path) => Results.Find(whole, path);

    private void Forget()
    {
        round++;
        look = whole = Seen = null;
        (Picture, workedOn, lookedAt, IsUsable, Fault) = (null, "", "", false, null);
        (lookFindings, wholeFindings, deepFindings, Findings, Figures) = ([], [], [], [], []);
        (rulesText, bowsAlone) = ("", ("", null));
        lookRules = wholeRules = Rules = ImmutableDictionary<string, Rule>.Empty;
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
            Tell();
        }
        else Kick();
    }

    /// <summary>Changes are told against what is shown now from here on.</summary>
    public void MarkSeen()
    {
        Seen = whole;
        Tell();
    }

    /// <inheritdoc/>
    public void Dispose() => plan.Changed -= Kick;

    // A drawing that goes over several sheets, cut-lists-1 and so on, is found by its name without the number.
    private Picture? Deep(string name) => deepPictures.GetValueOrDefault(name) ?? deepPictures.Values.FirstOrDefault(each =>
        each.Name.Length > name.Length + 1 && each.Name.StartsWith(name, StringComparison.Ordinal) && each.Name[name.Length] == '-' && char.IsAsciiDigit(each.Name[name.Length + 1]));

    private void Kick()
    {
        // Results of another plan are not shown for this one.
        if (followed != plan.Id)
        {
            followed = plan.Id;
            Forget();
        }
        if (!isLooking) _ = Guard(LookOn);
        if (!isWorking) _ = Guard(WorkOn);
        if (IsLookBehind && isLooking) Begun?.Invoke();
        else Tell();
    }

    private void Tell()
    {
        Version++;
        Changed?.Invoke();
    }

    private async Task Guard(Func<Task> work)
    {
        try
        {
            await work();
        }
        catch (Exception fault) when (fault is EngineException or JsonException or InvalidOperationException)
        {
            (Fault, isLooking, isWorking) = (fault.Message, false, false);
            Tell();
        }
    }

    private async Task LookOn()
    {
        isLooking = true;
        while (lookedAt != plan.Document || lookedFigure != figure)
        {
            (string document, string name, int asked) = (plan.Document, figure, round);
            // Both are asked for at once: while the page shows the totals, the engine draws.
            bool isDrawingAlone = lookedAt == document;
            Task<string>? looking = isDrawingAlone ? null : engine.LookAsync(document);
            Task<string> drawing = engine.DrawAsync(document, name);
            if (looking is not null)
            {
                JsonElement seen = Parse(await looking);
                if (asked == round)
                {
                    (lookedAt, Fault) = (document, null);
                    Take(seen);
                    Tell();
                }
            }
            JsonElement drawn = Parse(await drawing);
            if (asked != round) continue;
            lookedFigure = name;
            if (IsUsable && Results.Find(drawn, "drawing") is { } picture && (Results.Word(picture, "name") == name || Deep(name) is null)) Picture = PictureOf(picture);
            Tell();
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
            int asked = round;
            // What the bows stand by themselves is there long before everything is.
            Task<string> standing = engine.StandsAsync(document), working = engine.WholeAsync(document);
            string bows = await standing;
            if (asked == round)
            {
                bowsAlone = (document, bows.Length == 0 ? null : Parse(bows));
                Tell();
            }
            JsonElement answer = Parse(await working);
            if (asked != round) continue;
            workedOn = document;
            (wholeFindings, wholeRules) = (FindingsIn(Results.Find(answer, "results")), RulesIn(Results.Find(answer, "results")));
            // What a look at the same plan finds too is known anew after each keystroke.
            if (lookedAt == document) deepFindings = [.. wholeFindings.Except(lookFindings)];
            TakeFindings();
            if (Results.Find(answer, "results.frame") is null) continue;
            whole = Results.Find(answer, "results");
            Seen ??= whole;
            deepPictures.Clear();
            foreach (JsonElement drawing in Results.Items(Results.Find(answer, "drawings"))) deepPictures[Results.Word(drawing, "name")] = PictureOf(drawing);
            if (Deep(figure) is { } picture) Picture = picture;
            Tell();
        }
        isWorking = false;
        Tell();
    }

    private void Take(JsonElement answer)
    {
        look = Results.Find(answer, "results");
        IsUsable = Results.Find(look, "frame") is not null;
        if (IsUsable) Figures = [.. answer.GetProperty("figures").EnumerateArray().Select(each => each.GetString() ?? "")];
        lookFindings = FindingsIn(look);
        // Most changes leave what is taken where the plan is silent as it was.
        string text = Results.Find(look, "rules")?.GetRawText() ?? "";
        if (text != rulesText) (rulesText, lookRules) = (text, RulesIn(look));
        TakeFindings();
    }

    // Until everything is worked out anew, what strength found stands as of before the change, so that nothing comes and goes under
    // the eyes; what it assumed stands as long as the plan still does not say it.
    private void TakeFindings()
    {
        if (!IsBehind)
        {
            (Findings, Rules) = (wholeFindings, wholeRules);
            return;
        }
        Findings =
        [
            .. lookFindings,
            .. deepFindings.Where(found => IsUsable && !lookFindings.Contains(found)
                && (found.Severity != "assumption" || (!lookRules.ContainsKey(found.Path) && PlanPath.At(plan.Root, found.Path) is null)))
                .Select(found => found.Severity == "assumption" ? found : found with { IsBehind = true }),
        ];
        Rules = lookRules;
    }

    private static ImmutableArray<Finding> FindingsIn(JsonElement? results) =>
        [.. FindingsOf(Results.Find(results, "diagnostics")), .. FindingsOf(Results.Find(results, "assumptions"))];

    /// <summary>A list of what was found.</summary>
    /// <param name="list">The list as the engine writes it; none when there is none.</param>
    public static ImmutableArray<Finding> FindingsOf(JsonElement? list) =>
    [
        .. Results.Items(list).Select(each =>
            new Finding(Results.Word(each, "severity"), Results.Word(each, "code"), Results.Word(each, "path"), Results.Word(each, "message"), Maybe(each, "seen"), Maybe(each, "accepted"))),
    ];

    private static ImmutableDictionary<string, Rule> RulesIn(JsonElement? results) => Results.Items(Results.Find(results, "rules"))
        .Select(each => new Rule(Results.Word(each, "path"), Results.Word(each, "value"), Results.Word(each, "says"), Flag(each, "given"), Flag(each, "assumption"), Results.Word(each, "source")))
        .GroupBy(rule => rule.Path).ToImmutableDictionary(same => same.Key, same => same.First());

    private static Picture PictureOf(JsonElement drawing) => new(Results.Word(drawing, "name"), Results.Word(drawing, "title"), Results.Word(drawing, "description"), Results.Word(drawing, "svg"));

    private static string? Maybe(JsonElement group, string name) => Results.Find(group, name)?.GetString();

    private static bool Flag(JsonElement group, string name) => Results.Find(group, name) is { ValueKind: JsonValueKind.True };

    // Kept as long as anything shown comes from it, and never given back to a pool.
    private static JsonElement Parse(string json) => JsonElement.Parse(json);
}
