using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>
/// Values that can be built and are still so far from what tunnels have that a slip of the pen is likelier: the wrong unit, a
/// lost digit. The bounds are common practice, no source, but for wind, where mapped gusts of the United States lie between 80 and
/// 200 mph (Simiu and Filliben, J. Struct. Eng. 125 (1999) 1077, and the building codes).
/// </summary>
internal static class Plausible
{
    private const double ThickestWallPart = 1.0 / 8;

    public static void Check(LayoutDraft draft)
    {
        Plan plan = draft.Plan;
        Length length = plan.Frame.Length!.Value.Value;
        if (draft.Span < Length.FromFeet(6) || draft.Span > Length.FromFeet(50))
        {
            draft.Warn("frame.span.unusual", "frame.span", "Tunnels are rarely so wide or so narrow: is the unit right?",
                plan.Frame.Span!.Value.Text, $"{draft.Tape(Length.FromFeet(6))} to {draft.Tape(Length.FromFeet(50))}");
        }
        if (length < Length.FromFeet(8) || length > Length.FromFeet(400))
        {
            draft.Warn("frame.length.unusual", "frame.length", "Tunnels are rarely so long or so short: is the unit right?",
                plan.Frame.Length.Value.Text, $"{draft.Tape(Length.FromFeet(8))} to {draft.Tape(Length.FromFeet(400))}");
        }
        if (draft.BowTube.Wall / draft.BowTube.Outside > ThickestWallPart)
        {
            draft.Warn("frame.bow-tube.thick", "frame.bowTube.wall", "Tube for bows is rarely so thick: is a digit lost?",
                TapeText.OfThickness(draft.BowTube.Wall, draft.Answers.Units), $"up to {TapeText.OfThickness(draft.BowTube.Outside * ThickestWallPart, draft.Answers.Units)} for this tube");
        }
        Wind(draft, plan);
        if (plan.Site.GroundSnow is { } snow && snow.Value > Pressure.FromPoundsPerSquareFoot(250))
        {
            draft.Warn("site.ground-snow.unusual", "site.groundSnow", "So much ground snow is rare outside high mountains: is the unit right?",
                snow.Text, $"up to {TapeText.Of(Pressure.FromPoundsPerSquareFoot(250), draft.Answers.Units)}");
        }
    }

    private static void Wind(LayoutDraft draft, Plan plan)
    {
        if (plan.Site.Wind is not { } wind) return;
        (Speed least, Speed most, string measure) = plan.Loads.Standard == LoadStandard.En1991
            ? (Speed.FromMetresPerSecond(18), Speed.FromMetresPerSecond(45), "ten-minute means")
            : (Speed.FromMilesPerHour(70), Speed.FromMilesPerHour(200), "gusts");
        if (wind.Value < least || wind.Value > most)
        {
            draft.Warn("site.wind.unusual", "site.wind", $"Wind to design for is rarely so weak or so strong; this standard takes {measure}: is the unit right?",
                wind.Text, $"{TapeText.Of(least, draft.Answers.Units)} to {TapeText.Of(most, draft.Answers.Units)}");
        }
    }
}
