using System.Collections.Immutable;
using Hoopwright.Diagnostics;
using Hoopwright.Plans;
using Hoopwright.Quantities;

namespace Hoopwright.Layout;

/// <summary>What the parts of the layout share while a tunnel is being laid out.</summary>
internal sealed class LayoutDraft(Plan plan, Answers answers)
{
    public Plan Plan { get; } = plan;

    public Answers Answers { get; } = answers;

    public UnitSystem Units => Answers.Units;

    public List<Diagnostic> Diagnostics { get; } = [];

    public List<Member> Members { get; } = [];

    public List<ConcreteHole> Holes { get; } = [];

    public bool HasErrors => Diagnostics.Any(diagnostic => diagnostic.Severity == Severity.Error);

    public required Length Span { get; init; }

    public required Length Length { get; init; }

    public required BowShape Bow { get; init; }

    public required BowShape FrontBow { get; init; }

    public required BowShape BackBow { get; init; }

    /// <summary>What was measured; null while nothing was.</summary>
    public BuiltSizes? Built { get; init; }

    public required TubeSection BowTube { get; set; }

    public required GroundSurface Ground { get; init; }

    public required ImmutableArray<BowStation> Stations { get; init; }

    /// <summary>What was measured under a name, or else what is planned.</summary>
    public Length Measured(string name, Length planned) => Built?.Of(name) ?? planned;

    public string Tape(Length length) => TapeText.Of(length, Units);

    public void Error(string code, string path, string message, string? seen, string? accepted) =>
        Diagnostics.Add(new Diagnostic(code, Severity.Error, path, message, seen, accepted));

    public void Warn(string code, string path, string message, string? seen, string? accepted) =>
        Diagnostics.Add(new Diagnostic(code, Severity.Warning, path, message, seen, accepted));

    /// <summary>The tube a part of the plan asks for.</summary>
    public TubeSection Tube(string path, Tube tube, Usual<Length> outside, Usual<Length> wall)
    {
        Length outsideLength = Answers.Take(path + ".outside", outside, tube.Outside);
        Length wallLength = Answers.Take(path + ".wall", wall, tube.Wall);
        if (wallLength * 2 >= outsideLength)
        {
            Error("tube.wall-too-thick", path + ".wall", "The wall is thicker than half the tube.",
                tube.Wall?.Text ?? Tape(wallLength), $"under {Tape(outsideLength / 2)}");
        }
        return new TubeSection(outsideLength, wallLength,
            Answers.Take(path + ".form", LayoutDefaults.Form, tube.Form),
            Answers.Take(path + ".material", LayoutDefaults.Material, tube.Material));
    }

    /// <summary>The board a part of the plan asks for.</summary>
    public BoardSection Board(string path, Board board, Usual<string> size, Usual<bool> treated)
    {
        Usual<string> usual = size.LumberIn(Units);
        string nominal = Answers.Take(path + ".size", usual, board.Size);
        bool isTreated = Answers.Take(path + ".treated", treated, board.Treated);
        return Lumber(path + ".size", nominal, isTreated, usual.Value);
    }

    /// <summary>A lumber size; the usual one stands in, with an error, where the given one is unknown.</summary>
    public BoardSection Lumber(string path, string nominal, bool treated, string fallback)
    {
        if (LumberSizes.Find(nominal) is not { } size)
        {
            Error("lumber.unknown-size", path, "This lumber size is not known.", nominal, $"a size such as {fallback}");
            size = LumberSizes.Find(fallback) ?? throw new InvalidOperationException($"No lumber size {fallback}.");
        }
        return new BoardSection(size.Name, size.Thickness, size.Width, treated);
    }

    /// <summary>Stock lengths as typed.</summary>
    public static ImmutableArray<Length> StockLengths(ImmutableArray<Written<Length>> written) =>
        [.. written.Select(length => length.Value)];

    /// <summary>Stretches about every bow in which a lengthwise board may have no joint.</summary>
    public ImmutableArray<NoJoint> OffTheBows()
    {
        Length clear = LayoutDefaults.JointClear.ValueIn(Units);
        Length first = Stations[0].Along;
        return [.. Stations.Select(station => new NoJoint(station.Along - first - clear, station.Along - first + clear))];
    }

    /// <summary>Says so where treated lumber meets the soil of organic ground.</summary>
    public void CheckTreated(string path, BoardSection board)
    {
        if (Plan.Site.Organic == true && board.Treated)
        {
            Warn("lumber.treated-on-organic", path,
                "Organic rules bar lumber treated with prohibited materials where it meets the soil (7 CFR 205.206(f)); ask your certifier.",
                board.Size, "rot-resistant untreated lumber, or a treatment your certifier allows");
        }
    }
}
