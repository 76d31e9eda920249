using Arraywright.Files.Keys;
using Arraywright.Files.Yaml;
using Arraywright.Gear;

namespace Arraywright.Files.Plans;

/// <summary>Reads the label figures of a kind of panel, owned or not.</summary>
internal sealed class PanelLabelReader(CurrencyRegister currency)
{
    /// <summary>The panel, and what is odd about its label; null, with faults, where a figure is wrong or cannot be true.</summary>
    public Panel? Read(Fields fields, string name, List<LabelDoubt> doubts)
    {
        int before = fields.Faults.Count;
        PanelLabel label = ReadLabel(fields, name);
        if (fields.Faults.Count > before || label.OpenCircuitV is null || label.ShortCircuitA is null)
        {
            return null;
        }

        (Panel? panel, IReadOnlyList<LabelDoubt> found) = PanelReader.Read(label);
        foreach (LabelDoubt doubt in found)
        {
            if (doubt.Refused)
            {
                AddRefused(fields, doubt);
            }
            else
            {
                doubts.Add(doubt);
            }
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

    private PanelLabel ReadLabel(Fields fields, string name)
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
            Price = currency.Read(fields, PanelKeys.Price),
        };
    }
}
