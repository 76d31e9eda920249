using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the units that several inputs belong to.</summary>
internal sealed class UnitsReader(NameRegister names, List<Assumption> assumed)
{
    private readonly Dictionary<string, Fields> _fieldsOf = [];
    private readonly HashSet<string> _used = [];

    public List<ChargingUnit> Units { get; } = [];

    public void Read(Fields root)
    {
        foreach (Fields fields in root.Groups(RootKeys.Units))
        {
            if (names.New(fields, UnitKeys.Name) is { } name)
            {
                _fieldsOf.TryAdd(name, fields);
                Units.Add(new ChargingUnit(
                    name,
                    LimitReader.Read(fields, UnitKeys.MaxPower, name, assumed),
                    BatteryReader.Read(fields, UnitKeys.Battery, name, assumed)));
            }
        }
    }

    /// <summary>The unit that an input names; null when it names none or, with a fault, none that is there.</summary>
    public string? UnitOf(Fields input)
    {
        if (NameRegister.Written(input, InputKeys.Unit) is not { } scalar)
        {
            return null;
        }

        if (_fieldsOf.ContainsKey(scalar.Text))
        {
            _used.Add(scalar.Text);
            return scalar.Text;
        }

        if (!input.Faults.BrokeOff)
        {
            AddUnknown(input, scalar);
        }

        return null;
    }

    /// <summary>Reports units that no input names: their limits would silently hold for nothing.</summary>
    public void RefuseUnused()
    {
        foreach ((string name, Fields fields) in _fieldsOf)
        {
            if (!_used.Contains(name) && !fields.Faults.BrokeOff)
            {
                fields.Faults.Add(fields.PlaceOf(UnitKeys.Name), $"a unit \"{name}\" that no input belongs to", $"\"unit: {name}\" in its inputs");
            }
        }
    }

    private void AddUnknown(Fields input, YamlScalar scalar)
    {
        string? near = Nearest.Of(scalar.Text, _fieldsOf.Keys);
        input.Faults.Add(scalar, $"an unknown unit {scalar.Described}", "the name of a unit listed in \"units\"", near is null ? null : $"did you mean \"{near}\"?");
    }
}
