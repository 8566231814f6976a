using Hoopwright.Quantities;

namespace Hoopwright.Plans;

/// <summary>A plan to begin with: the questions a builder meets, in that order, each with a comment.</summary>
public static class StarterPlan
{
    /// <summary>The plan's text, with comments. It reads and lays out as it stands.</summary>
    /// <param name="shape">The shape of the bows.</param>
    /// <param name="units">Feet and inches, or millimetres.</param>
    public static string Write(BowKind shape, UnitSystem units)
    {
        bool us = units == UnitSystem.UsCustomary;
        string Say(string american, string metric) => us ? american : metric;
        return $$"""
            {
              // Comments like this one are allowed. Write lengths as on a tape, with the unit: {{Say("26 ft, 5' 6-1/2\\\", 1.9 in", "7.9 m, 1500 mm")}}.
              // Whatever you leave out gets a usual value; 'hoopwright check' lists those that matter.
              "hoopwright": "{{PlanVersion.Current}}",
              "name": "My tunnel",
              "units": "{{Say("us", "metric")}}",
              "site": {
                // The compass direction you look when you walk out by the front end.
                "frontFaces": "S",
                // Ask the building office or the official map for these three; nothing here looks them up.
                // "groundSnow": "{{Say("25 psf", "1.2 kPa")}}",
                // Wind {{Say("as ASCE 7 maps it: a 3-second gust", "as EN 1991 maps it: a 10-minute mean, not a gust")}}.
                // "wind": "{{Say("105 mph", "25 m/s")}}",
                // "frostDepth": "{{Say("30 in", "750 mm")}}",
                // bedrock, sedimentaryRock, gravel, sand, clay, or soft for mud, peat and loose fill.
                // "soilClass": "sand",
                // How much the ground falls from front to back; 5 % is the most.
                "fallAlong": "0 %"
              },
              "frame": {
                // Outside to outside of the bows at the ground.
                "span": "{{Say("24 ft", "7.2 m")}}",
                // Middle of the first bow to middle of the last.
                "length": "{{Say("48 ft", "15 m")}}",
                // The widest bay you allow. Closer bows stand more snow.
                "bowSpacing": "{{Say("4 ft", "1.2 m")}}",
                "bow": {
                  // round, gothic, peaked, or offsets for a table of measured heights.
                  "shape": "{{PlanChoices.Of<BowKind>().First(choice => choice.Value == shape).Word}}",
            {{Bow(shape, us)}}
                },
                // Measure the tube you can get: names in inches often mean another width.
                // The maker or the mill certificate has the yield strength: add "yield": "{{Say("50 ksi", "345 MPa")}}".
                "bowTube": { "outside": "{{Say("1.9 in", "48.3 mm")}}", "wall": "{{Say("0.083 in", "2 mm")}}" },
                // Tubes along the tunnel under the bows, the one under the ridge included: 1, 3 or 5.
                "purlins": { "count": 3 }
              },
              "ground": {
                // posts driven into the ground, or boards lying on it.
                "anchor": "posts",
                "postEmbedment": "{{Say("30 in", "800 mm")}}",
                // none, corners, cornersAndMiddle or all. Concrete may make the tunnel a permanent structure: ask first.
                "postConcrete": "corners"
              },
              "ends": {
                "front": {
                  "doors": [
                    // side, double, sliding or overhead; swing out or in; a side door also takes "hinge": left or right.
                    { "kind": "double", "width": "{{Say("6 ft", "1.8 m")}}", "height": "{{Say("7 ft", "2.1 m")}}", "swing": "out" }
                  ]
                },
                // Leave "back" out for a back end like the front. This one has no door.
                "back": { "closing": "framed" }
              },
              "sides": {
                // fixed, rollUp or drop. Leave "right" out for a right side like the left.
                "left": { "kind": "rollUp", "hipHeight": "{{Say("4 ft", "1.2 m")}}" }
              },
              "cover": {
                "layers": 1
              },
              "loads": {
                // asce7-16, asce7-22 or en1991: the building office names it.
                "standard": "{{Say("asce7-16", "en1991")}}",
                // I for a growing tunnel that the public does not enter.
                "riskCategory": "I"
                // How open the land is: "exposure": "C" for ASCE 7, "terrain": "II" for EN 1991.
                // How warm the film is kept while it snows: "heating": "unheated".
                // Crops hung from the frame, over the floor: "cropLoad": "{{Say("4 psf", "0.2 kPa")}}".
              },
              "cuts": {
                "kerf": "{{Say("1/8 in", "3 mm")}}"
              },
              // What already lies in the barn is used first.
              "stock": []
            }

            """.ReplaceLineEndings("\n");
    }

    private static string Bow(BowKind shape, bool us)
    {
        string side = us ? "4 ft" : "1.2 m";
        return shape switch
        {
            BowKind.Round => $"""
                  // Straight legs, then one arc. The peak rises at most half the span over the legs.
                  "sideHeight": "{side}",
                  "peakHeight": "{(us ? "12 ft" : "3.6 m")}",
                  "shoulderRadius": "{(us ? "2 ft" : "0.6 m")}"
            """,
            BowKind.Gothic => $"""
                  // Straight legs, a bend, then two long arcs that meet at the ridge. The maker's bend sheet has the radii.
                  "sideHeight": "{side}",
                  "peakHeight": "{(us ? "12 ft" : "3.6 m")}",
                  "shoulderRadius": "{(us ? "2 ft" : "0.6 m")}",
                  "archRadius": "{(us ? "22 ft" : "6.6 m")}"
            """,
            BowKind.Peaked => $"""
                  // Straight legs, a bend, then straight rafters that meet at the ridge.
                  "sideHeight": "{side}",
                  "peakHeight": "{(us ? "11 ft" : "3.3 m")}",
                  "shoulderRadius": "{(us ? "2 ft" : "0.6 m")}"
            """,
            BowKind.Offsets => us
                ? """
                  // Heights of the outside of the bow, measured from the left ground line to the middle (or right across).
                  "offsets": [
                    { "across": "0 in", "height": "4 ft" },
                    { "across": "1 ft", "height": "6' 6\"" },
                    { "across": "2 ft", "height": "7' 8-1/2\"" },
                    { "across": "4 ft", "height": "9' 3\"" },
                    { "across": "6 ft", "height": "10' 4\"" },
                    { "across": "8 ft", "height": "11' 2\"" },
                    { "across": "10 ft", "height": "11' 9\"" },
                    { "across": "12 ft", "height": "12 ft" }
                  ]
            """
                : """
                  // Heights of the outside of the bow, measured from the left ground line to the middle (or right across).
                  "offsets": [
                    { "across": "0 mm", "height": "1200 mm" },
                    { "across": "300 mm", "height": "1950 mm" },
                    { "across": "600 mm", "height": "2310 mm" },
                    { "across": "1200 mm", "height": "2780 mm" },
                    { "across": "1800 mm", "height": "3100 mm" },
                    { "across": "2400 mm", "height": "3350 mm" },
                    { "across": "3000 mm", "height": "3520 mm" },
                    { "across": "3600 mm", "height": "3600 mm" }
                  ]
            """,
        };
    }
}
