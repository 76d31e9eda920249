using System.Collections.Immutable;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Sky;

namespace Arraywright.Files.Plans;

/// <summary>Reads where the panels stand.</summary>
internal static class PlaceReader
{
    public static Place? Read(Fields root, List<Assumption> assumed, bool mayNameFiles)
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
        if (weather is not null && !mayNameFiles)
        {
            fields.Faults.Add(fields.PlaceOf(PlaceKeys.Weather), Quoted.Text(weather), "a plan that names no file, since it was sent here", "leave \"weather:\" out, and the built-in climate serves; or run the command beside the file");
        }

        PlaceZone? zone = Zone(fields);
        HorizonProfile? horizon = SurroundingsReader.Horizon(fields);
        ImmutableArray<double> albedo = SurroundingsReader.Albedo(fields);
        return latitudeDeg is { } latitude && longitudeDeg is { } longitude
            ? new Place(latitude, longitude, elevationM, coldestC, weather) { IsElevationAssumed = statedM is null, Zone = zone, Horizon = horizon, AlbedoFractions = albedo }
            : null;
    }

    private static PlaceZone? Zone(Fields fields)
    {
        if (fields.Text(PlaceKeys.TimeZone) is not { } name)
        {
            return null;
        }

        PlaceZone? zone = ZoneTable.Find(name);
        if (zone is null)
        {
            fields.AddUnexpected(fields.PlaceOf(PlaceKeys.TimeZone), PlaceKeys.TimeZone, Nearest.Of(name, ZoneTable.Names) is { } near ? $"did you mean \"{near}\"?" : "a continent and a city");
        }

        return zone;
    }
}
