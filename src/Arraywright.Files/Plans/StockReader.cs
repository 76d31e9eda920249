using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the panels at hand.</summary>
internal sealed class StockReader(NameRegister names, Mount mount, List<Assumption> assumed)
{
    private readonly Dictionary<string, int?> _owned = new(StringComparer.Ordinal);
    private int _total;
    private bool _anyIsUnnamed;

    public List<PanelStock> Stocks { get; } = [];

    public List<LabelDoubt> Doubts { get; } = [];

    /// <summary>How many of each name are owned, in plan order; null where the count itself is at fault.</summary>
    public IReadOnlyDictionary<string, int?> Owned => _owned;

    /// <summary>False when some panel has no good name, or none was found: an unknown name may then be that panel's.</summary>
    public bool AllAreNamed { get; private set; }

    public void Read(Fields root)
    {
        foreach (Fields fields in root.Groups(RootKeys.Panels))
        {
            ReadKind(fields);
        }

        AllAreNamed = _owned.Count > 0 && !_anyIsUnnamed;
    }

    private void ReadKind(Fields fields)
    {
        string? name = names.New(fields, PanelKeys.Name);
        int? count = fields.Count(PanelKeys.Count);
        AddToTotal(fields, count ?? 0);
        if (name is not null)
        {
            _owned.TryAdd(name, count);
        }

        _anyIsUnnamed |= name is null;

        Panel? panel = ReadPanel(fields, name ?? "unnamed");
        Shade shade = ShadeReader.Read(fields, panel);
        Mount? own = MountReader.ReadOwn(fields, mount);
        if (panel is not null && count is { } many)
        {
            Stocks.Add(new PanelStock(panel, many, shade, own));
        }
    }

    private void AddToTotal(Fields fields, int count)
    {
        bool wasWithin = _total <= Caps.Panels;
        _total += count;
        if (wasWithin && _total > Caps.Panels)
        {
            fields.Faults.Add(fields.PlaceOf(PanelKeys.Count), $"{_total} panels altogether", $"at most {Caps.Panels} in one plan", "split it into several plans");
        }
    }

    private Panel? ReadPanel(Fields fields, string name)
    {
        int before = fields.Faults.Count;
        PanelLabel label = ReadLabel(fields, name);
        if (fields.Faults.Count > before || label.OpenCircuitV is null || label.ShortCircuitA is null)
        {
            return null;
        }

        (Panel? panel, IReadOnlyList<LabelDoubt> doubts) = PanelReader.Read(label);
        foreach (LabelDoubt doubt in doubts)
        {
            if (doubt.Refused)
            {
                AddRefused(fields, doubt);
            }
            else
            {
                Doubts.Add(doubt);
            }
        }

        if (panel is not null)
        {
            assumed.AddRange(PanelAssumptions.Of(panel));
        }

        return panel;
    }

    private static void AddRefused(Fields fields, LabelDoubt doubt)
    {
        PlanKey? key = PanelKeys.Section.Find(doubt.Field);
        YamlNode? value = key is null ? null : fields.Node(key);
        fields.Faults.Add(
            value ?? fields.Whole,
            value is null ? $"a panel without \"{doubt.Field}\"" : $"{doubt.Field} {value.Described}",
            "label figures that one panel can have",
            doubt.Message.TrimEnd('.'));
    }

    private static PanelLabel ReadLabel(Fields fields, string name)
    {
        double? powerW = fields.Figure(PanelKeys.Power), vocV = fields.Figure(PanelKeys.Voc), iscA = fields.Figure(PanelKeys.Isc);
        double? vmpV = fields.Figure(PanelKeys.Vmp), impA = fields.Figure(PanelKeys.Imp);
        return new PanelLabel
        {
            Name = name,
            PowerW = powerW,
            OpenCircuitV = vocV,
            ShortCircuitA = iscA,
            MaximumPowerV = vmpV,
            MaximumPowerA = impA,
            OpenCircuitPerK = SlopeReader.Read(fields, PanelKeys.VocTemperature, PanelKeys.Voc, vocV),
            ShortCircuitPerK = SlopeReader.Read(fields, PanelKeys.IscTemperature, PanelKeys.Isc, iscA),
            PowerPerK = SlopeReader.Read(fields, PanelKeys.PowerTemperature, PanelKeys.Power, powerW ?? vmpV * impA),
            Cells = fields.Count(PanelKeys.Cells),
            BypassDiodes = fields.Count(PanelKeys.BypassDiodes),
            MaxSeriesFuseA = fields.Figure(PanelKeys.MaxSeriesFuse),
            MaxSystemVoltageV = fields.Figure(PanelKeys.MaxSystemVoltage),
            ToleranceFraction = fields.Figure(PanelKeys.Tolerance),
            NoctC = fields.Figure(PanelKeys.Noct),
            Technology = (Technology?)fields.Choice(PanelKeys.Technology),
            Price = fields.Figure(PanelKeys.Price),
        };
    }
}
