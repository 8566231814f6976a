using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>Makes the fields of which the formats of the sections consist.</summary>
internal static class PlanFields
{
    public static PlanField<TSection, Written<T>?> Quantity<TSection, T>(
        string name, QuantityRange<T> range, Func<TSection, Written<T>?> get, Func<TSection, Written<T>?, TSection> with, bool required = false)
        where T : struct, IComparable<T> =>
        new(name, new QuantityValue<T>(range), get, with) { Required = required };

    public static PlanField<TSection, ImmutableArray<Written<T>>> Quantities<TSection, T>(
        string name, QuantityRange<T> range, Func<TSection, ImmutableArray<Written<T>>> get,
        Func<TSection, ImmutableArray<Written<T>>, TSection> with)
        where T : struct, IComparable<T> =>
        new(name, new QuantityListValue<T>(new QuantityValue<T>(range)), get, with);

    public static PlanField<TSection, string?> Text<TSection>(
        string name, string example, Func<TSection, string?> get, Func<TSection, string?, TSection> with, bool required = false) =>
        new(name, new TextValue(example) { MustSaySomething = required }, get, with) { Required = required };

    public static PlanField<TSection, ImmutableArray<string>> Texts<TSection>(
        string name, string example, Func<TSection, ImmutableArray<string>> get, Func<TSection, ImmutableArray<string>, TSection> with) =>
        new(name, new TextListValue(new TextValue(example)), get, with);

    public static PlanField<TSection, string?> Word<TSection>(
        string name, ImmutableArray<string> words, Func<TSection, string?> get, Func<TSection, string?, TSection> with) =>
        new(name, new TextValue(words[0]) { Words = words }, get, with);

    public static PlanField<TSection, string?> Lumber<TSection>(
        string name, string example, Func<TSection, string?> get, Func<TSection, string?, TSection> with) =>
        new(name, new LumberValue(example), get, with);

    public static PlanField<TSection, TEnum?> Choice<TSection, TEnum>(
        string name, Func<TSection, TEnum?> get, Func<TSection, TEnum?, TSection> with, bool required = false)
        where TEnum : struct, Enum =>
        new(name, new ChoiceValue<TEnum>(), get, with) { Required = required };

    public static PlanField<TSection, bool?> YesNo<TSection>(
        string name, Func<TSection, bool?> get, Func<TSection, bool?, TSection> with) =>
        new(name, new YesNoValue(), get, with);

    public static PlanField<TSection, int?> Count<TSection>(
        string name, int least, int most, Func<TSection, int?> get, Func<TSection, int?, TSection> with) =>
        new(name, new CountValue(least, most), get, with);

    public static PlanField<TSection, DateOnly?> Date<TSection>(string name, Func<TSection, DateOnly?> get, Func<TSection, DateOnly?, TSection> with) =>
        new(name, new DateValue(), get, with);

    public static PlanField<TSection, TimeOnly?> Clock<TSection>(string name, Func<TSection, TimeOnly?> get, Func<TSection, TimeOnly?, TSection> with) =>
        new(name, new ClockValue(), get, with);

    public static PlanField<TSection, int?> CountOf<TSection>(
        string name, ImmutableArray<int> only, Func<TSection, int?> get, Func<TSection, int?, TSection> with) =>
        new(name, new CountValue(only[0], only[^1]) { Only = only }, get, with);

    public static PlanField<TSection, TChild> Group<TSection, [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TChild>(
        string name, PlanFormat<TChild> format, Func<TSection, TChild> get, Func<TSection, TChild, TSection> with, bool required = false)
        where TChild : PlanSection, new() =>
        new(name, new GroupValue<TChild>(format), get, with) { Required = required };

    public static PlanField<TSection, TChild?> MaybeGroup<TSection, [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TChild>(
        string name, PlanFormat<TChild> format, Func<TSection, TChild?> get, Func<TSection, TChild?, TSection> with)
        where TChild : PlanSection, new() =>
        new(name, new OptionalGroupValue<TChild>(format), get, with);

    public static PlanField<TSection, ImmutableArray<TChild>> Groups<TSection, [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] TChild>(
        string name, PlanFormat<TChild> format, Func<TSection, ImmutableArray<TChild>> get,
        Func<TSection, ImmutableArray<TChild>, TSection> with)
        where TChild : PlanSection, new() =>
        new(name, new GroupListValue<TChild>(format), get, with);
}
