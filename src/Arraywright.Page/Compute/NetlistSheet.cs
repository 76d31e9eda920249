using Arraywright.Files;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Page.Compute;

/// <summary>The wiring of each input as a netlist for circuit simulators.</summary>
internal static class NetlistSheet
{
    /// <summary>A netlist an input.</summary>
    public static Sheet Of(IReadOnlyList<CurveResult> curves)
    {
        (string Input, string Text)[] netlists = [.. curves.Select(curve => (curve.Input.Name, Netlist.Write(CurveTitle.Of(curve), curve.Circuit, curve.VoltageV[^1], Netlist.UsualSteps)))];
        return new Sheet("",
        [
            Block.Of(BlockKind.Paragraph, "The same circuit for another program to solve, as a second opinion: any simulator that reads SPICE netlists."),
            .. netlists.SelectMany(netlist => new[] { Block.Of(BlockKind.Heading, netlist.Input), Block.Of(BlockKind.Text, netlist.Text) }),
        ])
        { Files = [.. netlists.Select((netlist, i) => new SheetFile(netlists.Length == 1 ? "wiring.cir" : $"wiring-{i + 1}.cir", "text/plain", netlist.Text))] };
    }
}
