using System.Globalization;
using System.Text;

namespace Hoopwright.Browser.Tests;

/// <summary>A frame file of the size of a tunnel: half-round bows in a row, three purlins, a brace at each corner, under own weight and snow.</summary>
internal static class RowOfBows
{
    public const int Bows = 25;

    private const int Chords = 56;
    private const double RadiusM = 4, BayM = 1.2;

    /// <summary>Freedoms that are not held, as the feet are hinged.</summary>
    public static int Freedoms => (Bows * (Chords + 1) * 6) - (Bows * 2 * 3);

    /// <summary>The file, UTF-8.</summary>
    public static byte[] File()
    {
        StringBuilder nodes = new(), members = new(), supports = new(), snow = new();
        for (int bow = 0; bow < Bows; bow++)
        {
            for (int node = 0; node <= Chords; node++)
            {
                double turn = Math.PI * node / Chords;
                nodes.Append(CultureInfo.InvariantCulture, $"\"{Name(bow, node)}\":[{-RadiusM * Math.Cos(turn):R},{bow * BayM:R},{RadiusM * Math.Sin(turn):R}],");
                if (node == 0) continue;
                Member($"b{bow}-{node}", Name(bow, node - 1), Name(bow, node), "bow");
                snow.Append(CultureInfo.InvariantCulture, $"\"b{bow}-{node}\":{{\"uniform\":{{\"z\":-300,\"frame\":\"global\",\"per\":\"projection\"}}}},");
            }
            foreach (int foot in (int[])[0, Chords]) supports.Append(CultureInfo.InvariantCulture, $"\"{Name(bow, foot)}\":[\"ux\",\"uy\",\"uz\"],");
            foreach (int at in (int[])[14, 28, 42])
            {
                if (bow > 0) Member($"p{bow}-{at}", Name(bow - 1, at), Name(bow, at), "bow");
            }
        }
        foreach ((int from, int to) in ((int, int)[])[(0, 2), (Bows - 1, Bows - 3)])
        {
            foreach ((int foot, int high) in ((int, int)[])[(0, 14), (Chords, 42)]) Member($"d{from}-{foot}", Name(from, high), Name(to, foot), "bow");
        }
        return Encoding.UTF8.GetBytes($$$"""
            {
              "nodes": { {{{nodes}}} },
              "sections": { "bow": { "tube": { "outsideDiameterM": 0.0483, "wallM": 0.0026 } } },
              "materials": { "steel": { "youngPa": 2.0e11, "shearPa": 7.7e10, "densityKgM3": 7850 } },
              "members": { {{{members}}} },
              "supports": { {{{supports}}} },
              "loadCases": { "dead": { "selfWeight": [0, 0, -1] }, "snow": { "members": { {{{snow}}} } } },
              "combinations": { "snow": { "dead": 1.2, "snow": 1.0 } },
              "analysis": { "kind": "secondOrder" },
            }
            """);

        void Member(string id, string from, string to, string section) =>
            members.Append(CultureInfo.InvariantCulture, $"\"{id}\":{{\"from\":\"{from}\",\"to\":\"{to}\",\"section\":\"{section}\",\"material\":\"steel\"}},");
    }

    private static string Name(int bow, int node) => string.Create(CultureInfo.InvariantCulture, $"n{bow}-{node}");
}
