using System.Collections.Immutable;
using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Plans;

/// <summary>Reads the load on a battery: a constant power, or hours of the day.</summary>
internal static class LoadReader
{
    /// <summary>The constant load, W, or the load in each of the 24 hours, W; 0 W where the plan states none.</summary>
    public static (double ConstantW, ImmutableArray<double> ByHourW) Read(Fields battery)
    {
        switch (battery.Node(BatteryKeys.Load))
        {
            case YamlScalar { IsNothing: false } scalar:
                return (battery.Figure(scalar, BatteryKeys.Load, LoadKey.Constant)?.Value ?? 0, []);
            case YamlSequence { Items.Count: > 0 and <= LoadKey.Most } list:
                return (0, ByHour(battery, list));
            case null or YamlReported:
                return (0, []);
            case { } node:
                battery.AddUnexpected(node, BatteryKeys.Load, node is YamlSequence ? $"from 1 to {LoadKey.Most} of them" : null);
                return (0, []);
        }
    }

    private static ImmutableArray<double> ByHour(Fields battery, YamlSequence list)
    {
        double[] loadW = new double[24];
        foreach (YamlNode item in list.Items)
        {
            if (item is YamlMapping mapping)
            {
                Add(new Fields(mapping, LoadHoursKeys.Section, battery.Faults), loadW);
            }
            else if (item is not YamlReported)
            {
                battery.Faults.Add(item, item.Described, "hours of load such as \"{ from: 18:00, to: 23:30, power: 60 W }\"");
            }
        }

        return loadW.All(static powerW => powerW == 0) ? [] : [.. loadW];
    }

    private static void Add(Fields fields, double[] loadW)
    {
        if (fields.Hour(LoadHoursKeys.From) is not { } from || fields.Hour(LoadHoursKeys.To) is not { } to || fields.Figure(LoadHoursKeys.Power) is not { } powerW)
        {
            return;
        }

        if (from == to)
        {
            fields.Faults.Add(fields.PlaceOf(LoadHoursKeys.To), fields.PlaceOf(LoadHoursKeys.To).Described, "an hour other than \"from\"", "a load all day is written \"load: 40 W\"");
            return;
        }

        for (int hour = 0; hour < loadW.Length; hour++)
        {
            // What it draws in part of an hour is spread over that hour.
            double share = from < to ? Overlap(hour, from, to) : Overlap(hour, from, 24) + Overlap(hour, 0, to);
            loadW[hour] += powerW * share;
        }
    }

    private static double Overlap(int hour, double from, double to) => Math.Max(0, Math.Min(hour + 1, to) - Math.Max(hour, from));
}
