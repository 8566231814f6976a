using Hoopwright.AsBuilt;
using Hoopwright.BeforeCuts;
using Hoopwright.Orders;
using Hoopwright.Quantities;

namespace Hoopwright.Packets;

/// <summary>Writes what was measured, what to put right, and the checks before each cut.</summary>
internal static class SiteBookResults
{
    public static void SiteBook(ResultWriter json, PlannedTunnel planned, AsBuiltTunnel built, CutChecks checks)
    {
        json.List("measured", built.Measurements.Measured, each => Measured(json, each));
        json.List("deviations", built.Deviations.Where(each => each.IsOut), each =>
        {
            json.Text("name", each.Measurement.Of.Name);
            json.Length("off", each.Measurement.Off ?? Length.Zero);
            json.Text("putRight", each.PutRightText);
            json.Text("orElse", each.OrElse?.ToString());
        });
        json.Flag("doesNotFit", built.DoesNotFit);
        if (built.Squaring is { } squaring) json.Group("squaring", () => Square(json, squaring));
        json.Group("certainty", () =>
        {
            json.Thickness("deviation", built.Noise.Deviation);
            json.Flag("assumed", built.Noise.IsAssumed);
            json.Count("repeats", built.Noise.Repeats);
            json.Ratio("confidence", MeasuringNoise.Confidence);
            json.Count("bowsMeasured", built.BowsMeasured);
            json.Count("bows", built.Planned.Stations.Length);
            if (built.OverBowWithin is { } over) json.Thickness("overBowWithin", over);
            if (built.AlongWithin is { } along) json.Thickness("alongWithin", along);
        });
        json.List("checks", checks.All, check => Check(json, check));
        if (planned is { ByPlan.Orders: { } before, Orders: { } after }) json.Group("changed", () => Changed(json, planned, before, after));
    }

    private static void Changed(ResultWriter json, PlannedTunnel planned, OrderList before, OrderList after)
    {
        json.Price("total", after.Total);
        json.Price("totalByPlan", before.Total);
        json.Price("more", after.Total - before.Total);
        OrderResults.Compared(json, OrderComparison.Of(before, after).Lines);
        if (planned is not { StrengthByPlan: { } strengthBefore, Strength: { } strength }) return;
        json.List("limits", strength.Limits.Select(limit => (Limit: limit, Before: limit.Wind is null ? strengthBefore.InSnow(limit.Level) : strengthBefore.InWind(limit.Level))), pair =>
        {
            json.Text("level", TunnelResults.Word(pair.Limit.Level));
            json.Range("groundSnow", pair.Limit.GroundSnow);
            json.Range("groundSnowByPlan", pair.Before?.GroundSnow);
            json.Range("wind", pair.Limit.Wind);
            json.Range("windByPlan", pair.Before?.Wind);
        });
    }

    private static void Measured(ResultWriter json, Measurement measurement)
    {
        json.Text("name", measurement.Of.Name);
        json.Text("kind", TunnelResults.Word(measurement.Of.Kind));
        json.Text("what", measurement.Of.What);
        json.Length("planned", measurement.Of.Planned);
        if (measurement is { Value: { } value, Off: { } off })
        {
            json.Length("measured", value);
            json.Length("off", off);
        }
        json.Length("tolerance", measurement.Of.Tolerance);
        json.Flag("out", measurement.IsOut);
        json.Flag("inDoubt", measurement.IsInDoubt);
        json.Length("spread", measurement.Spread);
        json.List("readings", measurement.Readings, reading =>
        {
            json.Text("entry", reading.EntryId);
            json.Text("value", reading.Text);
            json.Text("by", reading.By);
            json.Text("standing", TunnelResults.Word(reading.Standing));
            json.Count("corrections", reading.Corrections.Length);
        });
    }

    private static void Square(ResultWriter json, Squaring squaring)
    {
        json.Flag("square", squaring.IsSquare);
        json.Length("diagonalsDiffer", squaring.DiagonalsDiffer);
        json.Text("held", squaring.Held);
        json.List("corners", squaring.Corners, corner =>
        {
            json.Text("name", corner.Name);
            json.Length("x", corner.X);
            json.Length("y", corner.Y);
            json.Length("moveRight", corner.MoveRight);
            json.Length("moveBack", corner.MoveBack);
        });
        json.List("residuals", squaring.Residuals, residual =>
        {
            json.Text("name", residual.Name);
            json.Movement("left", residual.Left);
        });
    }

    private static void Check(ResultWriter json, CutCheck check)
    {
        json.Text("id", check.Id);
        json.Text("verdict", TunnelResults.Word(check.Verdict));
        json.Text("says", check.SaysText);
        json.Length("shortBy", check.ShortBy);
        json.Text("decision", check.Decision?.Id);
        json.List("needs", check.Needs, need =>
        {
            json.Text("name", need.Of.Name);
            json.Flag("missing", need.IsMissing);
        });
        json.List("changed", check.Changed, piece =>
        {
            json.Text("id", piece.Id);
            json.Text("place", piece.Place);
            json.Length("planned", piece.Planned);
            json.Length("now", piece.Now);
            json.Length("shortBy", piece.ShortBy);
        });
    }
}
