using System.Text.Json;
using System.Text.Json.Nodes;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>How one kind of value is read from a document, written to it, and described in the schema.</summary>
/// <typeparam name="T">The value in the plan, with a form that stands for "not given".</typeparam>
internal abstract class PlanValue<T>
{
    /// <summary>True when a plan that leaves the field out says nothing less.</summary>
    public abstract bool IsAbsent(T value);

    /// <summary>Reads a value, or says what is wrong with it.</summary>
    /// <param name="node">The value in the document.</param>
    /// <param name="problems">Where to say what is wrong.</param>
    /// <param name="value">What was read.</param>
    /// <returns>False when nothing was read; then something was said.</returns>
    public abstract bool Read(PlanNode node, PlanProblems problems, out T value);

    /// <summary>Writes a value that is not absent.</summary>
    public abstract void Write(T value, Utf8JsonWriter writer);

    /// <summary>What such a value looks like in the file, for someone who left it out.</summary>
    public abstract string Example(UnitSystem units);

    /// <summary>Puts into the schema of the value what its C# type does not tell: words, patterns, bounds.</summary>
    public virtual void Describe(JsonObject schema)
    {
    }

    /// <summary>What a field within the value means; null when it has none there.</summary>
    /// <param name="path">The path from the value on.</param>
    public virtual string? SentenceAt(string path) => null;

    /// <summary>Says that a value is of the wrong kind altogether.</summary>
    protected static void WrongKind(PlanNode node, PlanProblems problems, string wanted, string accepted) =>
        problems.Error(
            PlanCodes.WrongKind, node,
            node.Kind == PlanNodeKind.Null
                ? $"The field has no value; it must be {wanted}, or be left out."
                : $"The value must be {wanted}.",
            accepted);
}
