using Arraywright.Files.Keys;

namespace Arraywright.Files.Plans;

/// <summary>Reads where the panels stand.</summary>
internal static class PlaceReader
{
    public static Place? Read(Fields root, List<Assumption> assumed)
    {
        if (root.Group(RootKeys.Place) is not { } fields)
        {
            return null;
        }

        double? latitudeDeg = fields.Figure(PlaceKeys.Latitude), longitudeDeg = fields.Figure(PlaceKeys.Longitude);
        double? statedM = fields.Figure(PlaceKeys.Elevation);
        double elevationM = statedM ?? Defaults.ElevationM(fields.Has(PlaceKeys.Elevation), assumed);
        double? coldestC = fields.Figure(PlaceKeys.Coldest);
        string? weather = fields.Text(PlaceKeys.Weather);
        return latitudeDeg is { } latitude && longitudeDeg is { } longitude
            ? new Place(latitude, longitude, elevationM, coldestC, weather) { IsElevationAssumed = statedM is null }
            : null;
    }
}
