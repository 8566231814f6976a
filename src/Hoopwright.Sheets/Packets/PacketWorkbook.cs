using System.Collections.Immutable;
using System.Globalization;
using Hoopwright.Cuts;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Packets;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Xlsx;
using Hoopwright.Takeoff;

namespace Hoopwright.Sheets.Packets;

/// <summary>The workbook of the packet: what to order and what it costs, what is needed, how it is cut, where it is set out. Numbers as on paper, to the tape.</summary>
internal sealed class PacketWorkbook
{
    private const decimal MetresInAFoot = 0.3048m;
    private readonly PlannedTunnel _planned;
    private readonly Tunnel _tunnel;
    private readonly OrderList _orders;
    private readonly CutSheets _cuts;

    private PacketWorkbook(PlannedTunnel planned)
    {
        _planned = planned;
        _tunnel = PacketWriter.Built(planned);
        (_orders, _cuts) = planned is { Orders: { } orders, Cuts: { } cuts } ? (orders, cuts) : throw new ArgumentException("The plan was not worked out to its end.", nameof(planned));
    }

    /// <summary>The order lines as they stand on their sheet, from its second row on.</summary>
    private IEnumerable<OrderLine> Lines => _orders.Lines.OrderBy(line => line.Supplier);

    private bool IsMetric => _planned.Units == UnitSystem.Metric;

    private string LengthUnit => IsMetric ? "mm" : "in";

    private string RunUnit => IsMetric ? "m" : "ft";

    private string VolumeUnit => IsMetric ? "m³" : "ft³";

    private NumberKind LengthKind => IsMetric ? NumberKind.Millimetres : NumberKind.TapeInches;

    /// <summary>The file's bytes.</summary>
    /// <param name="planned">A plan worked out to its end.</param>
    /// <param name="paper">The paper it prints on.</param>
    public static byte[] Write(PlannedTunnel planned, Paper paper) => XlsxWriter.Write(Of(planned), new XlsxPrint(paper, PacketWriter.Called(planned)));

    /// <summary>The worksheets, in the order of their tabs.</summary>
    public static ImmutableArray<Worksheet> Of(PlannedTunnel planned)
    {
        PacketWorkbook book = new(planned);
        Worksheet orders = book.Orders(), shares = book.Shares();
        return [orders, book.BySeller(orders), book.ByStage(shares), shares, book.Takeoff(planned.Takeoff!), book.Stock(), book.Pieces(), book.SetOut(), book.EndPosts(), book.Holes()];
    }

    private Worksheet Orders()
    {
        string price = $"Price, {_orders.Currency}", cost = $"Cost, {_orders.Currency}";
        return new Worksheet("Orders",
        [
            new("Seller", 17), new("Item", 24), new("Size", 24), new("Package", 13), new($"Length, {RunUnit}", 10, NumberKind.Amount), new($"Width, {RunUnit}", 10, NumberKind.Amount),
            new("Needed", 10, NumberKind.Amount), new("Waste, spare", 10, NumberKind.Amount), new("On hand", 9, NumberKind.Amount), new("Unit", 9), new("Buy", 8, NumberKind.Amount),
            new(price, 11, NumberKind.Money), new(cost, 12, NumberKind.Money, HasTotal: true),
        ],
        [
            .. Lines.Select((line, index) => (ImmutableArray<SheetCell>)
            [
                SheetCell.Of(PacketTableMaker.NameOf(line.Supplier)), SheetCell.Of(line.Item), SheetCell.Of(line.Size), SheetCell.Of(line.Package), Run(line.Length), Run(line.Width),
                Amount(line, line.Needed), Amount(line, line.Waste + line.Spare), Amount(line, line.FromStock), SheetCell.Of(line.Unit == "m" ? RunUnit : line.Unit),
                // A line added by hand is charged for what it asks, whole or not.
                SheetCell.Of(line is { IsExtra: true, Packages: > 0 } ? line.Needed : line.Packages),
                line.Price is { } asked ? SheetCell.Of(asked.Amount) : SheetCell.Empty,
                line.Extension is { } sum ? SheetCell.Calculated(string.Create(CultureInfo.InvariantCulture, $"ROUND(K{index + 2}*L{index + 2},2)"), sum.Amount)
                    : SheetCell.Calculated(string.Create(CultureInfo.InvariantCulture, $"IF(ISNUMBER(L{index + 2}),ROUND(K{index + 2}*L{index + 2},2),\"no price\")"), "no price"),
            ]),
        ])
        {
            Remarks = [.. _orders.PriceNote.Length > 0 ? (string[])[_orders.PriceNote] : [], .. Without(lines => $"The sum is without {lines}. A price typed beside it counts here and for its seller; stages get their shares when the packet is written anew.")],
        };
    }

    private Worksheet BySeller(Worksheet orders)
    {
        string last = orders.LastRow.ToString(CultureInfo.InvariantCulture);
        return new Worksheet("Cost by seller", [new("Seller", 28), new($"Cost, {_orders.Currency}", 14, NumberKind.Money, HasTotal: true)],
        [
            .. _orders.Lines.Select(line => line.Supplier).Distinct().Order().Select((supplier, index) => (ImmutableArray<SheetCell>)
            [
                SheetCell.Of(PacketTableMaker.NameOf(supplier)),
                SheetCell.Calculated(string.Create(CultureInfo.InvariantCulture, $"SUMIF(Orders!$A$2:$A${last},A{index + 2},Orders!$M$2:$M${last})"), _orders.TotalFor(supplier).Amount),
            ]),
        ]);
    }

    private Worksheet ByStage(Worksheet shares)
    {
        string last = shares.LastRow.ToString(CultureInfo.InvariantCulture);
        return new Worksheet("Cost by stage", [new("Stage", 28), new($"Cost, {_orders.Currency}", 14, NumberKind.Money, HasTotal: true)],
        [
            .. _orders.Stages.Select((stage, index) => (ImmutableArray<SheetCell>)
            [
                SheetCell.Of(NameOf(stage.Stage)),
                SheetCell.Calculated(string.Create(CultureInfo.InvariantCulture, $"SUMIF('{shares.Name}'!$E$2:$E${last},A{index + 2},'{shares.Name}'!$H$2:$H${last})"), stage.Cost.Amount),
            ]),
        ])
        {
            Remarks = Without(lines => $"The sum is without {lines}."),
        };
    }

    /// <summary>
    /// How the cost of each order line falls on stages. Each gets its part rounded down to the cent; cents left over go one by one to those that lost most by
    /// it, the upper one first where they lost alike, as in the domain, so that the shares of a line add up whatever its price becomes.
    /// </summary>
    private Worksheet Shares()
    {
        List<ImmutableArray<SheetCell>> rows = [];
        foreach ((OrderLine line, int order) in Lines.Select((line, index) => (line, index + 2)).Where(each => !each.line.Stages.IsEmpty))
        {
            int first = rows.Count + 2, last = first + line.Stages.Length - 1;
            foreach (StageCost share in line.Stages)
            {
                int row = rows.Count + 2;
                string lost = string.Create(CultureInfo.InvariantCulture, $"ROUND(G{row}-ROUNDDOWN(G{row},2),8)");
                string cents = string.Create(CultureInfo.InvariantCulture, $"ROUND((Orders!M{order}-SUMPRODUCT(ROUNDDOWN(G{first}:G{last},2)))*100,0)");
                string rank = string.Create(CultureInfo.InvariantCulture, $"SUMPRODUCT(--(ROUND(G{first}:G{last}-ROUNDDOWN(G{first}:G{last},2),8)>{lost}))+SUMPRODUCT(--(ROUND(G{first}:G{row}-ROUNDDOWN(G{first}:G{row},2),8)={lost}))");
                rows.Add(
                [
                    SheetCell.Of(order), SheetCell.Of(line.Item), SheetCell.Of(line.Size), SheetCell.Of(line.Package), SheetCell.Of(NameOf(share.Stage)), SheetCell.Of(share.Part),
                    SheetCell.Calculated(string.Create(CultureInfo.InvariantCulture, $"ROUND(Orders!M{order}*F{row},8)"), decimal.Round(line.Extension!.Value.Amount * share.Part, 8)),
                    SheetCell.Calculated(first == last ? string.Create(CultureInfo.InvariantCulture, $"Orders!M{order}") : string.Create(CultureInfo.InvariantCulture, $"ROUNDDOWN(G{row},2)+IF({rank}<={cents},0.01,0)"), share.Cost.Amount),
                ]);
            }
        }
        return new Worksheet("Stage shares",
            [
                new("Row of Orders", 8, NumberKind.Count), new("Item", 24), new("Size", 24), new("Package", 13), new("Stage", 12), new("Part of the line", 10, NumberKind.Part),
                new($"Exact, {_orders.Currency}", 12, NumberKind.Part), new($"Cost, {_orders.Currency}", 12, NumberKind.Money, HasTotal: true),
            ], [.. rows])
        {
            Remarks = Without(lines => $"No shares of {lines}: row {string.Join(", ", Lines.Select((line, index) => (line, Row: index + 2)).Where(each => each.line.Extension is null).Select(each => each.Row.ToString(CultureInfo.InvariantCulture)))}. Give the price in the price book and write the packet anew."),
        };
    }

    /// <summary>A sentence on the lines of the orders that have no price, where there are any.</summary>
    private ImmutableArray<string> Without(Func<string, string> sentence) =>
        _orders.Unpriced == 0 ? [] : [sentence(_orders.Unpriced == 1 ? "one line of Orders that has no price" : string.Create(CultureInfo.InvariantCulture, $"{_orders.Unpriced} lines of Orders that have no price"))];

    private static string NameOf(BuildStage? stage) => stage?.ToString() ?? "None given";

    private Worksheet Takeoff(TakeoffList takeoff) => new("Takeoff",
        [new("Stage", 12), new("Item", 24), new("Size", 24), new("Needed", 11, NumberKind.Amount), new("Unit", 9), new("Rule", 60), new("From", 30)],
        [
            .. takeoff.Lines.Select(line =>
            {
                (decimal needed, string unit) = line.Unit switch
                {
                    MaterialUnit.Each => (line.Quantity, "each"),
                    MaterialUnit.CutLengths => (line.Quantity, "pieces"),
                    MaterialUnit.Metres => (InRunUnits(line.Quantity), RunUnit),
                    MaterialUnit.CubicMetres => (Cubic(Volume.FromCubicMetres((double)line.Quantity)), VolumeUnit),
                    MaterialUnit.SquareMetres => (IsMetric ? line.Quantity : line.Quantity / (MetresInAFoot * MetresInAFoot), IsMetric ? "m²" : "ft²"),
                };
                return (ImmutableArray<SheetCell>)[SheetCell.Of(line.Stage.ToString().ToLowerInvariant()), SheetCell.Of(line.Item), SheetCell.Of(line.Size), SheetCell.Of(decimal.Round(needed, 4)), SheetCell.Of(unit), SheetCell.Of(line.Rule), SheetCell.Of(line.Source.ToString())];
            }),
        ]);

    private Worksheet Stock() => new("Stock to cut",
        [
            new("Cut list", 34), new("No.", 6, NumberKind.Count), new($"Stock, {LengthUnit}", 11, LengthKind, HasTotal: true), new("On hand", 9), new("Pieces", 8, NumberKind.Count, HasTotal: true),
            new($"In pieces, {LengthUnit}", 12, LengthKind, HasTotal: true), new($"Left, {LengthUnit}", 11, LengthKind, HasTotal: true), new("Keep", 7), new("How sure", 34),
        ],
        [
            .. _cuts.Sheets.SelectMany(sheet => sheet.Bars.Select(bar => (ImmutableArray<SheetCell>)
            [
                SheetCell.Of(sheet.Name), SheetCell.Of(bar.Number), Tape(bar.Stock), SheetCell.Of(bar.OnHand ? "yes" : ""), SheetCell.Of(bar.Pieces.Length),
                SheetCell.Of(bar.Pieces.Sum(piece => Tape(piece.Length).Number ?? 0)), Tape(bar.Leftover), SheetCell.Of(bar.LeftoverUseful ? "yes" : ""), SheetCell.Of(sheet.Proof),
            ])),
        ]);

    private Worksheet Pieces() => new("Pieces",
        [
            new("Cut list", 34), new("Stock no.", 7, NumberKind.Count), new("Piece", 8), new("For", 28), new("Place", 40), new($"Length, {LengthUnit}", 11, LengthKind, HasTotal: true),
            new("On the tape", 14), new($"Mark on the stock, {LengthUnit}", 13, LengthKind),
        ],
        [
            .. _cuts.Sheets.SelectMany(sheet => sheet.Bars.SelectMany(bar => bar.Pieces.Select(piece => (ImmutableArray<SheetCell>)
            [
                SheetCell.Of(sheet.Name), SheetCell.Of(bar.Number), SheetCell.Of(piece.Number), SheetCell.Of(piece.Label), SheetCell.Of(piece.Place), Tape(piece.Length),
                SheetCell.Of(TapeText.Of(piece.Length, _planned.Units)), Tape(piece.To),
            ]))),
        ]);

    private Worksheet SetOut() => new("Set-out",
        [
            new("Bow", 6, NumberKind.Count), new($"Mark, {LengthUnit}", 11, LengthKind), new("On the tape", 14), new($"Ground over the first, left, {LengthUnit}", 13, LengthKind), new($"Ground over the first, right, {LengthUnit}", 13, LengthKind),
            new($"Post top, {LengthUnit}", 11, LengthKind), new($"Left post in, {LengthUnit}", 11, LengthKind), new($"Right post in, {LengthUnit}", 11, LengthKind), new("Concrete", 10),
        ],
        [
            .. _tunnel.Stations.Select(station =>
            {
                GroundPost? left = Post(station, onLeft: true), right = Post(station, onLeft: false);
                return (ImmutableArray<SheetCell>)
                [
                    SheetCell.Of(station.Number), Tape(station.Along), SheetCell.Of(TapeText.Of(TapeText.RoundToMark(station.Along, _planned.Units), _planned.Units)), Tape(station.GroundLeft), Tape(station.GroundRight),
                    left is null ? SheetCell.Empty : Tape(left.Top), left is null ? SheetCell.Empty : Tape(left.Embedment), right is null ? SheetCell.Empty : Tape(right.Embedment), SheetCell.Of(left?.InConcrete == true ? "yes" : ""),
                ];
            }),
        ]);

    private Worksheet EndPosts() => new("End posts",
        [
            new("End", 8), new("Post", 18), new($"Mark, middle, {LengthUnit}", 12, LengthKind), new("On the tape", 14), new($"Cut length, {LengthUnit}", 12, LengthKind), new($"Top, left edge, {LengthUnit}", 12, LengthKind),
            new($"Top, right edge, {LengthUnit}", 12, LengthKind), new("Bevel, °", 9, NumberKind.Degrees), new($"In ground, {LengthUnit}", 11, LengthKind),
        ],
        [
            .. _tunnel.Ends.SelectMany(end => end.Posts.Select(post => (ImmutableArray<SheetCell>)
            [
                SheetCell.Of(end.Name), SheetCell.Of(post.MemberId), Tape(post.Centre), SheetCell.Of(TapeText.Of(TapeText.RoundToMark(post.Centre, _planned.Units), _planned.Units)),
                Tape(_tunnel.Members.First(member => member.Id == post.MemberId).CutLength), Tape(post.TopLeft), Tape(post.TopRight), SheetCell.Of(decimal.Round((decimal)post.Tilt.Degrees, 1)), Tape(post.Embedment),
            ])),
        ]);

    private Worksheet Holes() => new("Concrete",
        [new("Hole for", 22), new($"Wide, {LengthUnit}", 10, LengthKind), new($"Deep, {LengthUnit}", 10, LengthKind), new($"Post in, {LengthUnit}", 10, LengthKind), new($"Collar, {LengthUnit}", 10, LengthKind), new($"Concrete, {VolumeUnit}", 13, NumberKind.Amount, HasTotal: true)],
        [.. _tunnel.Holes.Select(hole => (ImmutableArray<SheetCell>)[SheetCell.Of(hole.PostId), Tape(hole.Diameter), Tape(hole.Depth), Tape(hole.PostDepth), Tape(hole.CollarRise), SheetCell.Of(decimal.Round(Cubic(hole.Volume), 4))])]);

    private GroundPost? Post(BowStation station, bool onLeft) => _tunnel.GroundPosts.FirstOrDefault(post => post.Bow == station.Number && post.Left == onLeft);

    /// <summary>A length as the tape reads it.</summary>
    private SheetCell Tape(Length length)
    {
        Length mark = TapeText.RoundToMark(length, _planned.Units);
        return SheetCell.Of(decimal.Round((decimal)(IsMetric ? mark.Millimetres : mark.Inches), 6));
    }

    private SheetCell Run(Length? length) => length is { } run ? SheetCell.Of(decimal.Round(InRunUnits((decimal)run.Metres), 4)) : SheetCell.Empty;

    private SheetCell Amount(OrderLine line, decimal amount) => amount == 0 ? SheetCell.Empty : SheetCell.Of(decimal.Round(line.Unit == "m" ? InRunUnits(amount) : amount, 4));

    private decimal InRunUnits(decimal metres) => IsMetric ? metres : metres / MetresInAFoot;

    private decimal Cubic(Volume volume) => IsMetric ? (decimal)volume.CubicMetres : (decimal)volume.CubicFeet;
}
