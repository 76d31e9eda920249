using System.Collections.Immutable;
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
        (double loadW, ImmutableArray<double> byHourW) = LoadReader.Read(fields);
        if (!fields.Has(BatteryKeys.Load))
        {
            assumed.Add(new Assumption(AssumedName(ownerName, BatteryKeys.Load), BatteryKeys.Load.Otherwise!, "The plan does not say. A load leaves room for more to be stored."));
        }

        double reserve = fields.Figure(BatteryKeys.Reserve) ?? 0;
        if (from >= to)
        {
            fields.Faults.Add(fields.PlaceOf(BatteryKeys.To), fields.PlaceOf(BatteryKeys.To).Described, "a state of charge above \"from\"");
        }

        if (reserve >= to)
        {
            fields.Faults.Add(fields.PlaceOf(BatteryKeys.Reserve), fields.PlaceOf(BatteryKeys.Reserve).Described, "a state of charge below \"to\"");
        }

        int? chemistry = fields.Choice(BatteryKeys.Chemistry);
        double? maxChargeW = fields.Figure(BatteryKeys.MaxCharge);
        return capacityWh is not { } capacity ? null : new Battery(capacity, from, to, loadW)
        {
            LoadByHourW = byHourW,
            ReserveFraction = reserve,
            Chemistry = chemistry is { } chosen ? (BatteryChemistry)chosen : null,
            MaxChargeW = maxChargeW,
        };
    }

    /// <summary>The name under which a filled-in figure of a battery is listed.</summary>
    public static string AssumedName(string owner, PlanKey key) => $"{owner} battery {key.Name}";

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
