using Arraywright.Files.Keys;
using Arraywright.Files.Text;

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
        TimeZoneInfo? zone = Zone(fields);
        return latitudeDeg is { } latitude && longitudeDeg is { } longitude
            ? new Place(latitude, longitude, elevationM, coldestC, weather) { IsElevationAssumed = statedM is null, Zone = zone }
            : null;
    }

    /// <summary>The zone, by the machine's own table; browsers carry one, small servers may not.</summary>
    private static TimeZoneInfo? Zone(Fields fields)
    {
        if (fields.Text(PlaceKeys.TimeZone) is not { } name)
        {
            return null;
        }

        if (TimeZoneInfo.TryFindSystemTimeZoneById(name, out TimeZoneInfo? zone))
        {
            return zone;
        }

        fields.Faults.Add(
            fields.PlaceOf(PlaceKeys.TimeZone),
            Quoted.Text(name),
            $"a time zone by its IANA name, such as \"{PlaceKeys.TimeZone.Example}\"",
            TimeZoneInfo.TryFindSystemTimeZoneById(PlaceKeys.TimeZone.Example, out _)
                ? "leave it out to reckon in standard time all year"
                : "this machine has no table of time zones by that kind of name (install tzdata), or leave it out to reckon in standard time all year");
        return null;
    }
}
