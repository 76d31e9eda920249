using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Testing;

/// <summary>A wiring on an input with labels of round figures and a circuit so simple that its figures can be worked out by hand.</summary>
internal static class LimitsScene
{
    /// <summary>A 120 W panel of the hill farm: 22.9 V, 6.72 A, 18.9 V, 6.35 A, -0.29 %/K, 15 A fuse, 600 V, and no tolerance at all.</summary>
    public static Panel Shed { get; } = new()
    {
        Name = "shed-120",
        PowerW = Sourced.Given(120.0),
        OpenCircuitV = 22.9,
        ShortCircuitA = 6.72,
        MaximumPowerV = Sourced.Given(18.9),
        MaximumPowerA = Sourced.Given(6.35),
        OpenCircuitPerK = Sourced.Given(-0.0029),
        ShortCircuitPerK = Sourced.Given(0.0005),
        Cells = Sourced.Given(36),
        BypassDiodes = Sourced.Given(2),
        MaxSeriesFuseA = 15,
        MaxSystemVoltageV = 600,
        ToleranceFraction = Sourced.Given(0.0),
        Technology = Sourced.Given(Technology.MonoPerc),
    };

    /// <summary>The same panel with a label that gives no voltage coefficient.</summary>
    public static Panel WithoutCoefficient(this Panel panel) => panel with { OpenCircuitPerK = Sourced.Assumed(-0.0028, "typical") };

    /// <summary>An input of which only the highest voltage is known.</summary>
    public static DcInput Input(double maxVoltageV) => new() { Name = "store-a", MaxVoltageV = maxVoltageV };

    /// <summary>A limit with a word behind it.</summary>
    public static Limit Limit(double figure, EvidenceKind kind = EvidenceKind.None, double exceed = 0) => new(figure, new Evidence(kind, exceed, null));

    /// <summary>One panel of a kind.</summary>
    public static Wiring One(string name) => new Wiring.Single(name);

    /// <summary>Parts in series.</summary>
    public static Wiring Row(params Wiring[] parts) => Wiring.InSeries(parts);

    /// <summary>So many panels of a kind in series.</summary>
    public static Wiring Row(int count, string name) => Wiring.InSeries(Enumerable.Repeat(One(name), count));

    /// <summary>Parts side by side.</summary>
    public static Wiring Side(params Wiring[] parts) => Wiring.InParallel(parts);

    /// <summary>The context of a wiring of these kinds at -14 °C, 35 °C air and a 70 °C cell, with the plain circuit.</summary>
    public static RuleContext On(this Wiring wiring, DcInput input, params Panel[] kinds)
    {
        Dictionary<string, PanelStock> stock = (kinds.Length == 0 ? [Shed] : kinds).ToDictionary(kind => kind.Name, kind => new PanelStock(kind, 20, Shade.None, null));
        return new RuleContext
        {
            Wiring = wiring,
            Input = input,
            Unit = null,
            Stock = stock,
            Temperatures = new CellExtremes(Sourced.Given(-14.0), 35, 70),
            Physics = new ArrayPhysics(
                (name, _) => stock[name].Panel.OpenCircuitV,
                (part, _) => Best(part, stock),
                _ => Free(Best(wiring, stock).PowerW)),
        };
    }

    /// <summary>The same at another coldest.</summary>
    public static RuleContext Coldest(this RuleContext context, double coldestC, double? climateC = null) =>
        context with { Temperatures = context.Temperatures with { ColdestCellC = Sourced.Given(coldestC), ClimateColdestC = climateC } };

    /// <summary>The same with another circuit.</summary>
    public static RuleContext Circuit(this RuleContext context, Func<ArrayPhysics, ArrayPhysics> change) => context with { Physics = change(context.Physics) };

    /// <summary>An operating point that nothing limits.</summary>
    public static OperatingPoint Free(double powerW) => new(0, 0, powerW, LimitedBy.None, powerW, powerW);

    /// <summary>An operating point held by a limit.</summary>
    public static OperatingPoint Held(double powerW, double wouldBeW, LimitedBy by) => new(0, 0, powerW, by, wouldBeW, powerW);

    /// <summary>The finding of that name; a test of a rule that does not speak fails here.</summary>
    public static Finding Says(this RuleContext context, string rule) => Assert.Single(DesignRules.Judge(context), finding => finding.Rule == rule);

    /// <summary>The findings of that name.</summary>
    public static IEnumerable<Finding> All(this RuleContext context, string rule) => DesignRules.Judge(context).Where(finding => finding.Rule == rule);

    // Not a circuit: the lower voltage of parts side by side, the lower current of parts in series. Exact where parts are equal.
    private static (double VoltageV, double CurrentA, double PowerW) Best(Wiring wiring, Dictionary<string, PanelStock> stock)
    {
        (double V, double A) Point(Wiring part) => part switch
        {
            Wiring.Series series => (series.Parts.Sum(p => Point(p).V), series.Parts.Min(p => Point(p).A)),
            Wiring.Parallel parallel => (parallel.Parts.Min(p => Point(p).V), parallel.Parts.Sum(p => Point(p).A)),
            _ => (stock[part.Panels.Single()].Panel.MaximumPowerV.Value, stock[part.Panels.Single()].Panel.MaximumPowerA.Value),
        };
        (double v, double a) = Point(wiring);
        return (v, a, v * a);
    }
}
