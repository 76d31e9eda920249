using Arraywright.Files.Keys;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the panels at hand.</summary>
internal sealed class StockReader(NameRegister names, PanelLabelReader labels, Mount mount, List<Assumption> assumed)
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

        Panel? panel = labels.Read(fields, name ?? "unnamed", Doubts);
        Shade shade = ShadeReader.Read(fields, panel);
        Mount? own = MountReader.ReadOwn(fields, mount);
        if (panel is null)
        {
            return;
        }

        assumed.AddRange(PanelAssumptions.Of(panel));
        if (count is { } many)
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
}
