using Arraywright.Files.Quantities;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>What a plan that is silent is taken to mean, each said openly.</summary>
internal static class Defaults
{
    /// <summary>The names under which assumptions are listed; what is listed, <see cref="PlanWriter"/> leaves out again.</summary>
    public const string GoalName = "goal", ElevationName = "height above the sea", TiltName = "tilt of the panels", AzimuthName = "direction of the panels",
        KindName = "kind of mount", CableLengthName = "length of the cable",
        StringLengthName = "each string's own run", ContactName = "resistance of a connector";

    /// <summary>The default cable, when the plan says nothing at all of it.</summary>
    public static Cable Cable(List<Assumption> assumed)
    {
        Sourced<double> size = CableSize(assumed);
        return new Cable(CableLength(assumed), size, StringLength(assumed), StringSize(size.Value), Contact(assumed));
    }

    /// <summary>The default mount, when the plan says nothing at all of it.</summary>
    public static Mount Mount(Place? place, List<Assumption> assumed) =>
        new(TiltDeg(place, assumed), AzimuthDeg(place, assumed), Kind(assumed));

    public static Goal Goal(bool placeIsKnown, List<Assumption> assumed)
    {
        Goal goal = placeIsKnown ? Arraywright.Goal.Year : Arraywright.Goal.Peak;
        assumed.Add(new Assumption(
            GoalName,
            placeIsKnown ? "year" : "peak",
            placeIsKnown ? "The place is known. Another goal may rank close designs otherwise." : "The place is not known, so no year can be computed. A year may rank close designs otherwise."));
        return goal;
    }

    public static double ElevationM(bool isWrittenBadly, List<Assumption> assumed)
    {
        if (!isWrittenBadly)
        {
            assumed.Add(new Assumption(ElevationName, "0 m", "The plan does not say. 1000 m more give about 3 % more sun on a clear day, and air about 6.5 °C colder."));
        }

        return 0;
    }

    /// <summary>Tilt by a rule of thumb of the trade, rounded to 5° because no one builds finer.</summary>
    public static double TiltDeg(Place? place, List<Assumption> assumed)
    {
        double tiltDeg = place is null ? 35 : Math.Clamp(Math.Round(((0.76 * Math.Abs(place.LatitudeDeg)) + 3) / 5) * 5, 10, 45);
        assumed.Add(new Assumption(
            TiltName,
            Decimals.Shifted(tiltDeg, 0) + "°",
            (place is null ? "Usual at middle latitudes." : "By the rule of thumb 0.76 × latitude + 3°, from 10° to 45°.") + " If it is 10° off, the year changes by about 2 %."));
        return tiltDeg;
    }

    public static double AzimuthDeg(Place? place, List<Assumption> assumed)
    {
        bool south = place is null || place.LatitudeDeg >= 0;
        assumed.Add(new Assumption(
            AzimuthName,
            south ? "180° (south)" : "0° (north)",
            (place is null ? "Usual north of the equator." : "Towards the equator.") + " Panels that face east or west give about 15 to 25 % less in a year."));
        return south ? 180 : 0;
    }

    public static MountKind Kind(List<Assumption> assumed)
    {
        assumed.Add(new Assumption(KindName, "open rack", "The plan does not say. Close to a roof panels run 5 to 15 °C hotter and give about 2 to 6 % less."));
        return MountKind.OpenRack;
    }

    public static Sourced<double> CableLength(List<Assumption> assumed)
    {
        assumed.Add(new Assumption(CableLengthName, "5 m", "The plan does not say. At 10 A each 10 m more of 4 mm² drop about 1 V."));
        return Sourced.Assumed(5.0, "usual lead of a portable array");
    }

    public static Sourced<double> CableSize(List<Assumption> assumed)
    {
        assumed.Add(new Assumption(Gear.Cable.SizeName, "4 mm²", "The usual size of panel leads, until a wiring is known to size it for."));
        return Sourced.Assumed(4.0, "usual size of panel leads");
    }

    public static Sourced<double> StringLength(List<Assumption> assumed)
    {
        assumed.Add(new Assumption(StringLengthName, "0 m", "Strings are taken to join at the panels. A run of its own loses a little more in each."));
        return Sourced.Assumed(0.0, "strings join at the panels");
    }

    /// <summary>Not listed: with the run's length it is either not needed or that of the main cable.</summary>
    public static Sourced<double> StringSize(double sizeMm2) => Sourced.Assumed(sizeMm2, "as the cable to the input");

    public static Sourced<double> Contact(List<Assumption> assumed)
    {
        assumed.Add(new Assumption(ContactName, "0.5 mohm", "A mated connector in fair order. Ten of them at 10 A lose half a watt."));
        return Sourced.Assumed(0.0005, "a mated connector in fair order");
    }
}
