using static Arraywright.Gear.LabelText;

namespace Arraywright.Gear;

/// <summary>Power, voc, isc, vmp and imp held against each other.</summary>
internal static class MaximumPowerChecks
{
    /// <summary>A label may round its power this far from vmp × imp, fraction; more where it states a wider tolerance.</summary>
    private const double UsualPowerSlack = 0.03;

    /// <summary>Beyond this, fraction, one of the three figures is wrong.</summary>
    private const double GrossPowerSlack = 0.20;

    /// <summary>No cell of any kind has its maximum power below half its voltage or half its current.</summary>
    private const double LowestRatio = 0.5;

    /// <summary>More than any single panel on sale, W: 700 to 760 W is the largest in print.</summary>
    private const double LargestPanelW = 1000;

    private const string UnlessThinFilm = " If the panel is thin film, say so with technology.";

    /// <summary>Finds what the label lacks.</summary>
    /// <param name="label">As printed, so that a figure refused elsewhere does not count as missing.</param>
    /// <param name="doubts">Where the findings go.</param>
    public static void CheckComplete(PanelLabel label, LabelDoubts doubts)
    {
        const string Needs = "A panel needs voc, isc, and power or vmp with imp.";
        if (label.OpenCircuitV is null)
        {
            doubts.Refuse("voc", $"voc, the open-circuit voltage, is missing. {Needs}");
        }

        if (label.ShortCircuitA is null)
        {
            doubts.Refuse("isc", $"isc, the short-circuit current, is missing. {Needs}");
        }

        if (label.PowerW is null && (label.MaximumPowerV is null || label.MaximumPowerA is null))
        {
            doubts.Refuse("power", $"power is missing, and vmp and imp are not both there to make it. {Needs}");
        }
    }

    /// <summary>Holds the figures that are there against each other, the fill factor last and only when nothing nearer is wrong.</summary>
    /// <returns>The label without the voc or isc that was refused, so that later checks do not blame others for it.</returns>
    public static PanelLabel Consistent(PanelLabel label, TypicalFigures typical, LabelDoubts doubts)
    {
        if (MaximumPower.Of(label, typical) is not { } maximum)
        {
            return label;
        }

        Judgement volts = Compare(new("vmp", "power / imp", maximum.VoltageV, "voc", label.OpenCircuitV, "V", typical.UsualVoltageRatio));
        Judgement amps = Compare(new("imp", "power / vmp", maximum.CurrentA, "isc", label.ShortCircuitA, "A", typical.UsualCurrentRatio));
        Judgement worst = Worse(volts, amps);
        if (worst < Judgement.Refused)
        {
            worst = Worse(worst, CheckProduct(label, doubts));
        }

        if (worst < Judgement.Refused && label is { OpenCircuitV: { } vocV, ShortCircuitA: { } iscA })
        {
            CheckFillFactor(maximum.VoltageV.Value * maximum.CurrentA.Value / (vocV * iscA), worst);
        }

        if (maximum.PowerW.Value > LargestPanelW)
        {
            doubts.Question("power", $"power is {Computed(maximum.PowerW.Value)} W; no single panel on sale has over {LargestPanelW} W. Is it the power of several?");
        }

        return label with
        {
            OpenCircuitV = volts == Judgement.Refused ? null : label.OpenCircuitV,
            ShortCircuitA = amps == Judgement.Refused ? null : label.ShortCircuitA,
        };

        Judgement Compare(Pair pair) => CheckPair(pair, typical.Name, label.Technology is null, doubts);

        void CheckFillFactor(double fillFactor, Judgement sofar)
        {
            string field = label.MaximumPowerV is null || label.MaximumPowerA is null ? "power" : "voc";
            string guess = fillFactor switch
            {
                > 0.97 and < 1.03 => " Was the power made of voc × isc?",
                _ when label.Technology is null && fillFactor < typical.FillFactor.Usual.Low => UnlessThinFilm,
                _ => Lost(fillFactor),
            };
            string message = $"the maximum power is {Ratio(fillFactor)} of voc × isc (the fill factor); {typical.Name} panels have {Range(typical.FillFactor.Usual)}. Check voc, isc and the power.{guess}";
            if (!typical.FillFactor.Possible.Holds(fillFactor))
            {
                doubts.Refuse(field, message);
            }
            else if (sofar == Judgement.Fine && !typical.FillFactor.Usual.Holds(fillFactor))
            {
                doubts.Question(field, message);
            }
        }
    }

    private static Judgement CheckPair(Pair pair, string technology, bool mayBeThinFilm, LabelDoubts doubts)
    {
        if (pair.Highest is not { } highest || pair.AtPower.Origin == Origin.Assumed)
        {
            return Judgement.Fine;
        }

        double atPower = pair.AtPower.Value;
        double ratio = atPower / highest;
        string low = pair.AtPower.Origin == Origin.Given ? pair.Low : $"{pair.Low} ({pair.Derivation})";
        string field = pair.AtPower.Origin == Origin.Given ? pair.Low : "power";
        string says = $"{low} is {Computed(atPower)} {pair.Unit}, {Ratio(ratio)} of {pair.High} {Figure(highest)} {pair.Unit}";
        if (ratio == 1)
        {
            doubts.Refuse(field, $"{low} and {pair.High} are both {Figure(highest)} {pair.Unit}, but maximum power lies below {pair.High}. Was {pair.High} typed into {pair.Low}?");
            return Judgement.Refused;
        }

        if (ratio > 1)
        {
            string guess = pair.Usual.Holds(1 / ratio) ? " The two look swapped." : Lost(ratio);
            doubts.Refuse(field, $"{low} {Computed(atPower)} {pair.Unit} is above {pair.High} {Figure(highest)} {pair.Unit}, which no panel can do.{guess}");
            return Judgement.Refused;
        }

        if (ratio < LowestRatio)
        {
            doubts.Refuse(field, $"{says}; panels have {Range(pair.Usual)}.{Lost(ratio)}");
            return Judgement.Refused;
        }

        if (!pair.Usual.Holds(ratio))
        {
            string unless = mayBeThinFilm && ratio < pair.Usual.Low ? UnlessThinFilm : "";
            doubts.Question(field, $"{says}; {technology} panels have {Range(pair.Usual)}.{unless}");
            return Judgement.Questioned;
        }

        return Judgement.Fine;
    }

    private static Judgement CheckProduct(PanelLabel label, LabelDoubts doubts)
    {
        if (label is not { PowerW: { } powerW, MaximumPowerV: { } vmpV, MaximumPowerA: { } impA })
        {
            return Judgement.Fine;
        }

        // Labels print vmp to 0.1 V and imp to 0.01 A, which is much for a 5 W panel.
        double rounding = (0.05 / vmpV) + (0.005 / impA);
        double slack = Math.Max(label.ToleranceFraction ?? 0, UsualPowerSlack) + rounding;
        double off = Math.Abs(powerW - (vmpV * impA)) / powerW;
        string says = $"power is {Figure(powerW)} W, but vmp × imp is {Figure(vmpV)} V × {Figure(impA)} A = {Math.Round(vmpV * impA, 1):0.#} W";
        if (off > Math.Max(GrossPowerSlack, slack))
        {
            doubts.Refuse("power", $"{says}. One of the three is wrong.{Lost(powerW / (vmpV * impA))}");
            return Judgement.Refused;
        }

        if (off > slack)
        {
            doubts.Question("power", $"{says}: {Math.Round(off * 100, 1):0.#} % apart, where {Math.Round(slack * 100, 1):0.#} % is tolerance and rounding.");
            return Judgement.Questioned;
        }

        return Judgement.Fine;
    }

    private static Judgement Worse(Judgement one, Judgement other) => one > other ? one : other;

    private static string Lost(double ratio) => ratio is > 5 or < 0.2 ? " Is a decimal point lost?" : "";

    private static string Range(Band ratios) => $"{Ratio(ratios.Low)} to {Ratio(ratios.High)}";

    private enum Judgement
    {
        Fine,
        Questioned,
        Refused,
    }

    /// <summary>A figure at maximum power and the one it must stay below.</summary>
    private readonly record struct Pair(
        string Low, string Derivation, Sourced<double> AtPower, string High, double? Highest, string Unit, Band Usual);
}
