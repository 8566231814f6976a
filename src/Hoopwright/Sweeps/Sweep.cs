using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Hoopwright.Cutting;
using Hoopwright.Diagnostics;
using Hoopwright.Packets;
using Hoopwright.Plans;

namespace Hoopwright.Sweeps;

/// <summary>
/// Many designs of one tunnel: every combination of the values of the varied fields. Designs are worked out one by one and
/// do not know of each other, so they can be worked out in any order and on any number of cores.
/// </summary>
public sealed class Sweep
{
    /// <summary>The most designs of one sweep.</summary>
    public const int MostDesigns = 5000;

    private readonly string plan;
    private readonly Prices? book;
    private readonly ImmutableArray<ImmutableArray<string>> json;

    private Sweep(string plan, ImmutableArray<VariedField> fields, ImmutableArray<ImmutableArray<string>> json, Prices? book, Quantities.UnitSystem units, string currency)
    {
        (this.plan, Fields, this.json, this.book, Units, Currency) = (plan, fields, json, book, units, currency);
        Designs = fields.Aggregate(1, (product, field) => product * field.Values.Length);
        string asked = string.Join('\n', fields.Select(field => $"{field.Path}={string.Join('\u001f', field.Values)}").Prepend(plan)
            .Append(book is null ? "" : Encoding.UTF8.GetString(PlanWriter.Write(book))).Append(typeof(Sweep).Module.ModuleVersionId.ToString()));
        Fingerprint = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(asked)));
    }

    /// <summary>The varied fields.</summary>
    public ImmutableArray<VariedField> Fields { get; }

    /// <summary>How many designs there are.</summary>
    public int Designs { get; }

    /// <summary>The units results are shown in.</summary>
    public Quantities.UnitSystem Units { get; }

    /// <summary>The currency of the costs.</summary>
    public string Currency { get; }

    /// <summary>The same for the same plan, fields, prices and build of the program, so that kept designs are never mixed with others.</summary>
    public string Fingerprint { get; }

    /// <summary>Asks for a sweep.</summary>
    /// <param name="plan">The bytes of the plan.</param>
    /// <param name="fields">What to vary.</param>
    /// <param name="book">A price book whose prices come after those of the plan; null for none.</param>
    public static SweepReading Read(ReadOnlyMemory<byte> plan, ImmutableArray<VariedField> fields, Prices? book = null)
    {
        PlanReading asItIs = PlanReader.Read(plan);
        if (asItIs.TooNew || PlanEdit.Text(plan) is not { } text) return new SweepReading(null, Errors(asItIs));
        var found = new List<Diagnostic>();
        foreach (VariedField twice in fields.GroupBy(field => field.Path).Where(group => group.Count() > 1).Select(group => group.First()))
            found.Add(new Diagnostic("sweep.field-twice", Severity.Error, twice.Path, "A field is varied twice; it can have one list of values.", null, "all its values in one list"));
        decimal designs = fields.Aggregate(1m, (product, field) => Math.Min(product * field.Values.Length, 1e15m));
        if (designs > MostDesigns)
        {
            found.Add(new Diagnostic(
                "sweep.too-many", Severity.Error, fields[0].Path, "That are more designs than one sweep works out; vary fewer fields or give fewer values.",
                string.Create(CultureInfo.InvariantCulture, $"{designs:0} designs"), string.Create(CultureInfo.InvariantCulture, $"up to {MostDesigns} designs")));
            return new SweepReading(null, [.. found]);
        }
        HashSet<string> before = [.. Errors(asItIs).Select(each => each.Code + each.Path + each.Seen)];
        ImmutableArray<ImmutableArray<string>> json = [.. fields.Select(field => ImmutableArray.CreateRange(field.Values.Select(value => Accepted(text, field.Path, value, before, found))))];
        if (found.Count > 0) return new SweepReading(null, [.. found.Distinct()]);
        return new SweepReading(
            new Sweep(text, fields, json, book, asItIs.Plan.Units ?? Quantities.UnitSystem.UsCustomary, asItIs.Plan.Prices.Currency ?? book?.Currency ?? Pricing.ExamplePrices.Currency), []);
    }

    /// <summary>The values of a design, as typed.</summary>
    /// <param name="number">Its number, from 0.</param>
    public ImmutableArray<string> ValuesOf(int number) => [.. Turned(number).Select((value, field) => Fields[field].Values[value])];

    /// <summary>The plan of a design, as read.</summary>
    /// <param name="number">Its number, from 0.</param>
    public PlanReading PlanOf(int number) => PlanReader.Read(PlanEdit.With(plan, Turned(number).Select((value, field) => (Fields[field].Path, json[field][value])))
        ?? throw new InvalidOperationException("A path that led to a field before does not do so now."));

    /// <summary>Works out a design.</summary>
    /// <param name="number">Its number, from 0.</param>
    public SweptDesign Work(int number) => SweptDesign.Of(number, ValuesOf(number), TunnelWorks.Plan(PlanOf(number), book, CutEffort.Least));

    private int[] Turned(int number)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(number, Designs);
        int[] turned = new int[Fields.Length];
        for (int field = Fields.Length - 1; field >= 0; field--)
            (number, turned[field]) = Math.DivRem(number, Fields[field].Values.Length);
        return turned;
    }

    /// <summary>The value in the form that the field takes. Numbers, true and false stand in some fields as they are and in some as texts.</summary>
    private static string Accepted(string plan, string path, string value, HashSet<string> before, List<Diagnostic> found)
    {
        string[] forms = PlanEdit.AsJson(value) is { } own ? [own, PlanEdit.AsText(value)] : [PlanEdit.AsText(value)];
        ImmutableArray<Diagnostic>? first = null;
        foreach (string form in forms)
        {
            ImmutableArray<Diagnostic> wrong = PlanEdit.With(plan, [(path, form)]) is { } changed
                ? [.. Errors(PlanReader.Read(changed)).Where(each => !before.Contains(each.Code + each.Path + each.Seen))]
                : [new Diagnostic("sweep.no-such-path", Severity.Error, path, "There is no field at this path of the plan.", path, "a path such as frame.bowSpacing or ends.front.doors[0].width")];
            if (wrong.IsEmpty) return form;
            first ??= wrong;
        }
        found.AddRange(first ?? []);
        return forms[0];
    }

    private static ImmutableArray<Diagnostic> Errors(PlanReading reading) => [.. reading.Diagnostics.Where(each => each.Severity == Severity.Error)];
}
