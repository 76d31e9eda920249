using Arraywright.Files.Keys;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the battery of an input or a unit.</summary>
internal static class BatteryReader
{
    public static Battery? Read(Fields owner, SectionKey key, string ownerName, List<Assumption> assumed)
    {
        if (owner.Group(key) is not { } fields)
        {
            return null;
        }

        double? capacityWh = fields.Figure(BatteryKeys.Capacity);
        double from = Or(fields, BatteryKeys.From, 0, ownerName, "The plan does not say. A fuller battery takes less before it is full.", assumed);
        double to = Or(fields, BatteryKeys.To, 1, ownerName, "The plan does not say. A charge that stops earlier takes less.", assumed);
        double loadW = Or(fields, BatteryKeys.Load, 0, ownerName, "The plan does not say. A load leaves room for more to be stored.", assumed);
        if (from >= to)
        {
            fields.Faults.Add(fields.PlaceOf(BatteryKeys.To), fields.PlaceOf(BatteryKeys.To).Described, "a state of charge above \"from\"");
        }

        return capacityWh is { } capacity ? new Battery(capacity, from, to, loadW) : null;
    }

    /// <summary>The name under which a filled-in figure of a battery is listed.</summary>
    public static string AssumedName(string owner, QuantityKey key) => $"{owner} battery {key.Name}";

    private static double Or(Fields fields, QuantityKey key, double otherwise, string owner, string why, List<Assumption> assumed)
    {
        if (fields.Figure(key) is { } figure)
        {
            return figure;
        }

        if (!fields.Has(key))
        {
            assumed.Add(new Assumption(AssumedName(owner, key), key.Otherwise!, why));
        }

        return otherwise;
    }
}
