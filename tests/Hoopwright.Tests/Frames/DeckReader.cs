using System.Globalization;
using Hoopwright.Frames;
using Hoopwright.Geometry;
using Hoopwright.Quantities;
using Hoopwright.Testing;

namespace Hoopwright.Tests.Frames;

/// <summary>Reads the part of a CalculiX deck that the decks beside this file use; its y is our z, and its mm our m.</summary>
internal static class DeckReader
{
    internal static string Folder { get; } = Path.Combine(SamplePlans.Root, "tests", "Hoopwright.Tests", "Frames", "Decks");

    internal static FrameModel Read(string name, FrameAnalysisKind kind, int modes = 1, bool planar = false, bool shear = false)
    {
        var places = new List<Vector3>();
        var held = new Dictionary<int, Freedoms>();
        var elements = new List<(string Set, int[] Nodes)>();
        var tubes = new Dictionary<string, RoundTube>();
        var groups = new Dictionary<string, List<int>>();
        var loads = new List<NodeLoad>();
        double? warmerK = null;
        string[] card = [];
        foreach (string line in File.ReadLines(Path.Combine(Folder, name + ".inp")))
        {
            if (line.StartsWith("**", StringComparison.Ordinal))
                continue;
            string[] cells = line.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            if (line.StartsWith('*'))
            {
                card = cells;
                continue;
            }
            switch (card[0])
            {
                case "*NODE":
                    places.Add(new(Number(cells[1]) / 1000, Number(cells[3]) / 1000, Number(cells[2]) / 1000));
                    break;
                case "*ELEMENT":
                    elements.Add((Set(card, "ELSET="), [.. cells.Skip(1).Select(Node)]));
                    break;
                case "*NSET":
                    string set = Set(card, "NSET=");
                    if (!groups.TryGetValue(set, out var members))
                        groups[set] = members = [];
                    members.AddRange(cells.Select(Node));
                    break;
                case "*BEAM SECTION":
                    tubes.TryAdd(Set(card, "ELSET="), new(Length.FromMillimetres(2 * Number(cells[0])), Length.FromMillimetres(Number(cells[1]))));
                    break;
                case "*BOUNDARY":
                    int[] nodes = cells[0] == "NALL" ? [.. Enumerable.Range(0, places.Count)] : groups.TryGetValue(cells[0], out var group) ? [.. group] : [Node(cells[0])];
                    int first = int.Parse(cells[1], CultureInfo.InvariantCulture), last = cells.Length > 2 ? int.Parse(cells[2], CultureInfo.InvariantCulture) : first;
                    foreach (int node in nodes)
                        held[node] = held.GetValueOrDefault(node) | Enumerable.Range(first, last - first + 1).Aggregate(Freedoms.None, (all, one) => all | Axis(one));
                    break;
                case "*CLOAD":
                    double force = Number(cells[2]);
                    loads.Add(new(Node(cells[0]), cells[1] switch { "1" => new(force, 0, 0, 0, 0, 0), "2" => new(0, 0, force, 0, 0, 0), _ => new(0, force, 0, 0, 0, 0) }));
                    break;
                case "*TEMPERATURE":
                    warmerK = Number(cells[1]);
                    break;
                default:
                    break;
            }
        }
        var beams = elements.SelectMany(element => new[] { (element.Set, From: element.Nodes[0], To: element.Nodes[1]), (element.Set, From: element.Nodes[1], To: element.Nodes[2]) }).ToArray();
        return new()
        {
            Nodes = [.. places.Select((place, at) => new FrameNode($"{at + 1}", place) { Held = held.GetValueOrDefault(at) })],
            Members = [.. beams.Select((beam, at) => new FrameMember { Id = $"{at}", From = beam.From, To = beam.To, Section = FrameSection.Of(tubes[beam.Set], shear), Material = new(2e11, 1e11, 1.2e-5) })],
            LoadCases = [new("L") { Nodes = [.. loads], Temperatures = warmerK is { } riseK ? [.. beams.Select((_, at) => new MemberTemperature(at, riseK))] : [] }],
            Combinations = [new("C", [new(0, 1)])],
            Analysis = new() { Kind = kind, Modes = modes, Planar = planar },
        };
    }

    // The exchange of y and z exchanges turns as well; which way round they count does not matter where they are held.
    private static Freedoms Axis(int one) => one switch
    {
        1 => Freedoms.Ux,
        2 => Freedoms.Uz,
        3 => Freedoms.Uy,
        4 => Freedoms.Rx,
        5 => Freedoms.Rz,
        _ => Freedoms.Ry,
    };

    private static string Set(string[] card, string name) => card.First(cell => cell.StartsWith(name, StringComparison.Ordinal))[name.Length..];

    private static int Node(string text) => int.Parse(text, CultureInfo.InvariantCulture) - 1;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
