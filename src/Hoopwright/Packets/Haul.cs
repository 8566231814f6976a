using Hoopwright.Cover.Pull;
using Hoopwright.Geometry;
using Hoopwright.Layout;
using Hoopwright.Orders;
using Hoopwright.Plans;
using Hoopwright.Quantities;
using Hoopwright.Takeoff;

namespace Hoopwright.Packets;

/// <summary>What the heavy part of the order weighs, for the truck: as bought, what is on hand left out.</summary>
/// <param name="Steel">Steel tube.</param>
/// <param name="Lumber">Boards and posts; about, since wood weighs by its kind and its wetness.</param>
/// <param name="DryConcrete">Bags of dry concrete.</param>
/// <param name="Film">Film.</param>
public sealed record Haul(Mass Steel, Mass Lumber, Mass DryConcrete, Mass Film)
{
    private const double LumberKgM3 = 600;

    /// <summary>All of it.</summary>
    public Mass All => Steel + Lumber + DryConcrete + Film;

    /// <summary>Weighs a plan's orders; null where there are none.</summary>
    public static Haul? Of(PlannedTunnel planned)
    {
        if (planned is not { Orders: { } orders, Takeoff: { } takeoff, Film: { } film, Cover: { } cover }) return null;
        double steelKg = 0, lumberKg = 0;
        foreach (OrderLine line in orders.Lines.Where(line => line.Length is not null && line.Packages > 0))
        {
            if (takeoff.Lines.FirstOrDefault(needed => needed.Item == line.Item && needed.Size == line.Size)?.Section is not { } section) continue;
            double metres = line.Packages * line.Length!.Value.Metres;
            steelKg += section.Match(tube => tube.Material == TubeMaterial.GalvanizedSteel ? SteelKgPerM(tube) * metres : 0, _ => 0);
            lumberKg += section.Match(_ => 0, board => board.Thickness.Metres * board.Depth.Metres * metres * LumberKgM3);
        }
        Mass bag = planned.Plan.Ground.BagMass?.Value ?? TakeoffDefaults.BagMass(planned.Units).Value;
        double concreteKg = orders.Lines.Where(line => line.Item == Items.DryConcrete).Sum(line => (double)(line.Packages * line.PerPackage) * bag.Kilograms);
        return new Haul(Mass.FromKilograms(steelKg), Mass.FromKilograms(lumberKg), Mass.FromKilograms(concreteKg),
            Mass.FromKilograms(film.BoughtArea.SquareMetres * cover.Thickness.Metres * FilmMaterial.KgM3));
    }

    private static double SteelKgPerM(TubeSection tube) => tube.Form switch
    {
        TubeForm.Round => new RoundTube(tube.Outside, tube.Wall).SteelMass.KilogramsPerMetre,
        TubeForm.Square => new SquareTube(tube.Outside, tube.Wall).SteelMass.KilogramsPerMetre,
    };
}
