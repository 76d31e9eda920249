using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Presentation.Tests;

/// <summary>Results as the planner gives them, made by hand: label sums are exact, operating points plausible and rounded.</summary>
internal static class SampleResults
{
    private static readonly Conditions Sun = new(1000, 45);

    public static Wiring Shed { get; } = new Wiring.Single("shed-120");

    public static Wiring Dairy { get; } = new Wiring.Single("dairy-60");

    public static Wiring TwoByTwo { get; } = Wiring.InParallel([Row(Shed, 2), Row(Shed, 2)]);

    /// <summary>Two small panels side by side as one place of a string.</summary>
    public static Wiring Matched { get; } = Wiring.InSeries([Shed, Wiring.InParallel([Dairy, Dairy])]);

    /// <summary>A text of the same panel n times in series.</summary>
    public static Wiring Row(Wiring part, int count) => Wiring.InSeries(Enumerable.Repeat(part, count));

    /// <summary>Four equal panels that break nothing: 2 × 22.9 V, 2 × 6.72 A.</summary>
    public static PlanResult Go { get; } = new()
    {
        Plan = SampleGear.Plan([SampleGear.StoreA], (SampleGear.Shed120, 4)),
        Designs =
        [
            Design(1, ["earns most"], 360.2, Assignment("store-a", TwoByTwo, 45.8, 50 - 0.04, 13.44, Point(36.02, 10, 360.2, LimitedBy.Current, 431.6), GoFindings)) with
            {
                Losses =
                [
                    new("label", 480), new("heat", 39.9), new("mismatch", 0.2), new("cable", 8.3), new("current limit", 71.4), new("into the unit", 360.2),
                ],
            },
            Design(2, ["simplest", "fewest panels"], 216.4, Assignment("store-a", Row(Shed, 2), 45.8, 49.96, 6.72, Point(34.3, 6.31, 216.4, LimitedBy.None, 216.4), GoFindings)) with
            {
                UnusedPanels = [("shed-120", 2)],
            },
            Design(3, [], 171.3, Assignment("store-a", Wiring.InParallel(Enumerable.Repeat(Shed, 4)), 22.9, 24.98, 26.88, Point(17.13, 10, 171.3, LimitedBy.Current, 430.2), AskFindings)),
        ],
        Search = new SearchReport("strings", 12, 9, 360.2, 0, Proved: true),
        Assumed =
        [
            new("technology of shed-120", "crystalline silicon", "the plan does not say; it only changes how the curve bends, by under 1 % of the power"),
            new("length of each string's own cable", "1 m", "usual; doubling it costs under 1 W"),
        ],
        Cautions =
        [
            "A panel in daylight is live and cannot be switched off. Cover it, or work at dusk.",
            "Never unplug a lead under load: open the switch first. Direct current draws an arc that does not go out by itself.",
        ],
    };

    /// <summary>The same pile on an input whose label prints 10 A and no meaning: 13.44 A offered.</summary>
    public static PlanResult Ask { get; } = Go with
    {
        Plan = Go.Plan with { Inputs = [new PlannedInput(SampleGear.StoreA with { MaxCurrent = null, MaxShortCircuitCurrent = null, RatedCurrent = new Limit(10, Evidence.Nothing) }, null)] },
        Designs = [Go.Designs[0] with { Assignments = [Go.Designs[0].Assignments[0] with { Findings = [.. AskFindings] }] }, Go.Designs[1]],
        Search = Go.Search! with { Proved = false, GapPercent = 0.37, BoundW = 361.5, Considered = 3.2e9, Feasible = 1.1e9 },
    };

    /// <summary>Three in a row on 50 V: 3 × 22.9 V = 68.7 V.</summary>
    public static PlanResult Stop { get; } = Go with
    {
        Designs =
        [
            Design(1, [], 341, Assignment("store-a", Row(Shed, 3), 68.7, 74.9, 6.72, Point(54.1, 6.3, 341, LimitedBy.None, 341),
            [
                new("cold_voltage", "Open-circuit voltage at the coldest", Level.Stop, 74.9, 50, "V", "3 × 22.9 V × (1 + 0.29 %/K × 31.2 K) = 74.9 V", "label coefficient", "Take a panel out of the string."),
            ])),
        ],
        Search = null,
    };

    /// <summary>Two inputs, one of them with small panels side by side in its string, and a label in doubt.</summary>
    public static PlanResult TwoInputs { get; } = Go with
    {
        Plan = SampleGear.Plan([SampleGear.StoreA, SampleGear.StoreB], (SampleGear.Shed120, 3), (SampleGear.Dairy60, 3)) with
        {
            Doubts = [new LabelDoubt("dairy-60", "vmp", "18.4 V × 3.26 A is 60.0 W, but Vmp is 82 % of Voc, more than this technology reaches.", Refused: false)],
        },
        Designs =
        [
            Design(1, ["earns most"], 268, Assignment("store-a", Matched, 45.3, 49.4, 6.72, Point(34.1, 6.3, 214.8, LimitedBy.None, 214.8), GoFindings),
                Assignment("store-b", Dairy, 22.4, 24.4, 3.55, Point(16.5, 3.22, 53.2, LimitedBy.None, 53.2) with { FirstHillPowerW = 41 }, GoFindings[..1])) with
            {
                UnusedPanels = [("shed-120", 2), ("dairy-60", 0)],
                EnergyKWh = 214.6,
            },
            Design(2, ["most voltage margin"], 107, Assignment("store-a", null, 0, 0, 0, Point(0, 0, 0, LimitedBy.Off, 0), []),
                Assignment("store-b", Shed, 22.9, 24.9, 6.72, Point(17.1, 6.3, 100, LimitedBy.Power, 107), GoFindings[..1])) with
            {
                UnusedPanels = [("shed-120", 2), ("dairy-60", 3)],
                EnergyKWh = 98.1,
            },
        ],
    };

    private static Finding[] GoFindings =>
    [
        new("cold_voltage", "Open-circuit voltage at the coldest", Level.Go, 49.96, 50, "V", "2 × 22.9 V × (1 + 0.29 %/K × 31.3 K) = 49.96 V", "label coefficient; IEC 62548"),
        new("short_circuit_current", "Short-circuit current offered, by label", Level.Go, 13.44, 14, "A", "6.72 A + 6.72 A = 13.44 A; in strong sun × 1.25 = 16.8 A", "maker's letter", "In strong sun it can pass the limit for minutes; the letter speaks of standard conditions."),
        new("start_voltage", "Lowest voltage when hot", Level.Go, 31.2, 12, "V", "2 × 15.6 V = 31.2 V", "manual") { MarginPercent = 160 },
        new("draw_current", "Current the array could give", Level.Go, 12.7, 10, "A", "6.35 A + 6.35 A = 12.7 A", "manual", "The input takes 10 A and leaves the rest; nothing is harmed."),
    ];

    private static Finding[] AskFindings =>
    [
        GoFindings[0],
        new("short_circuit_current", "Short-circuit current offered, by label", Level.Ask, 13.44, 10, "A", "6.72 A + 6.72 A = 13.44 A", "label of the input", "The label prints 10 A without saying of what. `arraywright ask` writes the question to its maker."),
        new("back_feed", "Current back into a shorted string", Level.Go, 6.72, 15, "A", "1 other string × 6.72 A = 6.72 A", "IEC 62548"),
        new("power_limit", "Label power", Level.Ask, 480, null, "W", "4 × 120 W = 480 W", "label of the input"),
    ];

    private static OperatingPoint Point(double volts, double amps, double watts, LimitedBy by, double free) => new(volts, amps, watts, by, free, watts);

    private static Design Design(int rank, string[] chosenFor, double watts, params Assignment[] assignments) => new()
    {
        Rank = rank,
        ChosenFor = [.. chosenFor],
        Assignments = [.. assignments],
        ObjectiveW = watts,
        EnergyKWh = null,
        PeakPowerW = watts,
        UnusedPanels = [],
        Losses = [],
    };

    private static Assignment Assignment(string input, Wiring? wiring, double vocV, double coldV, double iscA, OperatingPoint point, Finding[] findings) => new()
    {
        Input = input,
        Wiring = wiring,
        VocStcV = vocV,
        VocColdV = coldV,
        IscStcA = iscA,
        IscDesignA = iscA * 1.25,
        Conditions = Sun,
        Operating = point,
        Findings = [.. findings],
    };
}
