using Arraywright.Climate;

namespace Arraywright.Files.Weather;

/// <summary>Whether weather is that of the plan's place.</summary>
internal static class PlanPlace
{
    /// <summary>From this distance on the file is another climate's, km.</summary>
    private const double TooFarKm = 500;

    /// <summary>From this distance on it is pointed out, km.</summary>
    private const double FarKm = 50;

    /// <summary>So many metres change the air by 2 K, and are pointed out.</summary>
    private const double HigherM = 300;

    private const double KmPerDeg = 111.2;

    /// <summary>The fault of a file from too far away; null where it may serve, or where there is no plan.</summary>
    public static Fault? TooFar(in WeatherPlace there, Place? plan, string file, int line) => DistanceKm(there, plan) is > TooFarKm and double km
        ? new Fault(file, line, 1, $"weather of latitude {there.LatitudeDeg} and longitude {there.LongitudeDeg}, {km:0} km from the plan's place", $"weather from within {TooFarKm:0} km", "is a sign of the plan's place wrong?")
        : null;

    /// <summary>What is to be told of a file from not quite there.</summary>
    public static IEnumerable<string> Remarks(WeatherPlace there, Place? plan)
    {
        if (DistanceKm(there, plan) is > FarKm and double km)
        {
            yield return $"It is {km:0} km from the plan's place.";
        }

        if (plan is { IsElevationAssumed: false } && plan.ElevationM - there.ElevationM is var higherM && Math.Abs(higherM) > HigherM)
        {
            yield return $"The plan's place lies {Math.Abs(higherM):0} m {(higherM > 0 ? "higher" : "lower")} than the file's; for energies its air was taken as it stands.";
        }
    }

    /// <summary>Along the great circle, by the haversine formula; 0 where there is no plan.</summary>
    private static double DistanceKm(in WeatherPlace there, Place? plan)
    {
        if (plan is null)
        {
            return 0;
        }

        static double HalfSine(double deg) => Math.Pow(Math.Sin(deg * Math.PI / 360), 2);
        static double Cos(double deg) => Math.Cos(deg * Math.PI / 180);
        double chord = HalfSine(there.LatitudeDeg - plan.LatitudeDeg)
            + (Cos(there.LatitudeDeg) * Cos(plan.LatitudeDeg) * HalfSine(there.LongitudeDeg - plan.LongitudeDeg));
        return 2 * Math.Asin(Math.Min(1, Math.Sqrt(chord))) * 180 / Math.PI * KmPerDeg;
    }
}
