using System.Globalization;
using System.Text;
using CsCheck;

namespace Arraywright.Files.Tests;

/// <summary>Random good plans, as text: any optional key may be there or not, in any of its forms.</summary>
internal static class PlanTexts
{
    private static readonly string[] Titles = ["Shed", "\"a: b # c\"", "'it''s \"so\"'", "\"tab\\u2028end\"", "\"\\\\ back\"", "Käserei – Süd", "\"null\"", "\"😀\"", "no", "\"- x\"", "\"  spaces  \""];

    public static Gen<string> Any { get; } = Gen.Int.Select(seed => Write(new Random(seed)));

    private static string Write(Random random)
    {
        StringBuilder text = new();
        Maybe(random, text, $"plan: {Pick(random, Titles)}\n");
        Maybe(random, text, $"goal: {Pick(random, "year", "day", "peak")}\n");
        Maybe(random, text, $"place:\n  latitude: {Number(random, -90, 90)}\n  longitude: {Number(random, -180, 180)} deg\n{Optional(random, $"  elevation: {Number(random, -400, 5000)} {Pick(random, "m", "ft")}\n", $"  coldest: {Number(random, -60, 40)} {Pick(random, "C", "F")}\n", $"  weather: {Pick(random, "a.epw", "'../x y.epw'", "C:\\weather.epw")}\n", $"  time_zone: {Pick(random, "UTC", "Europe/London", "America/Argentina/Buenos_Aires", "Etc/GMT+5")}\n", $"  horizon:\n    - {{ azimuth: {Number(random, 0, 170)} deg, height: {Number(random, 0, 90)} deg }}\n    - {{ azimuth: {Number(random, 180, 359)} deg, height: 0 deg }}\n", $"  albedo: {Pick(random, $"{Number(random, 0, 100)} %", "0.25", $"[{string.Join(", ", Enumerable.Range(0, 12).Select(_ => Exact(random, 0, 1)))}]")}\n")}");
        Maybe(random, text, $"mount:\n  kind: {Pick(random, "open rack", "close roof", "Flat-on_ground")}\n{Optional(random, $"  tilt: {Number(random, 0, 90)} deg\n", $"  azimuth: {Number(random, 0, 360)} deg\n", $"  soiling: {Number(random, 0, 90)} %\n")}");
        Maybe(random, text, $"sky: {Pick(random, "perez", "hay davies", "isotropic")}\n");
        text.Append("panels:\n");
        for (int kind = 0, kinds = random.Next(1, 4); kind < kinds; kind++)
        {
            AppendPanel(random, text, "panel-" + kind);
        }

        bool hasUnit = random.Next(2) == 0;
        if (hasUnit)
        {
            text.Append("units:\n  - name: unit\n");
            Maybe(random, text, $"    max_power: {Limit(random, "W")}\n");
            Maybe(random, text, Battery(random));
        }

        text.Append("inputs:\n");
        for (int input = 0, inputs = random.Next(1, 4); input < inputs; input++)
        {
            AppendInput(random, text, "input-" + input, hasUnit && input == 0);
        }

        if (random.Next(2) == 0)
        {
            text.Append("candidates:\n");
            AppendPanel(random, text, "candidate-a", isOwned: false);
            AppendPanel(random, text, "candidate-b", isOwned: false);
        }

        Maybe(random, text, $"cable:\n  length: {Number(random, 0, 300)} {Pick(random, "m", "ft")}\n{Optional(random, $"  size: {Pick(random, "4 mm2", "10 AWG", "2/0 AWG", "2.5 mm2")}\n", $"  string_length: {Number(random, 0, 20)} m\n", "  string_size: 12 AWG\n", $"  contact: {Number(random, 0, 3)} mohm\n", "  extension_length: 6 m\n  extension_size: 6 mm2\n", $"  class: {Pick(random, "flexible", "fixed")}\n", $"  laying: {Pick(random, "free air", "surface", "conduit")}\n", $"  ambient: {Number(random, -10, 80)} C\n", "  bundled: 6\n", $"  terminals: {Pick(random, "60 C", "75 C", "90 C")}\n", $"  max_drop: {Number(random, 1, 20)} %\n")}");
        Maybe(random, text, $"rules: {Pick(random, "us", "iec")}\n");
        Maybe(random, text, $"owned:\n  - {{ part: cable, size: {Pick(random, "4 mm2", "12 AWG")}, length: {Number(random, 0, 50)} m }}\n  - {{ part: branch connector, ways: {random.Next(2, 5)}, count: {random.Next(1, 9)} }}\n  - part: watt meter\n");
        Maybe(random, text, $"prices:\n  - {{ part: fuse, rating: 12 A, price: {Number(random, 0, 20)} EUR }}\n  - {{ part: connector, price: 4 EUR }}\n");
        return text.ToString();
    }

    private static void AppendPanel(Random random, StringBuilder text, string name, bool isOwned = true)
    {
        double vocV = Math.Round(random.NextDouble() * 60 + 8, random.Next(1, 4)), iscA = Math.Round(random.NextDouble() * 12 + 1, random.Next(2, 4));
        double vmpV = Math.Round(vocV * 0.82, 3), impA = Math.Round(iscA * 0.94, 3);
        text.Append(CultureInfo.InvariantCulture, $"  - name: {name}\n{(isOwned ? $"    count: {random.Next(1, 30)}\n" : "")}    voc: {vocV} V\n    isc: {iscA} A\n    vmp: {vmpV} V\n    imp: {impA} A\n");
        text.Append(Optional(
            random,
            string.Create(CultureInfo.InvariantCulture, $"    power: {Math.Round(vmpV * impA, 1)} Wp\n"),
            Pick(random, $"    voc_temperature: {Exact(random, -0.34, -0.26)} %/K\n", string.Create(CultureInfo.InvariantCulture, $"    voc_temperature: {-3 * vocV} mV/K\n")),
            $"    isc_temperature: {Exact(random, 0.03, 0.06)} %/K\n",
            $"    power_temperature: {Exact(random, -0.42, -0.32)} %/K\n",
            $"    bypass_diodes: 3\n    shade: {{ groups: [{Number(random, 0, 100)} %, {Exact(random, 0, 1)}, 0 %] }}\n",
            $"    max_series_fuse: {random.Next(15, 30)} A\n",
            "    max_system_voltage: 1000 V\n",
            $"    tolerance: {Number(random, 0, 5)} %\n",
            $"    noct: {Number(random, 42, 50)} C\n",
            $"    technology: {Pick(random, "mono perc", "Crystalline_Silicon", "topcon")}\n",
            $"    tilt: {Number(random, 0, 90)} deg\n",
            $"    azimuth: {Number(random, 0, 360)} deg\n",
            $"    price: {Number(random, 0, 500)} EUR\n"));
        if (!text.ToString().Split("- name:")[^1].Contains("shade", StringComparison.Ordinal))
        {
            Maybe(random, text, Pick(random, $"    shade: {Number(random, 0, 100)} %\n", "    shade:\n      - { from: 6:20, to: 9:50, fraction: 33 % }\n      - { from: 17, to: 24:00, fraction: 1 }\n"));
        }
    }

    private static void AppendInput(Random random, StringBuilder text, string name, bool inUnit)
    {
        text.Append(CultureInfo.InvariantCulture, $"  - name: {name}\n    max_voltage: {random.Next(50, 500)} V\n");
        text.Append(Optional(
            random,
            $"    start_voltage: {Number(random, 1, 50)} V\n",
            $"    mpp_voltage: {Number(random, 5, 20)}..{Number(random, 21, 50)} V\n",
            $"    max_current: {Limit(random, "A")}\n",
            $"    max_short_circuit_current: {Limit(random, "A")}\n",
            $"    rated_current: {Limit(random, "A")}\n",
            $"    max_power: {Limit(random, "W")}\n",
            $"    efficiency: {Number(random, 50, 100)} %\n",
            $"    connector: {Number(random, 10, 60)} A\n",
            $"    socket: {Number(random, 5, 60)} A\n",
            "    watt_meter: wanted\n",
            inUnit ? "    unit: unit\n" : Battery(random)));
        if (inUnit && !text.ToString().Contains("    unit: unit", StringComparison.Ordinal))
        {
            text.Append("    unit: unit\n");
        }

        if (name == "input-0")
        {
            Maybe(random, text, $"    wiring: {Pick(random, "panel-0", "'panel-0'")}\n");
        }
    }

    private static string Battery(Random random) =>
        $"    battery:\n      capacity: {Number(random, 100, 5000)} Wh\n{Optional(random, $"      from: {Number(random, 0, 40)} %\n", $"      to: {Number(random, 60, 100)} %\n", random.Next(2) == 0 ? $"      load: {Number(random, 0, 90)} W\n" : LoadHours(random), $"      reserve: {Number(random, 0, 50)} %\n", $"      max_charge: {Number(random, 10, 900)} W\n", "      chemistry: lead\n")}";

    private static string LoadHours(Random random) =>
        $"      load:\n        - {{ from: {random.Next(24)}:30, to: 24:00, power: {Number(random, 0, 90)} W }}\n        - {{ from: 22:00, to: {random.Next(12)}:15, power: {Number(random, 1, 90)} W }}\n";

    private static string Limit(Random random, string unit) => random.Next(2) == 0
        ? $"{Number(random, 1, 900)} {unit}"
        : $"{{ value: {Number(random, 1, 900)} {unit}, evidence: {Pick(random, "none", "label", "manual", "maker")}, exceed: {random.Next(3) * 10} %, note: {Pick(random, Titles)} }}";

    private static string Number(Random random, double from, double to) =>
        (from + (random.NextDouble() * (to - from))).ToString(Pick(random, "0", "0.00", "R"), CultureInfo.InvariantCulture);

    private static string Exact(Random random, double from, double to) =>
        (from + (random.NextDouble() * (to - from))).ToString("R", CultureInfo.InvariantCulture);

    private static string Optional(Random random, params string[] parts) => string.Concat(parts.Where(_ => random.Next(2) == 0));

    private static void Maybe(Random random, StringBuilder text, string part) => text.Append(Optional(random, part));

    private static string Pick(Random random, params string[] choices) => choices[random.Next(choices.Length)];
}
