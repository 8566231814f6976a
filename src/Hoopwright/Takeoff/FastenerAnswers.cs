using System.Globalization;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Takeoff;

/// <summary>The rules by which screws, bolts, clamps and plates are counted: as the plan has them, or the usual ones. Each is asked where it is used.</summary>
internal sealed class FastenerAnswers(Plan plan, Answers answers)
{
    private readonly FastenerRules rules = plan.Fasteners;

    public RuleAsked<int> ScrewsPerLeg => Ask("screwsPerLeg", TakeoffDefaults.ScrewsPerLeg, rules.ScrewsPerLeg);

    public RuleAsked<int> ScrewsPerSleeve => Ask("screwsPerSleeve", TakeoffDefaults.ScrewsPerSleeve, rules.ScrewsPerSleeve);

    public RuleAsked<int> ClampsPerCrossing => Ask("clampsPerCrossing", TakeoffDefaults.ClampsPerCrossing, rules.ClampsPerCrossing);

    public RuleAsked<int> ClampsPerBrace => Ask("clampsPerBrace", TakeoffDefaults.ClampsPerBrace, rules.ClampsPerBrace);

    public RuleAsked<int> ClampsPerTie => Ask("clampsPerTie", TakeoffDefaults.ClampsPerTie, rules.ClampsPerTie);

    public RuleAsked<int> BoltsPerPost => Ask("boltsPerPost", TakeoffDefaults.BaseboardBoltsPerPost, rules.BoltsPerPost);

    public RuleAsked<int> ScrewsPerCorner => Ask("screwsPerCorner", TakeoffDefaults.ScrewsPerCorner, rules.ScrewsPerCorner);

    public RuleAsked<int> PlatesPerJoint => Ask("platesPerJoint", TakeoffDefaults.PlatesPerJoint, rules.PlatesPerJoint);

    public RuleAsked<int> ScrewsPerPlate => Ask("screwsPerPlate", TakeoffDefaults.ScrewsPerPlate, rules.ScrewsPerPlate);

    public RuleAsked<int> PinsPerPost => Ask("pinsPerPost", TakeoffDefaults.PinsPerPost(answers.Units), rules.PinsPerPost);

    public RuleAsked<int> HipScrewsPerBow => Ask("hipScrewsPerBow", TakeoffDefaults.HipScrewsPerBow, rules.HipScrewsPerBow);

    public RuleAsked<int> LagsPerPost => Ask("lagsPerPost", TakeoffDefaults.LagsPerPost, rules.LagsPerPost);

    public RuleAsked<int> LagsPerCripple => Ask("lagsPerCripple", TakeoffDefaults.LagsPerCripple, rules.LagsPerCripple);

    public RuleAsked<int> ScrewsPerBracket => Ask("screwsPerBracket", TakeoffDefaults.ScrewsPerBracket, rules.ScrewsPerBracket);

    public RuleAsked<int> ScrewsPerBoardEnd => Ask("screwsPerBoardEnd", TakeoffDefaults.ScrewsPerBoardEnd, rules.ScrewsPerBoardEnd);

    public RuleAsked<int> ScrewsPerHeaderEnd => Ask("screwsPerHeaderEnd", TakeoffDefaults.ScrewsPerHeaderEnd, rules.ScrewsPerHeaderEnd);

    public RuleAsked<Length> JambScrewSpacing => Ask("jambScrewSpacing", TakeoffDefaults.JambScrewSpacing, rules.JambScrewSpacing);

    public RuleAsked<Length> SheetScrewSpacing => Ask("sheetScrewSpacing", TakeoffDefaults.SheetScrewSpacing, rules.SheetScrewSpacing);

    public RuleAsked<Length> RollClipSpacing => Ask("rollClipSpacing", TakeoffDefaults.RollClipSpacing, rules.RollClipSpacing);

    private RuleAsked<int> Ask(string field, Usual<int> usual, int? given)
    {
        string says = given is { } own && own != usual.Value ? Instead(usual.Says, own.ToString(CultureInfo.InvariantCulture)) : usual.Says;
        return new(answers.Take(Path(field), usual with { Says = says }, given), says, usual.Source, Path(field));
    }

    private RuleAsked<Length> Ask(string field, Usual<Length> usual, Written<Length>? given)
    {
        usual = usual.In(answers.Units);
        string says = given is { } own && own.Value != usual.Value ? Instead(usual.Says, own.Text) : usual.Says;
        return new(answers.Take(Path(field), usual with { Says = says }, given), says, usual.Source, Path(field));
    }

    private static string Path(string field) => "fasteners." + field;

    /// <summary>The usual rule in words, and what the plan has in its place.</summary>
    private static string Instead(string usual, string given) => $"{usual.TrimEnd('.')}; the plan has {given} instead.";
}
