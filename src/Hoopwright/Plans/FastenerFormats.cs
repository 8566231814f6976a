using Hoopwright.Quantities;
using static Hoopwright.Plans.PlanFields;

namespace Hoopwright.Plans;

/// <summary>Screws, bolts, clamps and plates.</summary>
internal static class FastenerFormats
{
    public static PlanFormat<FastenerRules> Fasteners { get; } = new(
        Count<FastenerRules>("screwsPerLeg", 0, 24, rules => rules.ScrewsPerLeg, (rules, value) => rules with { ScrewsPerLeg = value }),
        Count<FastenerRules>("screwsPerSleeve", 0, 24, rules => rules.ScrewsPerSleeve, (rules, value) => rules with { ScrewsPerSleeve = value }),
        Count<FastenerRules>("clampsPerCrossing", 0, 24, rules => rules.ClampsPerCrossing, (rules, value) => rules with { ClampsPerCrossing = value }),
        Count<FastenerRules>("clampsPerBrace", 0, 24, rules => rules.ClampsPerBrace, (rules, value) => rules with { ClampsPerBrace = value }),
        Count<FastenerRules>("clampsPerTie", 0, 24, rules => rules.ClampsPerTie, (rules, value) => rules with { ClampsPerTie = value }),
        Count<FastenerRules>("boltsPerPost", 0, 24, rules => rules.BoltsPerPost, (rules, value) => rules with { BoltsPerPost = value }),
        Count<FastenerRules>("screwsPerCorner", 0, 24, rules => rules.ScrewsPerCorner, (rules, value) => rules with { ScrewsPerCorner = value }),
        Count<FastenerRules>("platesPerJoint", 0, 24, rules => rules.PlatesPerJoint, (rules, value) => rules with { PlatesPerJoint = value }),
        Count<FastenerRules>("screwsPerPlate", 0, 24, rules => rules.ScrewsPerPlate, (rules, value) => rules with { ScrewsPerPlate = value }),
        Count<FastenerRules>("pinsPerPost", 0, 24, rules => rules.PinsPerPost, (rules, value) => rules with { PinsPerPost = value }),
        Count<FastenerRules>("hipScrewsPerBow", 0, 24, rules => rules.HipScrewsPerBow, (rules, value) => rules with { HipScrewsPerBow = value }),
        Count<FastenerRules>("lagsPerPost", 0, 24, rules => rules.LagsPerPost, (rules, value) => rules with { LagsPerPost = value }),
        Count<FastenerRules>("lagsPerCripple", 0, 24, rules => rules.LagsPerCripple, (rules, value) => rules with { LagsPerCripple = value }),
        Count<FastenerRules>("screwsPerBracket", 0, 24, rules => rules.ScrewsPerBracket, (rules, value) => rules with { ScrewsPerBracket = value }),
        Count<FastenerRules>("screwsPerBoardEnd", 0, 24, rules => rules.ScrewsPerBoardEnd, (rules, value) => rules with { ScrewsPerBoardEnd = value }),
        Count<FastenerRules>("screwsPerHeaderEnd", 0, 24, rules => rules.ScrewsPerHeaderEnd, (rules, value) => rules with { ScrewsPerHeaderEnd = value }),
        Quantity<FastenerRules, Length>("jambScrewSpacing", PlanRanges.Fastening, rules => rules.JambScrewSpacing, (rules, value) => rules with { JambScrewSpacing = value }),
        Quantity<FastenerRules, Length>("sheetScrewSpacing", PlanRanges.Fastening, rules => rules.SheetScrewSpacing, (rules, value) => rules with { SheetScrewSpacing = value }),
        Quantity<FastenerRules, Length>("rollClipSpacing", PlanRanges.Fastening, rules => rules.RollClipSpacing, (rules, value) => rules with { RollClipSpacing = value }));
}
