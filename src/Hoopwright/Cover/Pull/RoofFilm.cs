using Hoopwright.Layout;

namespace Hoopwright.Cover.Pull;

/// <summary>The roof film as it is held: how thick, over how wide a bay.</summary>
internal static class RoofFilm
{
    /// <summary>Thickness of all layers, m.</summary>
    public static double ThicknessM(Tunnel tunnel) =>
        (tunnel.Plan.Cover.Thickness?.Value ?? LayoutDefaults.FilmThickness(tunnel.Units).Value).Metres * (tunnel.Plan.Cover.Layers ?? LayoutDefaults.FilmLayers.Value);

    /// <summary>The widest bay, middle of bow to middle of bow, m.</summary>
    public static double WidestBayM(Tunnel tunnel) =>
        tunnel.Stations.Zip(tunnel.Stations.Skip(1), (one, next) => (next.Along - one.Along).Metres).Max();
}
