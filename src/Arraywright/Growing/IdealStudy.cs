using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Growing;

/// <summary>Finds the windows of an ideal label by asking the rules about a usual panel and scaling it: every figure of a panel's curve is in proportion to its volts or its amps.</summary>
internal sealed class IdealStudy
{
    /// <summary>Panels with more volts open than this are rare.</summary>
    private const double HighestPanelV = 120;

    /// <summary>Panels with fewer volts open than this are rare.</summary>
    private const double LowestPanelV = 10;

    /// <summary>An input that gets this share of what it could counts as full.</summary>
    private const double FullShare = 0.98;

    private const int MostInString = 4;
    private const int MostStrings = 3;

    /// <summary>Share of the open-circuit voltage at maximum power, and of the short-circuit current; usual for crystalline silicon (common practice, no source).</summary>
    private const double VoltageShare = 0.825;

    private const double CurrentShare = 0.945;
    private const double ProbeV = 24;
    private const double ProbeA = 8;

    private readonly DcInput _input;
    private readonly double _mostPowerW;
    private readonly double _coldFactor;
    private readonly double _startFactor;
    private readonly double _lowFactor;
    private readonly double _highFactor;
    private readonly double _mildFactor;
    private readonly double _mildPowerFactor;

    private IdealStudy(Plan plan, DcInput input)
    {
        _input = input;
        _mostPowerW = Math.Min(
            input.MaxPower?.Figure ?? double.PositiveInfinity,
            plan.Units.FirstOrDefault(unit => unit.Name == input.Unit)?.MaxPower?.Figure ?? double.PositiveInfinity);
        Panel probe = Probe();
        PlanPhysics physics = new(plan with { Panels = [new PanelStock(probe, 1, Shade.None, null)] });
        Wiring single = new Wiring.Single(probe.Name);
        ArrayPhysics rules = physics.ForRules(single, input);
        CellExtremes extremes = physics.Extremes;
        double coldestC = Math.Min(extremes.ColdestCellC.Value, extremes.ClimateColdestC ?? double.PositiveInfinity);
        ColdPanelVolts cold = ColdVoltage.PerPanel(probe, coldestC, rules);
        _coldFactor = Math.Max(cold.CodeV, cold.ModelV) / ProbeV;
        _startFactor = rules.OpenCircuitV(probe.Name, extremes.HotDim) / ProbeV;
        double BestV(Conditions conditions) => rules.MaximumPowerPoint(single, conditions).VoltageV / probe.MaximumPowerV.Value;
        double[] extremesV = [BestV(extremes.HotBright), BestV(CellExtremes.Dim), BestV(extremes.ColdBright)];
        _lowFactor = extremesV.Min();
        _highFactor = extremesV.Max();
        Conditions mild = physics.Seen(StatedConditions.None)[0];
        _mildFactor = BestV(mild);
        _mildPowerFactor = rules.MaximumPowerPoint(single, mild).PowerW / probe.PowerW.Value;
    }

    /// <summary>What the ideal label is made of.</summary>
    public static Assumption Assumed { get; } = new(
        "the ideal panel",
        "crystalline silicon, vmp 82.5 % of voc, imp 94.5 % of isc, tolerance 3 %, usual temperature coefficients",
        "As most labels are. A label with other coefficients moves the volts by 1 or 2 %: put it among the candidates and the rules judge it as it is.");

    /// <summary>Every input of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="all">The same with the candidates among its panels.</param>
    public static ImmutableArray<IdealPanel> Of(Plan plan, Plan all)
    {
        KindFitting fitting = new(all);
        return [.. plan.Inputs.Select(planned => new IdealStudy(plan, planned.Input).Study(all, fitting))];
    }

    private IdealPanel Study(Plan all, KindFitting fitting)
    {
        int least = Math.Max(1, (int)Math.Ceiling(MostOpenV(1) / HighestPanelV));
        int[] inString = [.. Enumerable.Range(least, MostInString).Where(n => n == least || MostOpenV(n) >= LowestPanelV)];
        Reach best = inString.Select(ReachOf).MaxBy(reach => reach.PowerW)!;
        double? reachW = double.IsFinite(best.PowerW) ? best.PowerW : null;
        double? fullW = double.IsFinite(_mostPowerW) ? _mostPowerW : reachW;
        return new IdealPanel
        {
            Input = _input.Name,
            FullW = fullW,
            ReachW = reachW,
            HeldBy = best.PowerW < (fullW ?? double.PositiveInfinity) ? best.HeldBy : null,
            Labels = [.. inString.SelectMany(n => Enumerable.Range(1, MostStrings).Select(m => Label(n, m, reachW)))],
            Kinds = [.. all.Panels.Select(stock => fitting.Of(stock.Panel, _input, fullW)).OrderByDescending(fit => fit.TakenW)],
        };
    }

    private double MostOpenV(int inString) => _input.MaxVoltageV / inString / _coldFactor;

    private double MostBestV(int inString) =>
        Math.Min((_input.TrackingMaxV ?? _input.MaxVoltageV) / inString / _highFactor, VoltageShare * MostOpenV(inString));

    /// <summary>The most watts into the input with so many in a string, and what holds it there.</summary>
    private sealed record Reach(double PowerW, string HeldBy);

    private Reach ReachOf(int inString)
    {
        double arrayV = inString * MostBestV(inString);
        double offeredA = InputAllowance.ShortCircuitA(_input);
        Reach[] reaches =
        [
            new(_mostPowerW, "its most watts"),
            new((_input.DrawLimitA ?? double.PositiveInfinity) * arrayV * _mildFactor, "it draws its most amps first"),
            new(offeredA > 0 ? CurrentShare * offeredA * arrayV * _mildPowerFactor : double.PositiveInfinity, "the panels would offer more short-circuit amps than is allowed"),
            new(InputAllowance.LabelPowerW(_input) * _mildPowerFactor, "its figure in watts has to be taken for the most label watts"),
        ];
        return reaches.MinBy(reach => reach.PowerW)!;
    }

    private IdealLabel Label(int inString, int strings, double? reachW)
    {
        double offeredA = InputAllowance.ShortCircuitA(_input);
        double labelW = InputAllowance.LabelPowerW(_input);
        double? targetW = FullShare * reachW;
        double leastBestV = Math.Max(
            (_input.TrackingMinV ?? 0) / _lowFactor,
            Math.Max(targetW / _input.DrawLimitA / _mildFactor ?? 0, offeredA > 0 ? targetW / (CurrentShare * offeredA * _mildPowerFactor) ?? 0 : 0)) / inString;
        return new IdealLabel
        {
            InString = inString,
            Strings = strings,
            LeastOpenCircuitV = (_input.StartVoltageV ?? 0) / inString / _startFactor,
            MostOpenCircuitV = MostOpenV(inString),
            LeastMaximumPowerV = leastBestV,
            MostMaximumPowerV = MostBestV(inString),
            MostShortCircuitA = offeredA > 0 ? offeredA / strings : null,
            LeastPowerW = targetW / _mildPowerFactor / inString / strings,
            MostPowerW = double.IsFinite(labelW) ? labelW / inString / strings : null,
        };
    }

    private static Panel Probe() => PanelReader.Read(new PanelLabel
    {
        Name = "ideal",
        OpenCircuitV = ProbeV,
        ShortCircuitA = ProbeA,
        MaximumPowerV = VoltageShare * ProbeV,
        MaximumPowerA = CurrentShare * ProbeA,
        PowerW = VoltageShare * ProbeV * CurrentShare * ProbeA,
        OpenCircuitPerK = TypicalFigures.Of(Technology.CrystallineSilicon).OpenCircuitPerK.Typical,
        ToleranceFraction = 0.03,
    }).Panel ?? throw new InvalidOperationException("The usual label is read without a fault.");
}
