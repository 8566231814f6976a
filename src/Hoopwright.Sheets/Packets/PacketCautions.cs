using Hoopwright.CoverSteps;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Pages;
using Hoopwright.Sheets.Words;

namespace Hoopwright.Sheets.Packets;

/// <summary>The cautions of the packet: what can happen, what to do, who decides. Each stands where the danger is.</summary>
internal static class PacketCautions
{
    public static (string Title, string Text) Digging(UnitSystem units) => ("Before anything is dug or driven",
        $"Buried lines: have the public ones marked by the one-call service, and find the private ones (yard lights, farm water) yourself. Overhead lines: keep tubes and ladders at least {StepCaution.LineDistance(units)} away and carry long tube level. A taut string can snap; keep your face out of its line.");

    public static (string Title, string Text) Concrete { get; } = ("Wet concrete and deep holes",
        "Wet concrete burns, and the pain may come late: gloves and boots that keep water out, wash at once. Its dust harms the lungs: open bags low and upwind. Concrete belongs below the frost line. Local code and a licensed engineer decide on anchorage.");

    public static (string Title, string Text) Film { get; } = ("Film in wind is a sail",
        "Pull film only in a calm (smoke goes straight up, leaves hardly stir), on a dry, mild day, with enough hands. Never wind a rope round a hand. Ladders: foot out a quarter of the height, tied at the top; never lift people in a loader bucket. Check every measure on the real tunnel before film is cut: film cut short is lost.");

    public static (string Title, string Text) Saw { get; } = ("Saw and springy channel",
        "Eye and ear protection at the saw; clamp short pieces. Lock channel bent round a bow is under spring tension: hold it until it is screwed.");

    /// <summary>Sets a caution, in the language of whoever reads the sheets.</summary>
    public static PacketBook Caution(this PacketBook book, (string Title, string Text) caution, CrewWords? words = null) =>
        book.Caution((words ?? CrewWords.English).Fill(caution.Title), (words ?? CrewWords.English).Fill(caution.Text));
}
