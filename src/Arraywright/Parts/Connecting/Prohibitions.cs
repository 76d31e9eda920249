using System.Collections.Immutable;
using Arraywright.Limits;

namespace Arraywright.Parts.Connecting;

/// <summary>What must not be done, and the way back. Common practice of the trade and of manuals; no single source.</summary>
internal static class Prohibitions
{
    /// <summary>How everything is taken apart again.</summary>
    public static ImmutableArray<string> Undoing { get; } =
    [
        "Stop every input: switch its unit off, then open the switch in its run, if there is one.",
        "Make sure that no current flows: each input shows 0 W, or a clamp meter 0 A.",
        "Cover the panels, or wait until it is dark.",
        "Unplug every run at its unit first. Then take string fuses out, where there are any, and the strings apart, each end capped at once.",
    ];

    /// <summary>The most dangerous first.</summary>
    public static ImmutableArray<Prohibition> For(ImmutableArray<ConnectedInput> connected, double highestV) =>
    [
        .. TouchVoltage.IsDangerous(highestV)
            ? [new Prohibition(
                "work on these leads alone, with bare hands, or with tools, gloves and a meter not made for their voltage",
                $"they reach {TouchVoltage.Text(highestV)}, which can kill; daylight cannot be switched off; in most places it is work for a licensed electrician.")]
            : ImmutableArray<Prohibition>.Empty,
        new("pull a connector, a fuse or a plug apart, or push one in, while current flows or could begin to", "a direct-current arc does not go out by itself: it burns hands and starts fires."),
        .. connected.Select(one => new Prohibition(
            $"put more than {TouchVoltage.Text(one.Input.MaxVoltageV)} on {one.Name}, not for a moment",
            $"no row longer than drawn, no two strings one after the other. As drawn it reaches {TouchVoltage.Text(one.Assignment.VocColdV)} at the coldest.")),
        new("swap + and −, or join a string to others before its sign and its volts were measured", "the other strings drive their whole current through the one that is wrong."),
        new("cover, wrap, bundle or bury an adapter, a branch connector or a fuse that carries current", "they are the hottest and weakest pieces of the run, and need air."),
        new("touch the bare ends of a string in daylight, or let them touch each other", "the panels are live as long as there is light, whatever is switched off."),
        new("set the meter to amps across open leads", "that is a short circuit through the meter. Amps are read with a clamp meter, or on the unit."),
        new("join connectors of different makes, or force one that does not fit", "they seem to fit, get hot and melt."),
        new("use a switch, a fuse or a plug made for alternating current", "it may not be able to break direct current."),
        new("work on the leads in rain, or leave an open connector to the weather", "wet contacts leak, corrode and track."),
    ];
}
