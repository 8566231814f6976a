using Hoopwright.Diagnostics;
using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>
/// The plan as a whole. Together with the formats of its sections this is the one place that says what a plan may hold, in
/// the order a builder meets it: reader, writer and schema follow it.
/// </summary>
internal static class PlanFormats
{
    public static PlanFormat<Plan> Plan { get; } = new(
        new PlanField<Plan, PlanVersion>("hoopwright", new VersionValue(), plan => plan.Version, (plan, value) => plan with { Version = value })
        {
            Required = true,
        },
        Text<Plan>("name", "the long tunnel", plan => plan.Name, (plan, value) => plan with { Name = value }),
        Text<Plan>("note", "first try", plan => plan.Note, (plan, value) => plan with { Note = value }),
        Choice<Plan, UnitSystem>("units", plan => plan.Units, (plan, value) => plan with { Units = value }),
        Group<Plan, Site>("site", FrameFormats.Site, plan => plan.Site, (plan, value) => plan with { Site = value }),
        Group<Plan, Frame>("frame", FrameFormats.Frame, plan => plan.Frame, (plan, value) => plan with { Frame = value }, required: true),
        Group<Plan, Ground>("ground", EndFormats.Ground, plan => plan.Ground, (plan, value) => plan with { Ground = value }),
        Group<Plan, Ends>("ends", EndFormats.Ends, plan => plan.Ends, (plan, value) => plan with { Ends = value }),
        Group<Plan, Sides>("sides", EndFormats.Sides, plan => plan.Sides, (plan, value) => plan with { Sides = value }),
        Group<Plan, Cover>("cover", CoverFormats.Cover, plan => plan.Cover, (plan, value) => plan with { Cover = value }),
        Group<Plan, FastenerRules>("fasteners", FastenerFormats.Fasteners, plan => plan.Fasteners, (plan, value) => plan with { Fasteners = value }),
        Group<Plan, LoadRules>("loads", LoadFormats.Loads, plan => plan.Loads, (plan, value) => plan with { Loads = value }),
        Group<Plan, Crew>("crew", OrderFormats.Crew, plan => plan.Crew, (plan, value) => plan with { Crew = value }),
        Group<Plan, Build>("build", DayFormats.Build, plan => plan.Build, (plan, value) => plan with { Build = value }),
        Group<Plan, CoverDay>("coverDay", DayFormats.CoverDay, plan => plan.CoverDay, (plan, value) => plan with { CoverDay = value }),
        Group<Plan, InsideRules>("inside", InsideFormats.Inside, plan => plan.Inside, (plan, value) => plan with { Inside = value }),
        Group<Plan, BuildTolerances>("tolerances", ToleranceFormats.Tolerances, plan => plan.Tolerances, (plan, value) => plan with { Tolerances = value }),
        Group<Plan, UpkeepRules>("upkeep", UpkeepFormats.Upkeep, plan => plan.Upkeep, (plan, value) => plan with { Upkeep = value }),
        Group<Plan, CutRules>("cuts", OrderFormats.Cuts, plan => plan.Cuts, (plan, value) => plan with { Cuts = value }),
        Group<Plan, OrderRules>("orders", OrderFormats.Orders, plan => plan.Orders, (plan, value) => plan with { Orders = value }),
        Group<Plan, Prices>("prices", OrderFormats.Prices, plan => plan.Prices, (plan, value) => plan with { Prices = value }),
        Groups<Plan, StockOnHand>("stock", OrderFormats.Stock, plan => plan.Stock, (plan, value) => plan with { Stock = value }),
        Groups<Plan, SiteBookEntry>("siteBook", OrderFormats.SiteBook, plan => plan.SiteBook, (plan, value) => plan with { SiteBook = value }),
        Groups<Plan, PlanEdit>("edits", OrderFormats.Edit, plan => plan.Edits, (plan, value) => plan with { Edits = value }))
    {
        Check = CheckShared,
    };

    private static void CheckShared(PlanNode plan, PlanProblems problems)
    {
        CheckSiteBook(plan, problems);
        UndecidedEdits.Check(plan, problems);
    }

    // Two copies merge as the union of their entries, which needs identities that are one's own and sort by time.
    private static void CheckSiteBook(PlanNode plan, PlanProblems problems)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        string? before = null;
        foreach (var entry in plan.Children.FirstOrDefault(field => field.Name == "siteBook")?.Children ?? [])
        {
            if (entry.Children.FirstOrDefault(field => field.Name == "id") is not { Kind: PlanNodeKind.Text } id)
                continue;
            if (!seen.Add(id.Text))
            {
                problems.Warning(PlanCodes.SiteBookDuplicate, id, "Two entries of the site book have the same id; both are kept.", "an id of its own for every entry");
            }
            else if (before is not null && string.CompareOrdinal(id.Text, before) < 0)
            {
                problems.Warning(
                    PlanCodes.SiteBookOrder, id, $"The entry stands after {SeenText.Shorten(before)}, which its id says is later.",
                    "entries in the order of their ids");
            }

            before = id.Text;
        }
    }
}
