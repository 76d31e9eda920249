using System.Collections.Immutable;

namespace Arraywright.Limits;

/// <summary>What a person should have in mind before touching anything.</summary>
public static class Cautions
{
    // In the order a job goes.
    private static ImmutableArray<string> Usual { get; } =
    [
        "These figures help to plan. They do not replace the manual, the local code, or a licensed electrician where one is required.",
        "Voltage is the hard limit. One cold, bright morning over it can destroy an input for good.",
        "A panel in daylight is always live and cannot be switched off: cover it before you work on its leads.",
        "Measure polarity and open-circuit voltage with a meter before the first connection, string by string.",
        "Never pull a connector while current flows: a direct-current arc does not go out by itself. Stop the input or open a DC switch first.",
        "Use switches, fuses and cable rated for direct current at the cold voltage; those made for alternating current will not do.",
        "Join connectors of the same make and type only, and look at them again after the first hot day.",
    ];

    /// <summary>Where the voltage is dangerous to touch, that first; then the usual cautions, in the order a job goes.</summary>
    /// <param name="highestV">The highest voltage that leads reach, V.</param>
    public static ImmutableArray<string> For(double highestV) => [.. TouchVoltage.Warnings(highestV), .. Usual];

    /// <summary>That a voltage can kill, in two sentences, for a short answer; null where it is low.</summary>
    /// <param name="highestV">The highest voltage that leads reach, V.</param>
    public static string? OfVoltage(double highestV) => TouchVoltage.Warnings(highestV).FirstOrDefault();

    /// <summary>What comes on top where parts are bought and joined.</summary>
    public static ImmutableArray<string> OfParts { get; } =
    [
        "Ratings named here as usual are common practice. What is printed on the part in your hand counts, and the lowest of a chain counts for all of it.",
        "An adapter into a unit's socket is often the weakest piece: never cover it, and feel for warmth on the first hot, bright day.",
    ];
}
