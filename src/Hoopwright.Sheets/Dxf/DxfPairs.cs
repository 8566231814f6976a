using System.Globalization;
using System.Text;

namespace Hoopwright.Sheets.Dxf;

/// <summary>A stretch of a DXF file: group codes and values, a line each.</summary>
internal sealed class DxfPairs
{
    private readonly StringBuilder _text = new();

    public DxfPairs Add(int code, string value)
    {
        _text.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append('\n').Append(value).Append('\n');
        return this;
    }

    public DxfPairs Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    public DxfPairs Add(int code, double value) => Add(code, Number(value));

    /// <summary>A handle, in the hexadecimal form that handles have.</summary>
    public DxfPairs Handle(int code, int handle) => Add(code, handle.ToString("X", CultureInfo.InvariantCulture));

    /// <summary>A point: the code of its x; y and z follow ten and twenty later.</summary>
    public DxfPairs Point(int code, DxfPoint at) => Add(code, at.X).Add(code + 10, at.Y).Add(code + 20, 0.0);

    /// <summary>A point without a height.</summary>
    public DxfPairs FlatPoint(int code, DxfPoint at) => Add(code, at.X).Add(code + 10, at.Y);

    public DxfPairs Add(DxfPairs other)
    {
        _text.Append(other._text);
        return this;
    }

    public override string ToString() => _text.ToString();

    /// <summary>Ten decimals, so that the same drawing gives the same bytes and a tape mark loses nothing.</summary>
    internal static string Number(double value)
    {
        double rounded = Math.Round(value, 10, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.0#########", CultureInfo.InvariantCulture);
    }
}
