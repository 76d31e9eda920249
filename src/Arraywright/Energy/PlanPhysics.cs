using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Sky;

namespace Arraywright.Energy;

/// <summary>The panels of a plan as fitted models, and the circuits that can be made of them.</summary>
internal sealed class PlanPhysics
{
    private readonly Dictionary<string, int> _index;
    private readonly ImmutableArray<PanelModel> _models;

    /// <param name="plan">The plan.</param>
    /// <param name="memory">Suns that other plans may share; null for none.</param>
    /// <param name="asked">Conditions a person asks about; cells colder than the coldest credible are what the limits are held against.</param>
    public PlanPhysics(Plan plan, SunMemory? memory = null, StatedConditions? asked = null)
    {
        Plan = plan;
        Sun = memory?.Of(plan) ?? new SiteSun(plan);
        Stock = plan.Panels.ToDictionary(stock => stock.Panel.Name, StringComparer.Ordinal);
        _index = plan.Panels.Select((stock, index) => (stock.Panel.Name, index)).ToDictionary(pair => pair.Name, pair => pair.index, StringComparer.Ordinal);
        _models = [.. plan.Panels.Select(stock => PanelModel.FitTo(stock.Panel))];
        Wires = WireResistances.Of(plan.Cable);
        var credible = DesignTemperatures.For(plan);
        Temperatures = asked is null ? credible : credible.WithAsked(Seen(asked).Min(seen => seen.CellC));
    }

    public Plan Plan { get; }

    public IReadOnlyDictionary<string, PanelStock> Stock { get; }

    public WireResistances Wires { get; }

    public DesignTemperatures Temperatures { get; }

    /// <summary>Its weather and sun.</summary>
    public SiteSun Sun { get; }

    /// <summary>Voltages in that weather; null without it. Worked out when first asked for.</summary>
    public WeatherVolts? Weather => field ??= Sun.Highest is { } highest ? new WeatherVolts(this, highest) : null;

    /// <summary>Open-circuit voltage of one unshaded panel, V.</summary>
    public double OpenCircuitV(string panel, Conditions conditions) => DiodeCurve.OpenCircuitV(_models[_index[panel]].At(conditions));

    /// <summary>The extremes as the rules take them.</summary>
    public CellExtremes Extremes => new(
        Plan.Place?.ColdestC is null
            ? Sourced.Assumed(Temperatures.ColdestCellC, Temperatures.ColdWorking)
            : Sourced.Given(Temperatures.ColdestCellC),
        Temperatures.HottestAirC,
        Temperatures.HottestCellC,
        Temperatures.ClimateSuggestsColderC,
        Temperatures.ClimateCondition);

    /// <summary>How each fitted model misses its label, in plan order.</summary>
    public IEnumerable<(Panel Panel, PanelFit Fit)> Fits => _models.Select(model => (model.Panel, model.Fit));

    /// <summary>What the input lets happen, as the solver sees it.</summary>
    public static InputWindow Window(DcInput input) => new(
        input.TrackingMinV ?? 0,
        input.TrackingMaxV ?? input.MaxVoltageV,
        input.StartVoltageV ?? 0,
        input.DrawLimitA ?? double.PositiveInfinity,
        input.MaxPower?.Figure ?? double.PositiveInfinity);

    /// <summary>The conditions a person states, or strong sun on a mild day where nothing is stated, for each kind of panel.</summary>
    public ImmutableArray<Conditions> Seen(StatedConditions stated)
    {
        double irradianceWPerM2 = stated.IrradianceWPerM2 ?? StatedConditions.StrongSunWPerM2;
        return stated.CellC is { } cellC
            ? [.. Plan.Panels.Select(_ => new Conditions(irradianceWPerM2, cellC))]
            : new Ambient(irradianceWPerM2, stated.AirC ?? StatedConditions.MildAirC, stated.WindMPerS ?? CellTemperature.UsualWindMPerS).ByStock(Plan);
    }

    /// <summary>The fitted model of a kind of panel.</summary>
    public PanelModel Model(string panel) => _models[_index[panel]];

    /// <summary>What one kind of panel sees.</summary>
    public Conditions Of(string panel, ImmutableArray<Conditions> seen) => seen[_index[panel]];

    /// <summary>The panel as it works now, in its own shade.</summary>
    public PanelAtWork Shaded(string panel, Conditions conditions) => _models[_index[panel]].Under(conditions, Stock[panel].Shade);

    /// <summary>The panel as it would work without shade.</summary>
    public PanelAtWork Unshaded(string panel, Conditions conditions) => _models[_index[panel]].Under(conditions, Shade.None);

    /// <summary>The circuit tree of a wiring at its input.</summary>
    public CircuitTree Tree(Wiring wiring, ImmutableArray<Conditions> seen) =>
        CircuitTree.Of(wiring, name => Shaded(name, seen[_index[name]]), Wires);

    /// <summary>What the rules may ask of the circuit: unshaded, so that a limit never rests on shade; maximum power without copper, so that parts and whole compare.</summary>
    public ArrayPhysics ForRules(Wiring wiring, DcInput input) => new(
        OpenCircuitV,
        (part, conditions) =>
        {
            CurvePoint top = new Circuit(CircuitTree.Of(part, name => Unshaded(name, conditions), WireResistances.None)).MaximumPower();
            return (top.VoltageV, top.CurrentA, top.PowerW);
        },
        conditions => new Circuit(CircuitTree.Of(wiring, name => Unshaded(name, conditions), Wires)).TakenBy(Window(input)));
}
