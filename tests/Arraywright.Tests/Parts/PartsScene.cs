using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Parts;
using Arraywright.Planning;

namespace Arraywright.Tests.Parts;

/// <summary>Plans with a stated wiring of labels with round figures.</summary>
internal static class PartsScene
{
    /// <summary>120 W: 22.9 V, 6.72 A, 18.9 V, 6.35 A, 15 A fuse.</summary>
    public static PanelStock Shed(int count = 20) => Stock("shed", 22.9, 6.72, 18.9, 6.35, count);

    /// <summary>200 W: 24.3 V, 10.41 A, 20.2 V, 9.9 A, 15 A fuse.</summary>
    public static PanelStock Barn(int count = 20) => Stock("barn", 24.3, 10.41, 20.2, 9.9, count);

    /// <summary>4 mm² of 10 m, no own run of strings, 0.5 mΩ a connector.</summary>
    public static Cable Copper { get; } = new(Sourced.Given(10.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005));

    public static PanelStock Stock(string name, double vocV, double iscA, double vmpV, double impA, int count) => new(
        PanelReader.Read(new PanelLabel { Name = name, PowerW = vmpV * impA, OpenCircuitV = vocV, ShortCircuitA = iscA, MaximumPowerV = vmpV, MaximumPowerA = impA, MaxSeriesFuseA = 15, ToleranceFraction = 0.03 }).Panel!,
        count,
        Shade.None,
        null);

    public static Plan Plan(string wiring, Func<Plan, Plan>? change = null, Func<DcInput, DcInput>? input = null) =>
        (change ?? (plan => plan))(new Plan
        {
            Name = "parts",
            Goal = Goal.Peak,
            Place = null,
            Mount = new Mount(40, 180, MountKind.OpenRack),
            Panels = [Shed(), Barn()],
            Inputs = [new PlannedInput((input ?? (bare => bare))(new DcInput { Name = "store", MaxVoltageV = 1000, SocketA = 100, ConnectorA = 100 }), Read(wiring))],
            Units = [],
            Cable = Copper,
            Assumed = [],
            Doubts = [],
        });

    public static Wiring? Read(string wiring) => wiring.Length == 0 ? null : WiringText.TryParse(wiring, out Wiring? read, out _) ? read : throw new ArgumentException(wiring, nameof(wiring));

    public static PartsList Of(Plan plan) => PartsStudy.Run(plan, PlannerOptions.Default, null, CancellationToken.None);

    public static PartsList Of(string wiring, Func<Plan, Plan>? change = null, Func<DcInput, DcInput>? input = null) => Of(Plan(wiring, change, input));

    public static Piece[] Of(this PartsList list, PieceKind kind) => [.. list.Pieces.Where(piece => piece.Kind == kind)];
}
