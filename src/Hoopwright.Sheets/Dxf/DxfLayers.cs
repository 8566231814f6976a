using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Dxf;

/// <summary>The layers of a file: one for each part of the drawing and role of its lines, so that weight and dashes stand with the layer.</summary>
internal sealed class DxfLayers
{
    private readonly Dictionary<(string, string), string> _names = [];
    private readonly SortedDictionary<string, (Ink Colour, LineRole? Role)> _layers = new(StringComparer.Ordinal);

    /// <summary>The layer of a mark, and whether its colour is another than the layer's.</summary>
    public (string Name, bool OwnColour) Of(string part, string what, Ink colour, LineRole? role)
    {
        if (!_names.TryGetValue((part, what), out string? name)) _names.Add((part, what), name = DxfText.Name($"{part}-{what}"));
        if (_layers.TryGetValue(name, out (Ink Colour, LineRole? Role) layer)) return (name, layer.Colour != colour);
        _layers.Add(name, (colour, role));
        return (name, false);
    }

    /// <summary>Every layer, in the order of letters.</summary>
    public IEnumerable<(string Name, Ink Colour, LineRole? Role)> All => _layers.Select(layer => (layer.Key, layer.Value.Colour, layer.Value.Role));
}
