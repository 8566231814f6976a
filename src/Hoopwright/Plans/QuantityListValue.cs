using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A list of quantities.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="item">How one of them is read and written.</param>
internal sealed class QuantityListValue<T>(QuantityValue<T> item) : ListValue<Written<T>?, Written<T>>(item, "a list in [ ]")
    where T : struct, IComparable<T>
{
    protected override Written<T> Given(Written<T>? read) => read!.Value;

    protected override Written<T>? Read(Written<T> one) => one;
}
