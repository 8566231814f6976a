using System.Globalization;
using System.Text.Json;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Packets;

/// <summary>
/// Writes results as JSON with names that say the unit: <c>spanM</c>, and a twin <c>spanText</c> as the tape shows it.
/// Numbers are written with at most nine decimals, so that the last bit of a computed value never shows.
/// </summary>
internal sealed class ResultWriter : IDisposable
{
    private readonly Utf8JsonWriter json;
    private bool firstOnly;

    /// <param name="stream">Where to.</param>
    /// <param name="units">Units of the texts.</param>
    /// <param name="brief">True for one line, and for the first entry alone of each list until <see cref="WithWholeLists"/>.</param>
    public ResultWriter(Stream stream, UnitSystem units, bool brief = false)
    {
        (Units, firstOnly) = (units, brief);
        json = new Utf8JsonWriter(stream, brief ? PlanWriter.Compact : PlanWriter.Indented);
    }

    /// <summary>Units of what people read.</summary>
    public UnitSystem Units { get; }

    /// <summary>From here on lists are written whole.</summary>
    public void WithWholeLists() => firstOnly = false;

    public void Group(string name, Action fields)
    {
        json.WriteStartObject(name);
        fields();
        json.WriteEndObject();
    }

    public void Whole(Action fields)
    {
        json.WriteStartObject();
        fields();
        json.WriteEndObject();
    }

    public void List<T>(string name, IEnumerable<T> items, Action<T> fields)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            fields(item);
            json.WriteEndObject();
            if (firstOnly) break;
        }
        json.WriteEndArray();
    }

    public void Names(string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (string each in names) json.WriteStringValue(each);
        json.WriteEndArray();
    }

    public void Text(string name, string? text)
    {
        if (text is null) json.WriteNull(name);
        else json.WriteString(name, text);
    }

    public void Flag(string name, bool value) => json.WriteBoolean(name, value);

    public void Count(string name, int value) => json.WriteNumber(name, value);

    public void Number(string name, decimal value)
    {
        json.WritePropertyName(name);
        json.WriteRawValue(value.ToString("0.#########", CultureInfo.InvariantCulture));
    }

    public void Price(string name, Money? value)
    {
        if (value is { } money) Number(name, money.RoundToCents().Amount);
        else json.WriteNull(name);
    }

    public void Length(string name, Length value)
    {
        Value(name + "M", value.Metres);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Density(string name, Density value)
    {
        Value(name + "KgM3", value.KilogramsPerCubicMetre);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Thickness(string name, Length value)
    {
        Value(name + "M", value.Metres);
        json.WriteString(name + "Text", TapeText.OfThickness(value, Units));
    }

    public void Angle(string name, Angle value)
    {
        Value(name + "Deg", value.Degrees);
        json.WriteString(name + "Text", TapeText.Of(value));
    }

    public void Area(string name, Area value)
    {
        Value(name + "M2", value.SquareMetres);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Volume(string name, Volume value)
    {
        Value(name + "M3", value.CubicMetres);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Mass(string name, Mass value)
    {
        Value(name + "Kg", value.Kilograms);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Pressure(string name, Pressure value)
    {
        Value(name + "Pa", value.Pascals, 3);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Stress(string name, Pressure value)
    {
        Value(name + "Pa", value.Pascals, 0);
        json.WriteString(name + "Text", TapeText.OfStress(value, Units));
    }

    public void Speed(string name, Speed value)
    {
        Value(name + "Mps", value.MetresPerSecond, 4);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    /// <summary>A load known between two ends, as three values; nothing where there is none.</summary>
    public void Range(string name, Strength.PressureRange? range)
    {
        if (range is null) return;
        Pressure(name + "Least", range.Least);
        Pressure(name, range.Taken);
        Pressure(name + "Most", range.Most);
    }

    /// <summary>A wind speed known between two ends, as three values; nothing where there is none.</summary>
    public void Range(string name, Strength.SpeedRange? range)
    {
        if (range is null) return;
        Speed(name + "Least", range.Least);
        Speed(name, range.Taken);
        Speed(name + "Most", range.Most);
    }

    public void Force(string name, Force value)
    {
        Value(name + "N", value.Newtons, 3);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Temperature(string name, Temperature value)
    {
        Value(name + "K", value.Kelvins, 4);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void ForcePerLength(string name, ForcePerLength value)
    {
        Value(name + "NPerM", value.NewtonsPerMetre, 4);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Moment(string name, Moment value)
    {
        Value(name + "Nm", value.NewtonMetres, 3);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    /// <summary>How long people work, in hours.</summary>
    public void Hours(string name, TimeSpan value) => Value(name + "H", value.TotalHours, 4);

    public void Flow(string name, AirFlow value)
    {
        Value(name + "M3PerS", value.CubicMetresPerSecond, 4);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Power(string name, Power value)
    {
        Value(name + "W", value.Watts, 1);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    public void Difference(string name, TemperatureDifference value)
    {
        Value(name + "K", value.Kelvins, 3);
        json.WriteString(name + "Text", TapeText.Of(value, Units));
    }

    /// <summary>A share of strength or a factor; six decimals, since what solvers iterate to is not the same further down everywhere.</summary>
    public void Ratio(string name, Ratio value) => Value(name, value.Value, 6);

    /// <summary>A length that a solver found; micrometres, for the same reason.</summary>
    public void Movement(string name, Length value)
    {
        Value(name + "M", value.Metres, 6);
        json.WriteString(name + "Text", TapeText.OfThickness(value, Units));
    }

    public void Dispose()
    {
        json.Flush();
        json.Dispose();
    }

    private void Value(string name, double value, int decimals = 9)
    {
        json.WritePropertyName(name);
        string text = Math.Round(value, decimals).ToString("0.#########", CultureInfo.InvariantCulture);
        // What rounds to nothing from below would show as "-0".
        json.WriteRawValue(text == "-0" ? "0" : text);
    }
}
