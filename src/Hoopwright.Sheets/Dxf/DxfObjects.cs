namespace Hoopwright.Sheets.Dxf;

/// <summary>The last section of a DXF file: its dictionaries and the two layouts that every file has.</summary>
/// <param name="nextHandle">Gives a handle that no other has.</param>
internal sealed class DxfObjects(Func<int> nextHandle)
{
    private readonly int root = nextHandle(), groups = nextHandle(), layouts = nextHandle();

    /// <summary>The handle of the layout in which all is drawn.</summary>
    public int ModelLayout { get; } = nextHandle();

    /// <summary>The handle of the empty paper layout.</summary>
    public int PaperLayout { get; } = nextHandle();

    /// <summary>The objects.</summary>
    public DxfPairs Write(int modelRecord, int paperRecord, DxfPoint low, DxfPoint high)
    {
        DxfPairs into = new();
        Dictionary(into, root, 0, ("ACAD_GROUP", groups), ("ACAD_LAYOUT", layouts));
        Dictionary(into, groups, root);
        Dictionary(into, layouts, root, ("Layout1", PaperLayout), ("Model", ModelLayout));
        Layout(into, ModelLayout, "Model", 0, modelRecord, low, high);
        Layout(into, PaperLayout, "Layout1", 1, paperRecord, low, high);
        return into;
    }

    private static void Dictionary(DxfPairs into, int handle, int owner, params (string Name, int Handle)[] entries)
    {
        into.Add(0, "DICTIONARY").Handle(5, handle).Handle(330, owner).Add(100, "AcDbDictionary").Add(281, 1);
        foreach ((string name, int entry) in entries) into.Add(3, name).Handle(350, entry);
    }

    private void Layout(DxfPairs into, int handle, string name, int order, int record, DxfPoint low, DxfPoint high)
    {
        into.Add(0, "LAYOUT").Handle(5, handle).Handle(330, layouts).Add(100, "AcDbPlotSettings").Add(1, "").Add(2, "").Add(4, "").Add(6, "")
            .Add(40, 0.0).Add(41, 0.0).Add(42, 0.0).Add(43, 0.0).Add(44, 0.0).Add(45, 0.0).Add(46, 0.0).Add(47, 0.0).Add(48, 0.0).Add(49, 0.0)
            .Add(140, 0.0).Add(141, 0.0).Add(142, 1.0).Add(143, 1.0)
            // 1024: of the model; the plot fits its page.
            .Add(70, order == 0 ? 1024 + 688 : 688).Add(72, 1).Add(73, 0).Add(74, 5).Add(7, "").Add(75, 0).Add(147, 1.0).Add(148, 0.0).Add(149, 0.0)
            .Add(100, "AcDbLayout").Add(1, name).Add(70, 1).Add(71, order).FlatPoint(10, low).FlatPoint(11, high).Point(12, default)
            .Point(14, low).Point(15, high).Add(146, 0.0).Point(13, default).Point(16, new(1, 0)).Point(17, new(0, 1)).Add(76, 0).Handle(330, record);
    }
}
