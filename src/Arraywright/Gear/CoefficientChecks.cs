using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>Temperature coefficients: sign, size, and what a wrong one was probably meant to be.</summary>
internal static class CoefficientChecks
{
    /// <summary>Change of open-circuit voltage of any panel, 1/K.</summary>
    private static readonly Band PossibleVoltage = new(-0.0060, -0.0010);

    /// <summary>Change of short-circuit current of any panel, 1/K; slightly negative is printed for some thin films.</summary>
    private static readonly Band PossibleCurrent = new(-0.0005, 0.0020);

    /// <summary>Change of power of any panel, 1/K.</summary>
    private static readonly Band PossiblePower = new(-0.0080, -0.0008);

    public static void Check(PanelLabel label, TypicalFigures typical, LabelDoubts doubts)
    {
        Judge(new("voc_temperature", "open-circuit voltage", "V", label.OpenCircuitV, label.Cells), label.OpenCircuitPerK, PossibleVoltage, typical.OpenCircuitPerK.Usual);
        Judge(new("isc_temperature", "short-circuit current", "A", label.ShortCircuitA, null), label.ShortCircuitPerK, PossibleCurrent, typical.ShortCircuitPerK.Usual);
        Judge(new("power_temperature", "power", "W", label.PowerW, null), label.PowerPerK, PossiblePower, typical.UsualPowerPerK);
        CheckSwapped(label, typical, doubts);

        void Judge(Quantity quantity, double? coefficient, Band possible, Band usual)
        {
            if (coefficient is not { } perK || usual.Holds(perK))
            {
                return;
            }

            string message = $"{quantity.Field} is {Printed(perK, quantity)}; the {quantity.Name} of {typical.Name} panels changes by {PercentPerK(usual)}.{Guess(perK, usual, quantity)}";
            if (possible.Holds(perK))
            {
                doubts.Question(quantity.Field, message);
            }
            else
            {
                doubts.Refuse(quantity.Field, message);
            }
        }
    }

    /// <summary>The power of crystalline panels falls faster with heat than their voltage, as the fill factor falls too.</summary>
    private static void CheckSwapped(PanelLabel label, TypicalFigures typical, LabelDoubts doubts)
    {
        if (!typical.IsThinFilm
            && label is { OpenCircuitPerK: { } voltagePerK, PowerPerK: { } powerPerK }
            && typical.OpenCircuitPerK.Usual.Holds(voltagePerK)
            && typical.UsualPowerPerK.Holds(powerPerK)
            && powerPerK > voltagePerK + 0.0002)
        {
            doubts.Question(
                "voc_temperature",
                $"voc_temperature {PercentPerK(voltagePerK)} is stronger than power_temperature {PercentPerK(powerPerK)}; in crystalline panels it is weaker. Are the two swapped?");
        }
    }

    private static string Printed(double perK, Quantity quantity) => quantity.AtStandard is { } size
        ? $"{PercentPerK(perK)} ({Computed(perK * size)} {quantity.Unit}/K)"
        : PercentPerK(perK);

    /// <summary>Every slip of the pen that would turn a usual coefficient into this one.</summary>
    private static string Guess(double perK, Band usual, Quantity quantity)
    {
        string unit = quantity.Unit;
        List<string> guesses = [];
        Try(-1, "the sign is wrong");
        Try(10, "a decimal point is lost");
        Try(0.1, "a decimal point is lost");
        Try(0.001, $"{unit}/K stands for m{unit}/K");
        Try(1000, $"m{unit}/K stands for {unit}/K");
        if (quantity.AtStandard is { } size)
        {
            Try(size / 100, $"{unit}/K stands for %/K");
            Try(100 / size, $"%/K stands for {unit}/K");
        }

        if (quantity.Cells is { } cells)
        {
            Try(cells, "it is the figure of one cell");
        }

        return guesses.Count > 0 ? $" Perhaps {string.Join(", or ", guesses)}?" : "";

        void Try(double factor, string slip)
        {
            if (usual.Holds(perK * factor))
            {
                guesses.Add(slip);
            }
        }
    }

    private readonly record struct Quantity(string Field, string Name, string Unit, double? AtStandard, int? Cells);
}
