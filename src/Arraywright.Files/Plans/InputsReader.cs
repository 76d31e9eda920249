using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the inputs at hand.</summary>
internal sealed class InputsReader(NameRegister names, StockReader panels, UnitsReader units, List<Assumption> assumed)
{
    private readonly WiringReader _wirings = new(panels);

    public ImmutableArray<PlannedInput> Read(Fields root)
    {
        List<PlannedInput> inputs = [];
        foreach (Fields fields in root.Groups(RootKeys.Inputs))
        {
            string? name = names.New(fields, InputKeys.Name);
            DcInput? input = ReadInput(fields, name ?? "unnamed");
            Wiring? wiring = _wirings.Read(fields);
            if (input is not null)
            {
                inputs.Add(new PlannedInput(input, wiring));
            }
        }

        units.RefuseUnused();
        return [.. inputs];
    }

    private DcInput? ReadInput(Fields fields, string name)
    {
        double? maxV = ReadMaxVoltage(fields);
        double? startV = fields.Figure(InputKeys.StartVoltage);
        (double From, double To)? tracking = fields.Range(InputKeys.MppVoltage);
        RefuseAbove(fields, InputKeys.StartVoltage, startV, maxV);
        RefuseAbove(fields, InputKeys.MppVoltage, tracking?.To, maxV);
        string? unit = units.UnitOf(fields);
        Battery? battery = BatteryReader.Read(fields, InputKeys.Battery, name, assumed);
        if (unit is not null && fields.Has(InputKeys.Battery))
        {
            fields.Faults.Add(fields.PlaceOf(InputKeys.Battery), $"a battery of an input of the unit \"{unit}\"", "the battery at the unit, in \"units\"", "the inputs of a unit share its battery");
        }

        DcInput input = new()
        {
            Name = name,
            MaxVoltageV = maxV ?? 0,
            StartVoltageV = startV,
            TrackingMinV = tracking?.From,
            TrackingMaxV = tracking?.To,
            MaxCurrent = LimitReader.Read(fields, InputKeys.MaxCurrent, name, assumed),
            MaxShortCircuitCurrent = LimitReader.Read(fields, InputKeys.MaxShortCircuitCurrent, name, assumed),
            RatedCurrent = LimitReader.Read(fields, InputKeys.RatedCurrent, name, assumed),
            MaxPower = LimitReader.Read(fields, InputKeys.MaxPower, name, assumed),
            EfficiencyFraction = fields.Figure(InputKeys.Efficiency),
            SelfUseW = fields.Figure(InputKeys.SelfUse) ?? 0,
            ConnectorA = fields.Figure(InputKeys.Connector),
            SocketA = fields.Figure(InputKeys.Socket),
            HasWattMeter = fields.Choice(InputKeys.WattMeter) == 1,
            Unit = unit,
            Battery = battery,
        };
        return maxV is null ? null : input;
    }

    private static void RefuseAbove(Fields fields, PlanKey key, double? figureV, double? maxV)
    {
        if (figureV > maxV)
        {
            fields.Faults.Add(fields.PlaceOf(key), fields.PlaceOf(key).Described, "at most \"max_voltage\"", "the input would break before it runs");
        }
    }

    /// <summary>The hard limit. Whoever writes evidence for it hopes that it can be exceeded; nothing makes that so.</summary>
    private static double? ReadMaxVoltage(Fields fields)
    {
        if (fields.Node(InputKeys.MaxVoltage) is not YamlMapping mapping)
        {
            return fields.Figure(InputKeys.MaxVoltage);
        }

        fields.AddUnexpected(mapping, InputKeys.MaxVoltage, "voltage is hard: no evidence moves it, so write one figure");
        return null;
    }
}
