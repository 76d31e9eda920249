using Arraywright.Files.Keys;
using Arraywright.Files.Plans;
using Arraywright.Files.Quick;
using Arraywright.Files.Text;
using Arraywright.Gear;

namespace Arraywright.Files;

/// <summary>Reads the one-line question: panels by their labels, onto inputs by theirs.</summary>
/// <remarks>
/// Of two voltages the larger is Voc and the smaller Vmp; of two currents the larger is Isc and the smaller Imp; watts are the power. On an
/// input, volts are the hard limit (a range is the tracking window), amps are a printed current of unknown meaning, watts are the power limit.
/// </remarks>
public static class QuickPlan
{
    private const string PanelsName = "panels", OntoName = "--onto";

    /// <summary>The plan that a one-line question stands for.</summary>
    /// <param name="panels">Arguments such as <c>4x</c>, <c>22.9V 6.72A 18.9V 6.35A</c>; the count may be joined to its label, and is 1 when left out.</param>
    /// <param name="onto">Arguments of <c>--onto</c>, such as <c>50V 10A 400W</c>; one an input.</param>
    /// <param name="place">Where, if that was asked.</param>
    /// <returns>Faults name "panels" or "--onto" as the file, the argument (from 1) as the line and the position in it as the column.</returns>
    public static PlanReading Read(IReadOnlyList<string> panels, IReadOnlyList<string> onto, Place? place = null)
    {
        FaultList panelFaults = new(PanelsName), ontoFaults = new(OntoName);
        List<Assumption> assumed = [];
        List<LabelDoubt> doubts = [];
        Goal goal = Defaults.Goal(place is not null, assumed);
        Mount mount = Defaults.Mount(place, assumed);
        Cable cable = Defaults.Cable(assumed);
        List<PanelStock> stocks = ReadPanels(panels, panelFaults, assumed, doubts);
        List<PlannedInput> inputs = ReadInputs(onto, ontoFaults);
        IReadOnlyList<Fault> faults = [.. panelFaults.InFileOrder(), .. ontoFaults.InFileOrder()];
        return faults.Count > 0 ? new PlanReading(null, faults) : new PlanReading(
            new Plan
            {
                Name = "Quick question",
                Goal = goal,
                Place = place,
                Mount = mount,
                Panels = [.. stocks],
                Inputs = [.. inputs],
                Units = [],
                Cable = cable,
                Assumed = [.. assumed],
                Doubts = [.. doubts],
            },
            []);
    }

    private static List<PanelStock> ReadPanels(IReadOnlyList<string> arguments, FaultList faults, List<Assumption> assumed, List<LabelDoubt> doubts)
    {
        List<CountedLabel> labels = new QuickArguments(allowsCount: true, faults).Labels(arguments);
        if (labels.Count == 0 && faults.Count == 0)
        {
            faults.Add(1, 1, "no panels", "a label such as 4x \"22.9V 6.72A 18.9V 6.35A\"");
        }

        int total = 0;
        List<PanelStock> stocks = [];
        for (int i = 0; i < labels.Count; i++)
        {
            bool wasWithin = total <= Caps.Panels;
            total += labels[i].Count;
            if (wasWithin && total > Caps.Panels)
            {
                Add(labels[i], faults, $"{total} panels altogether", $"at most {Caps.Panels}");
            }

            if (ReadPanel(labels[i], Name("panel", i, labels.Count), faults, doubts) is { } panel)
            {
                assumed.AddRange(PanelAssumptions.Of(panel));
                stocks.Add(new PanelStock(panel, labels[i].Count, Shade.None, null));
            }
        }

        return stocks;
    }

    private static Panel? ReadPanel(CountedLabel written, string name, FaultList faults, List<LabelDoubt> doubts)
    {
        int before = faults.Count;
        LabelText label = LabelText.Read(written, allowsRange: false, faults);
        RefuseMore(label.Voltages, 2, "two voltages, Voc and Vmp", faults);
        RefuseMore(label.Currents, 2, "two currents, Isc and Imp", faults);
        RefuseMore(label.Powers, 1, "one power", faults);
        if (faults.Count == before && (label.Voltages.Count == 0 || label.Currents.Count == 0))
        {
            Add(written, faults, Quoted.Text(written.Text), "at least the open-circuit voltage and the short-circuit current of the panel", "such as \"22.9V 6.72A 120W\"");
        }

        if (faults.Count > before)
        {
            return null;
        }

        (double vocV, double? vmpV) = LargerFirst(label.Voltages);
        (double iscA, double? impA) = LargerFirst(label.Currents);
        (Panel? panel, IReadOnlyList<LabelDoubt> found) = PanelReader.Read(new PanelLabel
        {
            Name = name,
            OpenCircuitV = vocV,
            MaximumPowerV = vmpV,
            ShortCircuitA = iscA,
            MaximumPowerA = impA,
            PowerW = label.Powers.Count > 0 ? label.Powers[0].Value : null,
        });
        foreach (LabelDoubt doubt in found)
        {
            if (doubt.Refused)
            {
                Add(written, faults, Quoted.Text(written.Text), "label figures that one panel can have", doubt.Message.TrimEnd('.'));
            }
            else
            {
                doubts.Add(doubt);
            }
        }

        return panel;
    }

    private static List<PlannedInput> ReadInputs(IReadOnlyList<string> arguments, FaultList faults)
    {
        List<CountedLabel> labels = new QuickArguments(allowsCount: false, faults).Labels(arguments);
        if (labels.Count is 0 or > Caps.Inputs)
        {
            faults.Add(1, 1, labels.Count == 0 ? "no input" : $"{labels.Count} inputs", $"from 1 to {Caps.Inputs} inputs such as --onto \"50V 10A 400W\"");
        }

        List<PlannedInput> inputs = [];
        for (int i = 0; i < labels.Count; i++)
        {
            LabelText label = LabelText.Read(labels[i], allowsRange: true, faults);
            RefuseMore(label.Voltages, 1, "one hard voltage limit", faults);
            RefuseMore(label.Currents, 1, "one current", faults);
            RefuseMore(label.Powers, 1, "one power", faults);
            if (label.Voltages.Count == 0)
            {
                Add(labels[i], faults, Quoted.Text(labels[i].Text), "the highest voltage the input bears such as \"50V\"", "a range is only where it tracks; the hard limit must be stated by itself");
            }
            else if (label.Range is { } range && range.To > label.Voltages[0].Value)
            {
                faults.Add(range.Line, range.Column, "a tracking window above the highest voltage", "a window below it");
            }

            inputs.Add(new PlannedInput(ToInput(label, Name("input", i, labels.Count)), null));
        }

        return inputs;
    }

    private static DcInput ToInput(LabelText label, string name) => new()
    {
        Name = name,
        MaxVoltageV = label.Voltages.Count > 0 ? label.Voltages[0].Value : 0,
        TrackingMinV = label.Range?.From,
        TrackingMaxV = label.Range?.To,
        RatedCurrent = label.Currents.Count > 0 ? new Limit(label.Currents[0].Value, Evidence.Nothing) : null,
        MaxPower = label.Powers.Count > 0 ? new Limit(label.Powers[0].Value, Evidence.Nothing) : null,
    };

    private static void RefuseMore(List<PlacedFigure> figures, int most, string expected, FaultList faults)
    {
        if (figures.Count > most)
        {
            faults.Add(figures[most].Line, figures[most].Column, Quoted.Text(figures[most].Written), $"at most {expected}", "another panel or input goes into quotation marks of its own");
        }
    }

    private static void Add(CountedLabel label, FaultList faults, string found, string expected, string? hint = null)
    {
        (int line, int column) = label.PlaceOf(0);
        faults.Add(line, column, found, expected, hint);
    }

    private static (double Larger, double? Smaller) LargerFirst(List<PlacedFigure> figures) => figures.Count == 1
        ? (figures[0].Value, null)
        : (Math.Max(figures[0].Value, figures[1].Value), Math.Min(figures[0].Value, figures[1].Value));

    private static string Name(string kind, int index, int of) => of == 1 ? kind : $"{kind}-{index + 1}";
}
