using System.Collections.Immutable;
using System.Globalization;

namespace Arraywright.Limits;

/// <summary>From which voltage on a touch is dangerous, and what is said of it wherever leads are spoken of.</summary>
/// <remarks>
/// Safety extra-low voltage ends at 120 V of ripple-free direct current, and lower where live parts may be touched (IEC 61558-1, 3.7.16,
/// as the IEC's vocabulary gives it). For the lower, 60 V in dry places: IEC 60364-4-41 and IEC 61140, from memory, not compared.
/// </remarks>
internal static class TouchVoltage
{
    private const double WithinReachV = 60;
    private const double ExtraLowV = 120;

    /// <summary>Whether leads at this voltage must not be worked on with bare hands and any tool.</summary>
    public static bool IsDangerous(double voltageV) => voltageV > WithinReachV;

    /// <summary>A voltage to a tenth.</summary>
    public static string Text(double voltageV) => voltageV.ToString("0.#", CultureInfo.InvariantCulture) + " V";

    /// <summary>What to know before work on leads that reach a voltage; empty where it is low.</summary>
    public static ImmutableArray<string> Warnings(double voltageV) => !IsDangerous(voltageV) ? [] :
    [
        $"Leads here reach {Text(voltageV)} on a cold morning, and that can kill. It is above {Band(voltageV)}; in most places this is work for a licensed electrician.",
        "The panels cannot be switched off in daylight: their leads are at this voltage with every switch open, and covered ones count as live until the meter has shown otherwise.",
        $"Insulated tools, insulating gloves, a meter and its leads: each marked for at least {Text(Math.Ceiling(voltageV))} of direct current, the meter and its leads for measurement category III too (common practice). Never work alone.",
    ];

    private static string Band(double voltageV) => voltageV > ExtraLowV
        ? "120 V, where extra-low voltage ends for direct current"
        : "60 V, up to which bare parts at direct current may be within reach in dry places";
}
