using Hoopwright.Strength;
using Hoopwright.Takeoff;
using Hoopwright.Upkeep;

namespace Hoopwright.Packets;

/// <summary>Writes what a tunnel that stands asks for.</summary>
internal static class UpkeepResults
{
    public static void Upkeep(ResultWriter json, UpkeepReport upkeep)
    {
        json.Text("noCard", upkeep.NoCard);
        if (upkeep.Card is { } card) json.Group("card", () => Card(json, card));
        json.List("rounds", upkeep.Rounds, round =>
        {
            json.Text("id", round.Id);
            json.Text("title", round.Title.ToString());
            json.List("items", round.Items, item =>
            {
                json.Text("id", item.Id);
                json.Text("what", item.What.ToString());
                json.Text("source", item.Source.ToString());
            });
        });
        json.Group("film", () =>
        {
            json.Text("on", Day(upkeep.Film.On));
            json.Flag("fromSiteBook", upkeep.Film.FromSiteBook);
            json.Count("lifeYears", upkeep.Film.LifeYears);
            json.Text("recoverFrom", Day(upkeep.Film.RecoverFrom));
            json.Text("recoverBy", Day(upkeep.Film.RecoverBy));
        });
        json.List("order", upkeep.Order, line =>
        {
            json.Text("item", line.Name);
            json.Number("quantity", line.Quantity);
            json.Text("load", MaterialText.Load(line, json.Units));
        });
        json.List("rules", upkeep.Rules, rule => ResultsJson.Rule(json, rule));
        json.List("assumptions", upkeep.Assumptions, each => ResultsJson.Found(json, each));
    }

    private static void Card(ResultWriter json, StormCard card)
    {
        if (card.RoofSnow is { } roof) json.Pressure("roofSnow", roof);
        if (card.RoofSnowLies is { } lies) json.Text("roofSnowLies", TunnelResults.Word(lies));
        if (card.Fall is { } fall) json.Pressure("fall", fall);
        json.Ratio("clearAt", card.ClearAt);
        json.List("snow", card.Snow, snow =>
        {
            json.Text("kind", snow.Kind.Id);
            json.Text("words", snow.Kind.Words.ToString());
            json.Density("density", snow.Kind.Density);
            json.Text("densitySource", snow.Kind.Source.ToString());
            json.Movement("clear", snow.ClearAt);
            json.Movement("limit", snow.AtLimit);
        });
        json.List("gusts", card.Gusts, gust =>
        {
            json.Text("action", TunnelResults.Word(gust.Action));
            json.Speed("gust", gust.Gust);
            json.Text("does", gust.Does.ToString());
            json.Text("why", gust.Why.ToString());
            json.Text("source", gust.Source.ToString());
        });
        if (card.BareGust is { } bare) json.Speed("bareGust", bare);
        json.List("limits", card.Limits.Bows, limit => Limit(json, limit));
        json.List("parts", card.Limits.Parts, part => Part(json, part));
        json.Text("noParts", card.Limits.NoParts);
        json.List("order", card.Order, rule =>
        {
            json.Text("id", rule.Id);
            json.Text("text", rule.Text.ToString());
            json.Text("source", rule.Source.ToString());
        });
        json.List("cautions", card.Cautions, caution =>
        {
            json.Text("id", caution.Id);
            json.Text("text", caution.Text);
            json.Text("source", caution.Source.ToString());
        });
        json.Text("caution", StormWords.Limits);
    }

    private static void Limit(ResultWriter json, StormLimit limit)
    {
        json.Text("state", TunnelResults.Word(limit.State));
        json.Range("roofSnow", limit.RoofSnow);
        json.Range("groundSnow", limit.GroundSnow);
        json.Range("wind", limit.Wind);
        json.Text("loadCase", limit.CaseCode);
        json.Text("words", limit.CaseWords);
        json.Count("bow", limit.Bow);
        json.Text("governs", limit.Governs);
    }

    private static void Part(ResultWriter json, StormPart part)
    {
        json.Text("state", TunnelResults.Word(part.State));
        json.Text("code", part.Code);
        json.Text("words", part.Words);
        json.Text("governs", part.Governs);
        json.Flag("known", part.IsKnown);
        if (part.LeastWind is { } leastWind) json.Speed("windLeast", leastWind);
        if (part.MostWind is { } mostWind) json.Speed("windMost", mostWind);
        if (part.LeastSnow is { } leastSnow) json.Pressure("groundSnowLeast", leastSnow);
        if (part.MostSnow is { } mostSnow) json.Pressure("groundSnowMost", mostSnow);
    }

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
