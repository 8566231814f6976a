using System.Buffers;
using System.Text.Json;
using Hoopwright.Layout;
using Hoopwright.Quantities;
using Hoopwright.Sheets.Tables;

namespace Hoopwright.Sheets.GeoJson;

/// <summary>
/// The footprint and the stakes on the map, as GeoJSON (RFC 7946, IETF, 2016): longitude and latitude by WGS 84, rings anticlockwise. The place
/// of the plan is taken as the middle of the tunnel; the map is no better than that place.
/// </summary>
public static class GeoJsonWriter
{
    // The poles have no east, and a ring over the date line would have to be cut (RFC 7946, 3.1.9).
    private const double FarthestLatitudeDeg = 85, FarthestLongitudeDeg = 179.9;

    /// <summary>The file, UTF-8; null where the plan does not say where on the earth the tunnel stands and where its front looks.</summary>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="name">Its name.</param>
    public static byte[]? Write(Tunnel tunnel, string name)
    {
        ArgumentNullException.ThrowIfNull(tunnel);
        if (tunnel.Plan.Site is not { Latitude: { } latitude, Longitude: { } longitude, FrontFaces: { } faces }
            || Math.Abs(latitude.Value.Degrees) > FarthestLatitudeDeg || Math.Abs(longitude.Value.Degrees) > FarthestLongitudeDeg) return null;
        LocalGround ground = new(latitude.Value, longitude.Value);
        // Walking in by the front one looks the other way; the right hand is a quarter turn clockwise of that.
        double alongRad = faces.Value.Radians + Math.PI, acrossRad = alongRad + (Math.PI / 2);
        double halfSpanM = tunnel.Span.Metres / 2, halfLengthM = tunnel.Length.Metres / 2;
        ArrayBufferWriter<byte> text = new();
        using (Utf8JsonWriter json = new(text, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("type", "FeatureCollection");
            json.WriteStartArray("features");
            // From the left front corner: left, front and right as one enters make this way round clockwise, so the other way.
            Feature(json, "footprint", XmlText.Clean(name), () =>
            {
                json.WriteString("type", "Polygon");
                json.WriteStartArray("coordinates");
                json.WriteStartArray();
                foreach ((double x, double y) in (ReadOnlySpan<(double, double)>)[(0, 0), (1, 0), (1, 1), (0, 1), (0, 0)]) Place(json, tunnel.Span * x, tunnel.Length * y);
                json.WriteEndArray();
                json.WriteEndArray();
            });
            foreach ((string stake, Length x, Length y) in Stakes(tunnel))
            {
                Feature(json, "stake", stake, () =>
                {
                    json.WriteString("type", "Point");
                    json.WritePropertyName("coordinates");
                    Place(json, x, y);
                });
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return text.WrittenSpan.ToArray();

        void Place(Utf8JsonWriter json, Length x, Length y)
        {
            double acrossM = x.Metres - halfSpanM, alongM = y.Metres - halfLengthM;
            (double longitudeDeg, double latitudeDeg) = ground.At(
                (acrossM * Math.Sin(acrossRad)) + (alongM * Math.Sin(alongRad)), (acrossM * Math.Cos(acrossRad)) + (alongM * Math.Cos(alongRad)));
            json.WriteStartArray();
            // A tenth of a millimetre.
            json.WriteNumberValue(Math.Round((decimal)longitudeDeg, 9));
            json.WriteNumberValue(Math.Round((decimal)latitudeDeg, 9));
            json.WriteEndArray();
        }
    }

    private static void Feature(Utf8JsonWriter json, string kind, string name, Action geometry)
    {
        json.WriteStartObject();
        json.WriteString("type", "Feature");
        json.WriteStartObject("properties");
        json.WriteString("kind", kind);
        json.WriteString("name", name);
        json.WriteEndObject();
        json.WriteStartObject("geometry");
        geometry();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>The corners of the strings, the marks along both sides and across both ends.</summary>
    private static IEnumerable<(string Name, Length X, Length Y)> Stakes(Tunnel tunnel)
    {
        yield return ("left front corner", Length.Zero, Length.Zero);
        yield return ("right front corner", tunnel.Span, Length.Zero);
        yield return ("left back corner", Length.Zero, tunnel.Length);
        yield return ("right back corner", tunnel.Span, tunnel.Length);
        foreach (BowStation bow in tunnel.Stations)
        {
            yield return (FormattableString.Invariant($"bow {bow.Number}, left"), Length.Zero, bow.Along);
            yield return (FormattableString.Invariant($"bow {bow.Number}, right"), tunnel.Span, bow.Along);
        }
        foreach ((EndWall end, EndPost post) in tunnel.Ends.SelectMany(end => end.Posts.Select(post => (end, post)))) yield return (post.MemberId, post.Centre, end.Along);
    }
}
