using System.Collections.Immutable;
using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;
using Arraywright.Files.Yaml;
using Arraywright.Sky;

namespace Arraywright.Files.Plans;

/// <summary>Reads what lies round the panels: the horizon and the ground.</summary>
internal static class SurroundingsReader
{
    /// <param name="place">The place.</param>
    /// <returns>The horizon; null when the plan does not say, or says it wrongly.</returns>
    public static HorizonProfile? Horizon(Fields place)
    {
        List<HorizonPoint> points = [];
        bool isSound = true;
        foreach (Fields point in place.Groups(PlaceKeys.Horizon))
        {
            if (point.Figure(HorizonKeys.Azimuth) is not { } azimuthDeg || point.Figure(HorizonKeys.Height) is not { } heightDeg)
            {
                isSound = false;
                continue;
            }

            double wrappedDeg = azimuthDeg == 360 ? 0 : azimuthDeg;
            if (points.Exists(other => other.AzimuthDeg == wrappedDeg))
            {
                point.Faults.Add(point.PlaceOf(HorizonKeys.Azimuth), point.PlaceOf(HorizonKeys.Azimuth).Described, "a direction that stands only once", "write the edge of a wall as two directions a degree apart; 0 and 360 deg are the same");
                isSound = false;
                continue;
            }

            points.Add(new HorizonPoint(wrappedDeg, heightDeg));
        }

        return isSound && points.Count > 0 ? new HorizonProfile(points) : null;
    }

    /// <param name="place">The place.</param>
    /// <returns>One share for the year, or twelve from January; empty when the plan does not say, or says it wrongly.</returns>
    public static ImmutableArray<double> Albedo(Fields place)
    {
        switch (place.Node(PlaceKeys.Albedo))
        {
            case YamlScalar { IsNothing: false } scalar:
                return Share(place, scalar) is { } whole ? [whole] : [];
            case YamlSequence { Items.Count: YearSharesKey.Months } list:
                return [.. list.Items.Select(item => Share(place, item)).OfType<double>()];
            case YamlSequence { Items.Count: > 0 } list:
                place.Faults.Add(list, $"{list.Items.Count} shares", PlaceKeys.Albedo.Expected);
                return [];
            case null or YamlReported:
                return [];
            case { } node:
                place.AddUnexpected(node, PlaceKeys.Albedo, null);
                return [];
        }
    }

    private static double? Share(Fields place, YamlNode node)
    {
        if (node is YamlScalar scalar)
        {
            return place.Figure(scalar, PlaceKeys.Albedo, QuantityKinds.Share)?.Value;
        }

        if (node is not YamlReported)
        {
            place.AddUnexpected(node, PlaceKeys.Albedo, null);
        }

        return null;
    }
}
