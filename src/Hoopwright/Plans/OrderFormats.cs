using System.Collections.Immutable;
using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;
using static Hoopwright.Plans.PlanRanges;

namespace Hoopwright.Plans;

/// <summary>Crew, cuts, orders, prices, stock and site book.</summary>
internal static class OrderFormats
{
    /// <summary>The stages that a line of the order may belong to.</summary>
    public static ImmutableArray<string> Stages { get; } = ["site", "frame", "ground", "ends", "cover"];

    public static PlanFormat<Crew> Crew { get; } = new(
        Count<Crew>("people", 1, 200, crew => crew.People, (crew, value) => crew with { People = value }),
        Choice<Crew, CrewSkill>("skill", crew => crew.Skill, (crew, value) => crew with { Skill = value }));

    public static PlanFormat<CutRules> Cuts { get; } = new(
        Quantity<CutRules, Length>(
            "kerf", PlanQuantities.Length.Within("0 in", "1 in", "0 mm", "25 mm").Like("1/8 in", "3 mm"), cuts => cuts.Kerf, (cuts, value) => cuts with { Kerf = value }),
        Quantity<CutRules, Length>(
            "endTrim", PlanQuantities.Length.Within("0 in", "60 in", "0 mm", "1500 mm").Like("1/2 in", "10 mm"),
            cuts => cuts.EndTrim, (cuts, value) => cuts with { EndTrim = value }),
        Quantity<CutRules, Length>(
            "usefulLeftover", PlanQuantities.Length.Within("0 ft", "100 ft", "0 m", "30 m").Like("2 ft", "0.6 m"),
            cuts => cuts.UsefulLeftover, (cuts, value) => cuts with { UsefulLeftover = value }));

    public static PlanFormat<ExtraLine> ExtraLine { get; } = new(
        Text<ExtraLine>("item", "gravel", line => line.Item, (line, value) => line with { Item = value }, required: true),
        Quantity<ExtraLine, Ratio>(
            "quantity", PlanQuantities.Ratio.Within("0", "1000000").Like("3", "3"), line => line.Quantity, (line, value) => line with { Quantity = value }),
        Text<ExtraLine>("unit", "cubic yard", line => line.Unit, (line, value) => line with { Unit = value }),
        Quantity<ExtraLine, Money>("price", Price, line => line.Price, (line, value) => line with { Price = value }),
        Word<ExtraLine>("stage", Stages, line => line.Stage, (line, value) => line with { Stage = value }));

    public static PlanFormat<OrderRules> Orders { get; } = new(
        Quantity<OrderRules, Ratio>("concreteWaste", Spare, orders => orders.ConcreteWaste, (orders, value) => orders with { ConcreteWaste = value }),
        Quantity<OrderRules, Ratio>("fastenerSpare", Spare, orders => orders.FastenerSpare, (orders, value) => orders with { FastenerSpare = value }),
        Groups<OrderRules, ExtraLine>("extras", ExtraLine, orders => orders.Extras, (orders, value) => orders with { Extras = value }));

    public static PlanFormat<PriceLine> PriceLine { get; } = new(
        Text<PriceLine>("item", "board", line => line.Item, (line, value) => line with { Item = value }, required: true),
        Text<PriceLine>("size", "2x6 treated", line => line.Size, (line, value) => line with { Size = value }),
        Quantity<PriceLine, Length>(
            "length", PlanQuantities.Length.Within("1/2 in", "5000 ft", "13 mm", "1500 m").Like("12 ft", "3.6 m"), line => line.Length, (line, value) => line with { Length = value }),
        Count<PriceLine>("pack", 1, 1_000_000, line => line.Pack, (line, value) => line with { Pack = value }),
        Quantity<PriceLine, Money>("price", Price, line => line.Price, (line, value) => line with { Price = value }, required: true));

    public static PlanFormat<Prices> Prices { get; } = new(
        Text<Prices>("currency", "USD", prices => prices.Currency, (prices, value) => prices with { Currency = value }),
        Text<Prices>("note", "prices of the yard in town, March", prices => prices.Note, (prices, value) => prices with { Note = value }),
        Groups<Prices, PriceLine>("items", PriceLine, prices => prices.Items, (prices, value) => prices with { Items = value }));

    public static PlanFormat<StockOnHand> Stock { get; } = new(
        Text<StockOnHand>("item", "board", stock => stock.Item, (stock, value) => stock with { Item = value }, required: true),
        Text<StockOnHand>("size", "2x6 treated", stock => stock.Size, (stock, value) => stock with { Size = value }),
        Quantity<StockOnHand, Length>(
            "length", PlanQuantities.Length.Within("1/2 in", "5000 ft", "13 mm", "1500 m").Like("12 ft", "3.6 m"),
            stock => stock.Length, (stock, value) => stock with { Length = value }),
        Quantity<StockOnHand, Length>(
            "width", PlanQuantities.Length.Within("1/2 in", "200 ft", "13 mm", "60 m").Like("36 ft", "11 m"), stock => stock.Width, (stock, value) => stock with { Width = value }),
        Count<StockOnHand>("count", 0, 1_000_000, stock => stock.Count, (stock, value) => stock with { Count = value }));

    public static PlanFormat<PlanEdit> Edit { get; } = new(
        Text<PlanEdit>("id", "20260401T081500000Z-k3v9q2ma", edit => edit.Id, (edit, value) => edit with { Id = value }, required: true),
        Text<PlanEdit>("path", "frame.span", edit => edit.Path, (edit, value) => edit with { Path = value }, required: true),
        Text<PlanEdit>("value", "\\\"26 ft\\\"", edit => edit.Value, (edit, value) => edit with { Value = value }),
        Text<PlanEdit>("by", "the crew lead", edit => edit.By, (edit, value) => edit with { By = value }),
        Text<PlanEdit>("device", "phone of the lead", edit => edit.Device, (edit, value) => edit with { Device = value }),
        Texts<PlanEdit>("after", "20260331T071000000Z-0m4xw8bq", edit => edit.After, (edit, value) => edit with { After = value }));

    public static PlanFormat<SiteBookEntry> SiteBook { get; } = new(
        Text<SiteBookEntry>("id", "20260401T081500000Z-k3v9q2ma", entry => entry.Id, (entry, value) => entry with { Id = value }, required: true),
        Choice<SiteBookEntry, SiteBookKind>("kind", entry => entry.Kind, (entry, value) => entry with { Kind = value }, required: true),
        Text<SiteBookEntry>("of", "frame.span", entry => entry.Of, (entry, value) => entry with { Of = value }),
        Text<SiteBookEntry>("value", "26' 0-1/2\\\"", entry => entry.Value, (entry, value) => entry with { Value = value }),
        Text<SiteBookEntry>("by", "the crew lead", entry => entry.By, (entry, value) => entry with { By = value }),
        Text<SiteBookEntry>("device", "phone of the lead", entry => entry.Device, (entry, value) => entry with { Device = value }),
        Text<SiteBookEntry>("corrects", "20260401T081500000Z-k3v9q2ma", entry => entry.Corrects, (entry, value) => entry with { Corrects = value }),
        Text<SiteBookEntry>("note", "measured twice", entry => entry.Note, (entry, value) => entry with { Note = value }));
}
