using Hoopwright.Quantities;
using Hoopwright.Sheets.Drawings;

namespace Hoopwright.Sheets.Dxf;

/// <summary>
/// Writes a drawing to scale as a DXF file (text, of the 2007 kind, AC1021) at true size: inches or millimetres of the thing itself, its own
/// zero at zero. The sheet around it, with its title strip, is as much larger than paper as the thing is. The same drawing gives the same bytes.
/// </summary>
public static class DxfWriter
{
    private const string Model = "*Model_Space", Paper = "*Paper_Space";

    /// <summary>The file, UTF-8, lines ending in \n.</summary>
    /// <param name="drawing">What to write; it must have a scale.</param>
    /// <param name="units">Inches or millimetres.</param>
    /// <param name="dimensions">Dimensions as such, or as lines and texts.</param>
    /// <exception cref="ArgumentException">The drawing is not to scale.</exception>
    public static byte[] Write(Drawing drawing, UnitSystem units, DxfDimensions dimensions = DxfDimensions.Entities)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        DrawingScale scale = drawing.Scale ?? throw new ArgumentException("A drawing that is not to scale has no true size.", nameof(drawing));
        // 254 x is exact for every tape fraction, as in Length.
        double unitsPerMm = units switch { UnitSystem.Metric => scale.Denominator, UnitSystem.UsCustomary => scale.Denominator / 25.4 };
        int last = 0;
        int Next() => ++last;
        DxfTables tables = new(units, unitsPerMm, Next);
        DxfLayers layers = new();
        SheetPoint origin = drawing.Views.IsEmpty ? new SheetPoint(0, drawing.HeightMm) : drawing.Views[0].Origin;
        DxfEntities entities = new(origin, unitsPerMm, layers, Next);
        int model = Next(), paper = Next();
        List<(string Name, int Handle)> records = [(Model, model), (Paper, paper)];
        DxfPairs blocks = new(), drawn = new();
        Block(blocks, Model, model, Next, null);
        Block(blocks, Paper, paper, Next, null);
        foreach (Mark mark in drawing.Marks.Where(mark => dimensions == DxfDimensions.Exploded || !mark.IsDimension)) entities.Write(drawn, model, mark);
        foreach (Dimension dimension in dimensions == DxfDimensions.Entities ? drawing.Dimensions : [])
        {
            string name = FormattableString.Invariant($"*D{records.Count - 1}");
            int record = Next();
            records.Add((name, record));
            Block(blocks, name, record, Next, block =>
            {
                foreach (Mark mark in dimension.Drawn) entities.Write(block, record, mark);
            });
            Measure(entities, drawn, model, layers, dimension, name, unitsPerMm);
        }
        DxfPoint low = entities.At(new SheetPoint(0, drawing.HeightMm)), high = entities.At(new SheetPoint(drawing.WidthMm, 0));
        DxfObjects objects = new(Next);
        DxfPairs listed = tables.Tables(layers, records, name => name == Model ? objects.ModelLayout : name == Paper ? objects.PaperLayout : 0, low, high);
        DxfPairs things = objects.Write(model, paper, low, high);
        DxfPairs file = tables.Header(low, high, last + 1)
            .Add(DxfTables.Section("CLASSES", new DxfPairs()))
            .Add(listed)
            .Add(DxfTables.Section("BLOCKS", blocks))
            .Add(DxfTables.Section("ENTITIES", drawn))
            .Add(DxfTables.Section("OBJECTS", things))
            .Add(0, "EOF");
        return file.Span.ToArray();
    }

    private static void Block(DxfPairs into, string name, int record, Func<int> next, Action<DxfPairs>? holds)
    {
        into.Add(0, "BLOCK").Handle(5, next()).Handle(330, record).Add(100, "AcDbEntity");
        if (name == Paper) into.Add(67, 1);
        // 1: a block without a name of its own, as those of dimensions are.
        into.Add(8, "0").Add(100, "AcDbBlockBegin").Add(2, name).Add(70, holds is null ? 0 : 1).Point(10, default).Add(3, name).Add(1, "");
        holds?.Invoke(into);
        into.Add(0, "ENDBLK").Handle(5, next()).Handle(330, record).Add(100, "AcDbEntity");
        if (name == Paper) into.Add(67, 1);
        into.Add(8, "0").Add(100, "AcDbBlockEnd");
    }

    private static void Measure(DxfEntities entities, DxfPairs into, int owner, DxfLayers layers, Dimension dimension, string block, double unitsPerMm)
    {
        (string layer, _) = layers.Of(dimension.Text.Layer, "measured", Ink.Black, LineRole.Dimension);
        DxfPoint from = entities.At(dimension.From), to = entities.At(dimension.To), line = entities.At(dimension.Line);
        bool isMark = dimension.Kind is DimensionKind.MarkAcross or DimensionKind.MarkUp;
        int kind = dimension.Kind switch
        {
            DimensionKind.Across or DimensionKind.Up => 0,
            DimensionKind.Aligned => 1,
            DimensionKind.MarkUp => 6,
            // 64: of a running mark, that it is told across.
            DimensionKind.MarkAcross => 6 + 64,
        };
        // 32: the block belongs to this dimension alone; 128: the text stands where it was put.
        entities.Begin(into, "DIMENSION", owner, layer).Add(100, "AcDbDimension").Add(2, block)
            .Point(10, isMark ? from : line).Point(11, entities.At(dimension.Text.Anchor)).Add(70, kind + 32 + 128).Add(71, 5)
            .Add(42, dimension.MeasuredMm * unitsPerMm).Add(1, dimension.Text.Text.Length == 0 ? " " : DxfText.Of(dimension.Text.Text)).Add(3, DxfTables.DimensionStyle);
        if (isMark)
        {
            into.Add(100, "AcDbOrdinateDimension").Point(13, to).Point(14, line);
            return;
        }
        into.Add(100, "AcDbAlignedDimension").Point(13, from).Point(14, to);
        if (dimension.Kind == DimensionKind.Aligned) return;
        into.Add(50, dimension.Kind == DimensionKind.Up ? 90.0 : 0.0).Add(100, "AcDbRotatedDimension");
    }
}
