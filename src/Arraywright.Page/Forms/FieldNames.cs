namespace Arraywright.Page.Forms;

/// <summary>What the fields are called, and what a person must know before filling in a limit. English; the language files have the rest.</summary>
internal static class FieldNames
{
    private static readonly Dictionary<string, string> Names = new()
    {
        ["plan"] = "Title of the plan",
        ["goal"] = "Best at what",
        ["date"] = "Day or days",
        ["place/latitude"] = "Latitude",
        ["place/longitude"] = "Longitude",
        ["place/elevation"] = "Height above the sea",
        ["place/coldest"] = "Coldest air",
        ["place/time_zone"] = "Time zone",
        ["place/albedo"] = "Light given back by the ground",
        ["mount/tilt"] = "Tilt",
        ["mount/azimuth"] = "Direction",
        ["mount/kind"] = "How they are held",
        ["mount/soiling"] = "Dirt",
        ["panels/name"] = "Name of this kind",
        ["panels/count"] = "How many",
        ["panels/power"] = "Power (Pmax)",
        ["panels/voc"] = "Open-circuit voltage (Voc)",
        ["panels/isc"] = "Short-circuit current (Isc)",
        ["panels/vmp"] = "Voltage at maximum power (Vmp)",
        ["panels/imp"] = "Current at maximum power (Imp)",
        ["panels/voc_temperature"] = "Voc a degree",
        ["panels/isc_temperature"] = "Isc a degree",
        ["panels/power_temperature"] = "Power a degree",
        ["panels/cells"] = "Cells in series",
        ["panels/bypass_diodes"] = "Bypass diodes",
        ["panels/max_series_fuse"] = "Largest series fuse",
        ["panels/max_system_voltage"] = "Largest system voltage",
        ["panels/tolerance"] = "Tolerance",
        ["panels/noct"] = "Cell temperature at work (NOCT)",
        ["panels/technology"] = "Technology",
        ["panels/shade"] = "Shade",
        ["panels/tilt"] = "Their own tilt",
        ["panels/azimuth"] = "Their own direction",
        ["panels/price"] = "Price of one",
        ["inputs/name"] = "Name of the input",
        ["inputs/unit"] = "Belongs to unit",
        ["inputs/max_voltage"] = "Highest voltage",
        ["inputs/start_voltage"] = "Starts at",
        ["inputs/mpp_voltage"] = "Tracks between",
        ["inputs/max_current"] = "Draws at most",
        ["inputs/max_short_circuit_current"] = "Array may offer at most (Isc)",
        ["inputs/rated_current"] = "Printed current, meaning unknown",
        ["inputs/max_power"] = "Takes at most",
        ["inputs/efficiency"] = "Efficiency",
        ["inputs/self_use"] = "Its own use",
        ["inputs/battery/capacity"] = "Battery capacity",
        ["inputs/battery/from"] = "Charged at the start",
        ["inputs/battery/load"] = "Load",
        ["inputs/battery/chemistry"] = "Chemistry",
        ["cable/length"] = "Length, one way",
        ["cable/size"] = "Cross-section",
        ["value"] = "Figure",
        ["evidence"] = "Who says so",
        ["note"] = "Date and words",
        ["exceed"] = "May be exceeded by",
    };

    private static readonly Dictionary<string, string> Meanings = new()
    {
        ["inputs/max_voltage"] = "The hard limit. Open-circuit voltage on the coldest bright morning must stay below it: one moment above can destroy the input, and no answer of anybody moves it.",
        ["inputs/max_current"] = "What the input draws. A larger array is held back by the input itself and comes to no harm, if this figure really means what is drawn.",
        ["inputs/max_short_circuit_current"] = "What the array could push if the leads were shorted, the sum of the strings' Isc. Some inputs bear more than they draw, some do not: only the maker knows.",
        ["inputs/rated_current"] = "Most labels print one current and do not say which it is. It is then taken as both, and a larger array is to be asked about first.",
        ["inputs/max_power"] = "What the input takes. More panels are no harm if the maker says that the input holds itself back; the rest is then lost at noon and useful in dull weather.",
        ["inputs/mpp_voltage"] = "The voltages in which the input finds the most power. Outside of them it takes less, or nothing.",
        ["inputs/start_voltage"] = "Below this open-circuit voltage the input does not wake up in the morning.",
        ["evidence"] = "Only a word in writing moves a limit: print on the unit, its manual, or the maker's answer. Nobody's word moves a voltage.",
    };

    /// <summary>The English name of a field.</summary>
    public static string Of(string path) => Find(Names, path) ?? path[(path.LastIndexOf('/') + 1)..].Replace('_', ' ');

    /// <summary>What to know before filling it in; null where the key's own sentence says it all.</summary>
    public static string? Meaning(string path) => Find(Meanings, path);

    /// <summary>Every English word here, for whoever checks a language file.</summary>
    public static IEnumerable<string> All => Names.Values.Concat(Meanings.Values);

    /// <summary>Looks a path up without its counts, whole, without the figure of a limit, then by its last key.</summary>
    private static string? Find(Dictionary<string, string> words, string path)
    {
        string plain = string.Join('/', path.Split('/').Where(step => !char.IsAsciiDigit(step[0]))).Replace("candidates/", "panels/", StringComparison.Ordinal).Replace("units/", "inputs/", StringComparison.Ordinal);
        if (words.TryGetValue(plain, out string? found))
        {
            return found;
        }

        int last = plain.LastIndexOf('/');
        return plain.EndsWith("/value", StringComparison.Ordinal) ? words.GetValueOrDefault(plain[..last]) : words.GetValueOrDefault(plain[(last + 1)..]);
    }
}
