using Arraywright.Files.Quantities;

namespace Arraywright.Files.Keys;

/// <summary>Keys at the top of the plan.</summary>
internal static class RootKeys
{
    public static readonly TextKey Plan = new("plan", "Lambing shed, north field", "Title of the plan.") { Otherwise = "the name of the file" };

    public static readonly ChoiceKey Goal = new("goal", ["year", "day", "peak"], "year", "What the best wiring is to be best at: energy in a year, energy in a day, or power in strong sun.")
    {
        Otherwise = "year when the place is known, else peak",
    };

    public static readonly DaysKey Date = new("date", "06-21", "Day that the goal `day` is about, month and day, or the days of a trip such as 05-01..05-14.") { Otherwise = "the goal `day` is then ranked by the year" };

    public static readonly SectionKey Place = new("place", PlaceKeys.Section, "Where the panels stand.") { Otherwise = "unknown; then no year can be computed" };

    public static readonly SectionKey Mount = new("mount", MountKeys.Section, "How the panels face.") { Otherwise = "facing the equator on an open rack, tilted by the latitude" };

    public static readonly ChoiceKey Sky = new("sky", ["perez", "hay davies", "isotropic"], "perez", "How the light of the sky is taken to be spread: bright round the sun and at the horizon, bright round the sun, or even.") { Otherwise = "perez" };

    public static readonly ListKey Panels = new("panels", PanelKeys.Section, Caps.Panels, "The panels at hand, one item a kind.") { Required = true };

    public static readonly ListKey Inputs = new("inputs", InputKeys.Section, Caps.Inputs, "The charging inputs at hand.") { Required = true };

    public static readonly ListKey Units = new("units", UnitKeys.Section, Caps.Inputs, "Units that several inputs belong to.") { Otherwise = "each input stands alone" };

    public static readonly ListKey Candidates = new("candidates", PanelKeys.Candidate, Caps.Candidates, "Panels that might be bought, one item a kind; `grow` compares them.") { Otherwise = "`grow` looks at more of the panels at hand" };

    public static readonly SectionKey Cable = new("cable", CableKeys.Section, "The copper between panels and inputs.") { Otherwise = "see its keys" };

    public static readonly ChoiceKey Rules = new("rules", ["us", "iec"], "iec", "After whose rules cable, fuses and connectors are chosen: NEC article 690, or IEC 60364-7-712 and IEC 62548.") { Otherwise = "by the place: us in North America, else iec" };

    public static readonly ListKey Owned = new("owned", PartKeys.Owned, Caps.Parts, "Parts at hand already, one item a kind; `parts` leaves them off the shopping list.") { Otherwise = "nothing" };

    public static readonly ListKey Prices = new("prices", PartKeys.Priced, Caps.Parts, "What parts cost, one item a kind.") { Otherwise = "`parts` names no cost" };

    public static readonly PlanSection Section = new("a plan", [Plan, Goal, Date, Place, Mount, Sky, Panels, Candidates, Units, Inputs, Cable, Rules, Owned, Prices]);

    /// <summary>Every section of the file with the words by which a reader finds it.</summary>
    public static readonly PlanSection[] All =
    [
        Section, PlaceKeys.Section, HorizonKeys.Section, MountKeys.Section, PanelKeys.Section, ShadeHoursKeys.Section, ShadeGroupsKeys.Section, UnitKeys.Section,
        InputKeys.Section, LimitKeys.Section, BatteryKeys.Section, LoadHoursKeys.Section, CableKeys.Section, PartKeys.Owned, PartKeys.Priced,
    ];
}

/// <summary>Keys of the place.</summary>
internal static class PlaceKeys
{
    public static readonly QuantityKey Latitude = new("latitude", QuantityKinds.Latitude, "54.6", "Degrees, north positive.") { Required = true };

    public static readonly QuantityKey Longitude = new("longitude", QuantityKinds.Longitude, "-3.1", "Degrees, east positive.") { Required = true };

    public static readonly QuantityKey Elevation = new("elevation", QuantityKinds.Elevation, "210 m", "Height above the sea.") { Otherwise = "0 m" };

    public static readonly QuantityKey Coldest = new("coldest", QuantityKinds.Temperature.Within(-90, 40), "-14 C", "Coldest air temperature to reckon with while the panels are connected.") { Otherwise = "from the climate" };

    public static readonly TextKey Weather = new("weather", "../weather/some.epw", "Path of a weather file, from the plan's own folder.") { Otherwise = "the built-in climate" };

    public static readonly ZoneKey TimeZone = new("time_zone", "Europe/London", "Time zone by its IANA name, for hours of load and shade with daylight saving.") { Otherwise = "standard time by the weather file or the longitude" };

    public static readonly ListKey Horizon = new("horizon", HorizonKeys.Section, Caps.HorizonPoints, "Hills, trees and houses that hide the low sun and some of the sky, one item a point.") { Otherwise = "free all round" };

    public static readonly YearSharesKey Albedo = new("albedo", "20 %", "Share of the light that the ground gives back, or a list of twelve from January.") { Otherwise = "20 %, grass and soil" };

    public static readonly PlanSection Section = new("a place", [Latitude, Longitude, Elevation, Coldest, Weather, TimeZone, Horizon, Albedo]);
}

/// <summary>Keys of a point of the horizon.</summary>
internal static class HorizonKeys
{
    public static readonly QuantityKey Azimuth = new("azimuth", QuantityKinds.Angle, "135 deg", "Direction, clockwise from north.") { Required = true };

    public static readonly QuantityKey Height = new("height", QuantityKinds.Angle.Within(0, 90), "12 deg", "How high the horizon stands there, in degrees above the level.") { Required = true };

    public static readonly PlanSection Section = new("a point of the horizon", [Azimuth, Height]);
}

/// <summary>Keys of the mount.</summary>
internal static class MountKeys
{
    public static readonly Quantity TiltRange = QuantityKinds.Angle.Within(0, 90);

    public static readonly QuantityKey Tilt = new("tilt", TiltRange, "40 deg", "Degrees from horizontal, 0 to 90.") { Otherwise = "by the latitude" };

    public static readonly QuantityKey Azimuth = new("azimuth", QuantityKinds.Angle, "180 deg", "Direction the panels face, clockwise from north: 90 east, 180 south, 270 west.") { Otherwise = "facing the equator" };

    public static readonly ChoiceKey Kind = new("kind", ["open rack", "close roof", "flat on ground"], "open rack", "How the panels are held, which decides how hot they run.") { Otherwise = "open rack" };

    public static readonly QuantityKey Soiling = new("soiling", QuantityKinds.Percent.Within(0, 0.9), "3 %", "Light lost to dirt on the glass, as a mean of the year.") { Otherwise = "3 %" };

    public static readonly PlanSection Section = new("a mount", [Tilt, Azimuth, Kind, Soiling]);
}

/// <summary>Keys of the cable.</summary>
internal static class CableKeys
{
    public static readonly QuantityKey Length = new("length", QuantityKinds.Length, "8 m", "One way, from the panels to the input.") { Otherwise = "5 m" };

    public static readonly QuantityKey Size = new("size", QuantityKinds.Area, "4 mm2", "Cross-section of its copper, in mm2 or AWG.") { Otherwise = "sized for the wiring: what it carries, and the drop" };

    public static readonly QuantityKey StringLength = new("string_length", QuantityKinds.Length, "2 m", "One way, each string's own extra run to where strings join.") { Otherwise = "0 m" };

    public static readonly QuantityKey StringSize = new("string_size", QuantityKinds.Area, "4 mm2", "Cross-section of that run.") { Otherwise = "that of size; sized too where size is left out" };

    public static readonly QuantityKey Contact = new("contact", QuantityKinds.Resistance, "0.5 mohm", "Resistance of one mated connector.") { Otherwise = "0.5 mohm" };

    public static readonly QuantityKey ExtensionLength = new("extension_length", QuantityKinds.Length, "10 m", "One way, an extension lead between array and cable.") { Otherwise = "0 m, none" };

    public static readonly QuantityKey ExtensionSize = new("extension_size", QuantityKinds.Area, "6 mm2", "Cross-section of that extension.") { Otherwise = "that of size" };

    public static readonly ChoiceKey Class = new("class", ["flexible", "fixed"], "flexible", "Fine tinned strands (solar cable), or the plain strands of fixed wiring.") { Otherwise = "flexible" };

    public static readonly ChoiceKey Laying = new("laying", ["free air", "surface", "conduit"], "surface", "In free air, on a surface with plus and minus touching, or in a conduit.") { Otherwise = "surface" };

    public static readonly QuantityKey Ambient = new("ambient", QuantityKinds.Temperature.Within(-40, 90), "60 C", "Hottest surroundings of the cable: behind panels and in the sun well above the air.") { Otherwise = "20 K above the hottest air of the climate, 33 K in a conduit" };

    public static readonly CountKey Bundled = new("bundled", 1, 60, "4", "Current-carrying wires that lie together, its own pair included.") { Otherwise = "2, the pair alone" };

    public static readonly ChoiceKey Terminals = new("terminals", ["60 C", "75 C", "90 C"], "75 C", "What the terminals are marked for; it counts with the us rules.") { Otherwise = "60 C" };

    public static readonly QuantityKey MaxDrop = new("max_drop", QuantityKinds.Percent.Within(0.001, 0.5), "3 %", "Drop from the panels to the input to size the cable for, share of the volts.") { Otherwise = "3 %" };

    public static readonly PlanSection Section = new(
        "a cable",
        [Length, Size, StringLength, StringSize, Contact, ExtensionLength, ExtensionSize, Class, Laying, Ambient, Bundled, Terminals, MaxDrop]);
}
