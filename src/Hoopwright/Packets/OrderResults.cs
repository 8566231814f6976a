using System.Collections.Immutable;
using Hoopwright.Cover;
using Hoopwright.Cover.Pull;
using Hoopwright.CoverSteps;
using Hoopwright.Cuts;
using Hoopwright.Cuts.Film;
using Hoopwright.Cuts.Progress;
using Hoopwright.Orders;
using Hoopwright.Takeoff;

namespace Hoopwright.Packets;

/// <summary>Writes cover, takeoff, orders and cuts.</summary>
internal static class OrderResults
{
    public static void Cover(ResultWriter json, CoverPlan cover, FasteningPlan? fastening, FilmCutPlan film, bool brief)
    {
        json.Thickness("thickness", cover.Thickness);
        json.Text("order", TunnelResults.Word(cover.Order));
        json.Count("temporaryWires", cover.TemporaryWires);
        json.Length("bowTape", cover.BowTape);
        json.Group("ropes", () =>
        {
            json.Count("count", cover.Ropes.Count);
            json.Length("length", cover.Ropes.Length);
            json.List("marks", cover.Ropes.Marks, mark => json.Length("mark", mark));
        });
        json.List("pieces", cover.Pieces, piece =>
        {
            json.Text("id", piece.Id);
            json.Text("role", TunnelResults.Word(piece.Role));
            json.Text("place", piece.Place);
            json.Length("alongRoll", piece.AlongRoll);
            json.Length("acrossRoll", piece.AcrossRoll);
            Parts(json, "alongParts", piece.AlongParts);
            Parts(json, "acrossParts", piece.AcrossParts);
            json.Area("finishedArea", piece.FinishedArea);
            json.Count("count", piece.Count);
        });
        json.List("runs", cover.Runs, run =>
        {
            json.Text("id", run.Id);
            json.Text("kind", TunnelResults.Word(run.Kind));
            json.Text("place", run.Place);
            json.Length("length", run.Length);
            json.Count("wires", run.Wires);
            json.Flag("onWood", run.OnWood);
            json.Names("pieces", run.PieceIds);
            json.Names("members", run.OnMemberIds);
        });
        if (!brief) json.Group("pull", () => Pull(json, cover.Pull));
        if (fastening is not null) json.Group("fastening", () => FasteningResults.Fastening(json, fastening));
        json.Group("film", () => Film(json, film));
    }

    private static void Pull(ResultWriter json, PullPlan pull)
    {
        json.Temperature("coldest", pull.Coldest);
        json.Temperature("hottest", pull.Hottest);
        json.Ratio("coldLimit", pull.ColdLimit);
        json.Ratio("hotLimit", pull.HotLimit);
        json.Temperature("best", pull.Best);
        json.Flag("hasRoom", pull.HasRoom);
        json.Force("gaugePush", pull.GaugePush);
        json.Force("oneHand", pull.OneHand);
        json.Count("hands", pull.Hands);
        json.Group("planned", () => PullRow(json, pull.Planned));
        json.List("rows", pull.Rows, row => PullRow(json, row));
    }

    private static void PullRow(ResultWriter json, PullRow row)
    {
        json.Temperature("film", row.Film);
        json.Temperature("airInSun", row.AirInSun);
        json.Ratio("least", row.Least);
        json.Ratio("most", row.Most);
        json.Ratio("target", row.Target);
        json.Text("advice", TunnelResults.Word(row.Advice));
        json.Length("pastSnugPerBay", row.PastSnugPerBay);
        json.Length("pastSnugAlong", row.PastSnugAlong);
        json.Length("pastSnugOverBow", row.PastSnugOverBow);
        json.Length("sag", row.Sag);
        json.Length("give", row.Give);
        json.Force("handPull", row.HandPull);
        json.ForcePerLength("coldPull", row.ColdPull);
        json.ForcePerLength("coldPullCrept", row.ColdPullCrept);
        json.Length("hotSag", row.HotSag);
        json.Length("hotSagCrept", row.HotSagCrept);
    }

    public static void Takeoff(ResultWriter json, TakeoffList takeoff) => json.List("takeoff", takeoff.Lines, line =>
    {
        json.Text("id", line.Id);
        json.Text("item", line.Item);
        json.Text("size", line.Size);
        json.Text("stage", TunnelResults.Word(line.Stage));
        json.Text("unit", TunnelResults.Word(line.Unit));
        json.Number("quantity", decimal.Round(line.Quantity, 6));
        json.List("parts", line.Parts, part =>
        {
            json.Number("quantity", decimal.Round(part.Quantity, 6));
            json.Text("rule", part.Rule);
            json.Text("source", part.Source.ToString());
            json.Names("from", part.TraceIds);
        });
        json.List("pieces", line.Pieces, piece =>
        {
            json.Text("for", piece.MemberId);
            json.Length("length", piece.Length);
        });
        json.Names("rules", line.RulePaths);
    });

    public static void Orders(ResultWriter json, OrderList orders, Haul haul)
    {
        json.Group("haul", () =>
        {
            json.Mass("steel", haul.Steel);
            json.Mass("lumber", haul.Lumber);
            json.Mass("dryConcrete", haul.DryConcrete);
            json.Mass("film", haul.Film);
            json.Mass("all", haul.All);
        });
        json.Text("currency", orders.Currency);
        json.Text("priceNote", orders.PriceNote);
        json.Price("total", orders.Total);
        json.Count("unpriced", orders.Unpriced);
        json.List("stages", orders.Stages, stage =>
        {
            json.Text("stage", stage.Stage is { } named ? TunnelResults.Word(named) : "none");
            json.Price("cost", stage.Cost);
        });
        json.List("lines", orders.Lines, line =>
        {
            json.Text("supplier", TunnelResults.Word(line.Supplier));
            json.Text("item", line.Item);
            json.Text("size", line.Size);
            if (line.Width is { } width) json.Length("width", width);
            if (line.Length is { } length) json.Length("length", length);
            json.Text("package", line.Package);
            json.Text("unit", line.Unit);
            json.Number("needed", decimal.Round(line.Needed, 6));
            json.Text("neededText", OrderAmount.Needed(line, json.Units));
            json.Number("waste", decimal.Round(line.Waste, 6));
            json.Number("spare", decimal.Round(line.Spare, 6));
            json.Number("fromStock", decimal.Round(line.FromStock, 6));
            json.Number("perPackage", decimal.Round(line.PerPackage, 9));
            json.Count("packages", line.Packages);
            json.Number("over", decimal.Round(line.Over, 6));
            json.Price("price", line.Price);
            json.Text("priceFrom", TunnelResults.Word(line.Origin));
            json.Price("extension", line.Extension);
            json.Names("takeoff", line.TakeoffIds);
        });
    }

    public static void Cuts(ResultWriter json, CutSheets cuts) => json.List("cuts", cuts.Sheets, sheet =>
    {
        json.Text("letter", sheet.Letter);
        json.Text("item", sheet.Item);
        json.Text("size", sheet.Size);
        json.Length("kerf", sheet.Kerf);
        json.Length("trim", sheet.Trim);
        json.Price("cost", sheet.Cost);
        json.Flag("proven", sheet.Proven);
        json.Number("gapPercent", decimal.Round((decimal)sheet.Gap.Percent, 3));
        json.Count("joinsCompared", sheet.JoinsCompared);
        json.Text("says", sheet.Says);
        if (sheet.Progress is { } progress)
        {
            json.Group("progress", () =>
            {
                json.Count("cut", progress.Cut);
                json.Count("bad", progress.Bad);
                json.Count("kept", progress.Kept);
                json.Count("changed", progress.Changed);
                json.Flag("fewestChanged", progress.FewestChanged);
                json.List("further", progress.Further, length => json.Length("length", length));
            });
        }
        json.List("joints", sheet.Joints, joint =>
        {
            json.Text("for", joint.MemberId);
            json.Length("at", joint.At);
            json.Text("before", joint.Before);
            json.Text("after", joint.After);
        });
        json.List("stops", sheet.Stops, stop =>
        {
            json.Length("length", stop.Length);
            json.Names("pieces", stop.Pieces);
        });
        json.List("madeToLength", sheet.MadeToLength, piece =>
        {
            json.Text("for", piece.MemberId);
            json.Length("length", piece.Length);
        });
        json.List("bars", sheet.Bars, bar =>
        {
            json.Count("number", bar.Number);
            json.Length("stock", bar.Stock);
            json.Flag("onHand", bar.OnHand);
            json.Text("state", TunnelResults.Word(bar.State));
            json.Flag("isRest", bar.IsRest);
            json.Text("entry", bar.EntryId);
            json.List("pieces", bar.Pieces, piece =>
            {
                json.Text("number", piece.Number);
                json.Text("name", CutPieceName.Of(piece).Text(piece.Parts));
                json.Length("from", piece.From);
                json.Length("length", piece.Length);
                json.Text("for", piece.MemberId);
                json.Count("part", piece.Part);
                json.Count("parts", piece.Parts);
                json.Text("place", piece.Place);
            });
            json.Length("leftover", bar.Leftover);
            json.Length("kerfLost", bar.KerfLost);
            json.Flag("leftoverUseful", bar.LeftoverUseful);
        });
    });

    private static void Film(ResultWriter json, FilmCutPlan film)
    {
        json.Text("rankedBy", TunnelResults.Word(film.RankedBy));
        json.Price("cost", film.Cost);
        json.Area("boughtArea", film.BoughtArea);
        json.Number("lowerBound", decimal.Round(film.LowerBound, 6));
        json.Flag("proven", film.Proven);
        json.List("rolls", film.Rolls, roll =>
        {
            json.Length("width", roll.Offer.Width);
            json.Length("length", roll.Offer.Length);
            json.Flag("onHand", roll.Offer.OnHand);
            json.List("levels", roll.Levels, level =>
            {
                json.Length("from", level.From);
                json.Length("to", level.To);
                json.List("pieces", level.Pieces, piece =>
                {
                    json.Text("piece", piece.PieceId);
                    json.Count("copy", piece.Copy);
                    json.Length("offset", piece.Offset);
                    json.Length("across", piece.Across);
                    json.Length("along", piece.Along);
                });
            });
            json.Length("remainder", roll.Remainder);
        });
    }

    private static void Parts(ResultWriter json, string name, ImmutableArray<PiecePart> parts) => json.List(name, parts, part =>
    {
        json.Text("name", part.Name);
        json.Length("length", part.Length);
        json.Text("rule", part.RulePath);
    });

    /// <summary>Lines of two orders that differ.</summary>
    public static void Compared(ResultWriter json, ImmutableArray<ComparedOrder> orders) => json.List("orders", orders, order =>
    {
        json.Text("change", order.Before is null ? "appears" : order.After is null ? "vanishes" : "changes");
        json.Text("item", order.Line.Item);
        json.Text("size", order.Line.Size);
        if (order.Line.Width is { } width) json.Length("width", width);
        if (order.Line.Length is { } length) json.Length("length", length);
        if (order.Before is { } before) json.Group("before", () => Bought(json, before));
        if (order.After is { } after) json.Group("after", () => Bought(json, after));
    });

    private static void Bought(ResultWriter json, OrderLine line)
    {
        json.Number("needed", decimal.Round(line.Needed, 6));
        json.Text("unit", line.Unit);
        json.Count("packages", line.Packages);
        json.Text("package", line.Package);
        json.Price("price", line.Price);
        json.Price("extension", line.Extension);
    }
}
