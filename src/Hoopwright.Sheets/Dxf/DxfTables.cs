using System.Collections.Immutable;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Dxf;

/// <summary>Header and tables of a DXF file: units, line kinds, layers, styles.</summary>
/// <param name="units">The plan's units.</param>
/// <param name="unitsPerMm">Units of the file in a millimetre of paper.</param>
/// <param name="nextHandle">Gives a handle that no other has.</param>
internal sealed class DxfTables(UnitSystem units, double unitsPerMm, Func<int> nextHandle)
{
    /// <summary>The name of the style of texts.</summary>
    public const string Style = "LETTERS";

    /// <summary>The name of the style of bold texts.</summary>
    public const string BoldStyle = "LETTERS-BOLD";

    /// <summary>The name of the style of dimensions.</summary>
    public const string DimensionStyle = "TICKS";

    private readonly int styleHandle = nextHandle();

    private bool IsMetric => units == UnitSystem.Metric;

    /// <summary>The header; extents as wide as the sheet.</summary>
    public DxfPairs Header(DxfPoint low, DxfPoint high, int handSeed) => Section("HEADER", new DxfPairs()
        .Add(9, "$ACADVER").Add(1, "AC1021")
        .Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252")
        .Add(9, "$EXTMIN").Point(10, low)
        .Add(9, "$EXTMAX").Point(10, high)
        .Add(9, "$LTSCALE").Add(40, unitsPerMm)
        .Add(9, "$DIMSTYLE").Add(2, DimensionStyle)
        .Add(9, "$DIMSCALE").Add(40, 1.0)
        .Add(9, "$LUNITS").Add(70, IsMetric ? 2 : 4)
        .Add(9, "$LUPREC").Add(70, IsMetric ? 0 : 4)
        .Add(9, "$INSUNITS").Add(70, IsMetric ? 4 : 1)
        .Add(9, "$MEASUREMENT").Add(70, IsMetric ? 1 : 0)
        .Add(9, "$LWDISPLAY").Add(290, 1)
        .Add(9, "$HANDSEED").Handle(5, handSeed));

    /// <summary>All tables.</summary>
    /// <param name="layers">The layers used.</param>
    /// <param name="blockRecords">Names of the blocks and the handles of their records.</param>
    /// <param name="layouts">For a block that is a layout, its layout's handle.</param>
    /// <param name="low">Lower left of the sheet.</param>
    /// <param name="high">Upper right of the sheet.</param>
    public DxfPairs Tables(DxfLayers layers, IEnumerable<(string Name, int Handle)> blockRecords, Func<string, int> layouts, DxfPoint low, DxfPoint high)
    {
        (double wide, double high) size = (high.X - low.X, high.Y - low.Y);
        DxfPairs all = new();
        Table(all, "VPORT", [("*ACTIVE", "AcDbViewportTableRecord", nextHandle(), entry => entry
            .Add(70, 0).FlatPoint(10, new(0, 0)).FlatPoint(11, new(1, 1)).FlatPoint(12, new(low.X + (size.wide / 2), low.Y + (size.high / 2)))
            .FlatPoint(13, new(0, 0)).FlatPoint(14, new(1, 1)).FlatPoint(15, new(1, 1)).Point(16, default).Add(36, 1.0).Point(17, default)
            .Add(40, size.high * 1.05).Add(41, 1.6).Add(42, 50.0).Add(43, 0.0).Add(44, 0.0).Add(50, 0.0).Add(51, 0.0))]);
        Table(all, "LTYPE",
        [
            LineKind("ByBlock", "", []), LineKind("ByLayer", "", []), LineKind("Continuous", "", []),
            .. Enum.GetValues<LineRole>().Where(role => !LineStyle.Of(role).DashesMm.IsEmpty).Select(role => LineKind(KindOf(role), KindOf(role).ToLowerInvariant(), LineStyle.Of(role).DashesMm)),
        ]);
        Table(all, "LAYER", [Layer("0", Ink.Black, null), Layer("DEFPOINTS", Ink.Black, null, plots: false), .. layers.All.Select(layer => Layer(layer.Name, layer.Colour, layer.Role))]);
        Table(all, "STYLE", [Letters(Style, styleHandle), Letters(BoldStyle, nextHandle()), Letters("Standard", nextHandle())]);
        Table(all, "VIEW", []);
        Table(all, "UCS", []);
        Table(all, "APPID", [("ACAD", "AcDbRegAppTableRecord", nextHandle(), entry => entry.Add(70, 0))]);
        Table(all, "DIMSTYLE", [Dimensions("Standard"), Dimensions(DimensionStyle)]);
        Table(all, "BLOCK_RECORD", [.. blockRecords.Select(record => (record.Name, "AcDbBlockTableRecord", record.Handle, (Action<DxfPairs>)(entry => entry.Handle(340, layouts(record.Name)))))]);
        return Section("TABLES", all);
    }

    /// <summary>A section of the file.</summary>
    public static DxfPairs Section(string name, DxfPairs holds) => new DxfPairs().Add(0, "SECTION").Add(2, name).Add(holds).Add(0, "ENDSEC");

    private static string KindOf(LineRole role) => LineStyle.Of(role).DashesMm.IsEmpty ? "Continuous" : role.ToString().ToUpperInvariant();

    private void Table(DxfPairs into, string name, ImmutableArray<(string Name, string Class, int Handle, Action<DxfPairs> Write)> entries)
    {
        int handle = nextHandle();
        into.Add(0, "TABLE").Add(2, name).Handle(5, handle).Handle(330, 0).Add(100, "AcDbSymbolTable").Add(70, entries.Length);
        if (name == "DIMSTYLE") into.Add(100, "AcDbDimStyleTable");
        foreach ((string entry, string kind, int own, Action<DxfPairs> write) in entries)
        {
            into.Add(0, name).Handle(name == "DIMSTYLE" ? 105 : 5, own).Handle(330, handle).Add(100, "AcDbSymbolTableRecord").Add(100, kind).Add(2, entry);
            write(into);
        }
        into.Add(0, "ENDTAB");
    }

    // Dashes are of the paper; the file's line scale makes them as long as the sheet is large.
    private (string, string, int, Action<DxfPairs>) LineKind(string name, string says, ImmutableArray<double> dashes) => (name, "AcDbLinetypeTableRecord", nextHandle(), entry =>
    {
        entry.Add(70, 0).Add(3, says).Add(72, 65).Add(73, dashes.Length).Add(40, dashes.Sum());
        for (int index = 0; index < dashes.Length; index++) entry.Add(49, index % 2 == 0 ? dashes[index] : -dashes[index]).Add(74, 0);
    }
    );

    private (string, string, int, Action<DxfPairs>) Layer(string name, Ink colour, LineRole? role, bool plots = true) => (name, "AcDbLayerTableRecord", nextHandle(), entry =>
    {
        entry.Add(70, 0).InInk(colour).Add(6, role is { } drawn ? KindOf(drawn) : "Continuous");
        if (!plots) entry.Add(290, 0);
        // Hundredths of a millimetre; -3 is the usual weight.
        entry.Add(370, role is { } line ? (int)Math.Round(LineStyle.Of(line).WeightMm * 100) : -3);
    }
    );

    private static (string, string, int, Action<DxfPairs>) Letters(string name, int handle) => (name, "AcDbTextStyleTableRecord", handle, entry => entry
        .Add(70, 0).Add(40, 0.0).Add(41, 0.8).Add(50, 0.0).Add(71, 0).Add(42, 2.5).Add(3, "txt").Add(4, ""));

    private (string, string, int, Action<DxfPairs>) Dimensions(string name) => (name, "AcDbDimStyleTableRecord", nextHandle(), entry => entry
        .Add(70, 0).Add(40, 1.0).Add(41, 1.1 * unitsPerMm).Add(42, 1.2 * unitsPerMm).Add(43, 7.5 * unitsPerMm).Add(44, 1.5 * unitsPerMm)
        .Add(140, TextMark.LeastCapitalMm * unitsPerMm).Add(142, 1.1 * unitsPerMm).Add(147, 1.2 * unitsPerMm)
        .Add(73, 0).Add(74, 0).Add(77, 1).Add(271, IsMetric ? 0 : 4).Add(277, IsMetric ? 2 : 4).Handle(340, styleHandle));
}
