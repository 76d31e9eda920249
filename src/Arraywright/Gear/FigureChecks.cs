using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>Each figure of a label by itself: a number, and one that some panel could have.</summary>
/// <remarks>The ends lie far outside any product (from single cells to a pallet of panels); nearer judgements compare figures with each other.</remarks>
internal static class FigureChecks
{
    /// <summary>The label without the figures refused here, so that later checks do not blame others for them.</summary>
    public static PanelLabel Usable(PanelLabel label, LabelDoubts doubts)
    {
        double? Within(double? figure, string field, string unit, double low, double high) => figure switch
        {
            null => null,
            { } value when !double.IsFinite(value) => Refused(field, $"{field} is not a number."),
            <= 0 and { } value when low > 0 => Refused(field, $"{field} is {Figure(value)}{unit}; it must be above 0."),
            < 0 and { } value when low == 0 => Refused(field, $"{field} is {Figure(value)}{unit}; it must be 0 or more."),
            { } value when value < low || value > high =>
                Refused(field, $"{field} is {Figure(value)}{unit}; no panel has that: it lies between {Figure(low)} and {Figure(high)}{unit}. Is a decimal point lost?"),
            _ => figure,
        };

        double? Refused(string field, string message)
        {
            doubts.Refuse(field, message);
            return null;
        }

        return label with
        {
            PowerW = Within(label.PowerW, "power", " W", 0.1, 3000),
            OpenCircuitV = Within(label.OpenCircuitV, "voc", " V", 0.4, 1500),
            ShortCircuitA = Within(label.ShortCircuitA, "isc", " A", 0.005, 200),
            MaximumPowerV = Within(label.MaximumPowerV, "vmp", " V", 0.2, 1500),
            MaximumPowerA = Within(label.MaximumPowerA, "imp", " A", 0.004, 200),
            OpenCircuitPerK = Within(label.OpenCircuitPerK, "voc_temperature", " of voc a kelvin", -1e6, 1e6),
            ShortCircuitPerK = Within(label.ShortCircuitPerK, "isc_temperature", " of isc a kelvin", -1e6, 1e6),
            PowerPerK = Within(label.PowerPerK, "power_temperature", " of power a kelvin", -1e6, 1e6),
            Cells = (int?)Within(label.Cells, "cells", "", 1, 3000),
            BypassDiodes = (int?)Within(label.BypassDiodes, "bypass_diodes", "", 0, 3000),
            MaxSeriesFuseA = Within(label.MaxSeriesFuseA, "max_series_fuse", " A", 0.1, 1000),
            MaxSystemVoltageV = Within(label.MaxSystemVoltageV, "max_system_voltage", " V", 1, 10_000),
            ToleranceFraction = Tolerance(label.ToleranceFraction, doubts),
            NoctC = Noct(label.NoctC, doubts),
            Price = Within(label.Price, "price", "", 0, 1e9),
        };
    }

    /// <summary>±10 % is the widest in print (early thin film); beyond, ask.</summary>
    private static double? Tolerance(double? fraction, LabelDoubts doubts)
    {
        if (fraction is not { } value)
        {
            return null;
        }

        if (!(value is >= 0 and <= 0.5))
        {
            doubts.Refuse("tolerance", $"tolerance is {Figure(value * 100)} %; a label states 0 to 10 %.");
            return null;
        }

        if (value > 0.1001)
        {
            doubts.Question("tolerance", $"tolerance is {Figure(value * 100)} %; labels state at most 10 %. Is the decimal point right?");
        }

        return value;
    }

    private static double? Noct(double? noctC, LabelDoubts doubts)
    {
        if (noctC is not { } value)
        {
            return null;
        }

        if (!(value is > 20 and <= 90))
        {
            string hint = value is > 90 and < 140 ? " Is it in °F?" : "";
            doubts.Refuse("noct", $"noct is {Figure(value)} °C; cells in the sun run well above the 20 °C air it is measured in, labels say 40 to 50 °C.{hint}");
            return null;
        }

        if (value is < 36 or > 60)
        {
            doubts.Question("noct", $"noct is {Figure(value)} °C; labels say 40 to 50 °C. Is it the operating cell temperature, and not a limit?");
        }

        return value;
    }
}
