using Hoopwright.Inside.Air;
using Hoopwright.Quantities;

namespace Hoopwright.Inside;

/// <summary>An hour inside.</summary>
/// <param name="Start">When it begins.</param>
/// <param name="Outside">Air outside.</param>
/// <param name="Air">Air inside.</param>
/// <param name="Crop">Air at the crop: under the row cover where there is one.</param>
/// <param name="Ground">Surface of the ground.</param>
/// <param name="Humidity">Relative humidity inside.</param>
/// <param name="Wide">How far it stands open.</param>
/// <param name="ChangesPerHour">How often an hour the air is changed.</param>
/// <param name="Light">Light on the floor.</param>
/// <param name="Heater">What a heater gives; nothing where the plan has none.</param>
public readonly record struct InsideHour(
    DateTimeOffset Start, Temperature Outside, Temperature Air, Temperature Crop, Temperature Ground, Ratio Humidity, OpenWide Wide, Ratio ChangesPerHour, LightSum Light, Power Heater);
