using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>One field of a section: its name in the file and the way in and out of the record.</summary>
/// <typeparam name="TSection">The section.</typeparam>
/// <param name="name">Its name in the file.</param>
internal abstract class PlanField<TSection>(string name)
{
    /// <summary>Its name in the file.</summary>
    public string Name { get; } = name;

    /// <summary>True when a section without it means nothing.</summary>
    public bool Required { get; init; }

    /// <summary>Reads the field into the section; the section as it was when the value is faulty.</summary>
    public abstract TSection Read(TSection section, PlanNode node, PlanProblems problems);

    /// <summary>Says what is missing when the field is not there.</summary>
    public abstract void Miss(PlanNode section, PlanProblems problems);

    /// <summary>True when the section does not give the field.</summary>
    public abstract bool IsAbsent(TSection section);

    /// <summary>Writes name and value, when given.</summary>
    public abstract void Write(TSection section, Utf8JsonWriter writer);

    /// <summary>What its value looks like in the file.</summary>
    public abstract string Example(UnitSystem units);

    /// <summary>What a field within its value means; null when it has none there.</summary>
    /// <param name="path">The path from the value on.</param>
    public abstract string? SentenceAt(string path);

    /// <summary>Completes the field's schema.</summary>
    public abstract void Describe(JsonObject schema);
}

/// <summary>A field with a value of a certain kind.</summary>
/// <typeparam name="TSection">The section.</typeparam>
/// <typeparam name="T">The value in the plan.</typeparam>
/// <param name="name">Its name in the file.</param>
/// <param name="kind">How the value is read and written.</param>
/// <param name="get">Takes the value out of a section.</param>
/// <param name="with">Gives the section with another value.</param>
internal sealed class PlanField<TSection, T>(
    string name, PlanValue<T> kind, Func<TSection, T> get, Func<TSection, T, TSection> with) : PlanField<TSection>(name)
{
    public override TSection Read(TSection section, PlanNode node, PlanProblems problems) =>
        kind.Read(node, problems, out var value) ? with(section, value) : section;

    public override void Miss(PlanNode section, PlanProblems problems)
    {
        if (problems.BrokeOff)
            return;

        // A missing group is read as an empty one, so that what is missing is named down to the field.
        if (kind is IPlanGroup)
        {
            kind.Read(new PlanNode(PlanNodeKind.Group, section, Name, 0, section.Offset, section.Place, ""), problems, out _);
            return;
        }

        problems.Missing(section, Name, kind.Example(problems.Units));
    }

    public override bool IsAbsent(TSection section) => kind.IsAbsent(get(section));

    public override void Write(TSection section, Utf8JsonWriter writer)
    {
        var value = get(section);
        if (kind.IsAbsent(value))
            return;
        writer.WritePropertyName(Name);
        kind.Write(value, writer);
    }

    public override string Example(UnitSystem units) => kind.Example(units);

    public override string? SentenceAt(string path) => kind.SentenceAt(path);

    public override void Describe(JsonObject schema) => kind.Describe(schema);
}
