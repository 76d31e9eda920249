using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Growing;

/// <summary>Finds the windows of an ideal label by asking the rules about a usual panel and scaling it: every figure of a panel's curve is in proportion to its volts or its amps.</summary>
internal sealed class IdealStudy
{
    /// <summary>Panels with more volts open than this are rare.</summary>
    private const double HighestPanelV = 120;

    /// <summary>Panels with fewer volts open than this are rare.</summary>
    private const double LowestPanelV = 10;

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
        double? fullW = FullW(inString);
        return new IdealPanel
        {
            Input = _input.Name,
            FullW = fullW,
            Labels = [.. inString.SelectMany(n => Enumerable.Range(1, MostStrings).Select(m => Label(n, m, fullW)))],
            Kinds = [.. all.Panels.Select(stock => fitting.Of(stock.Panel, _input, fullW)).OrderByDescending(fit => fit.TakenW)],
        };
    }

    private double MostOpenV(int inString) => _input.MaxVoltageV / inString / _coldFactor;

    private double MostBestV(int inString) =>
        Math.Min((_input.TrackingMaxV ?? _input.MaxVoltageV) / inString / _highFactor, VoltageShare * MostOpenV(inString));

    /// <summary>The stated power; else the most volts of any string times the most amps; null where neither is stated.</summary>
    private double? FullW(int[] inString) =>
        double.IsFinite(_mostPowerW) ? _mostPowerW
        : _input.DrawLimitA is { } drawnA ? inString.Max(n => n * MostBestV(n)) * _mildFactor * drawnA
        : null;

    private IdealLabel Label(int inString, int strings, double? fullW)
    {
        double mostBestV = MostBestV(inString);
        double leastBestV = (_input.TrackingMinV ?? 0) / inString / _lowFactor;
        if (_input.DrawLimitA is { } drawnA && fullW is { } wantedW)
        {
            leastBestV = Math.Max(leastBestV, Math.Min(wantedW / drawnA / inString / _mildFactor, mostBestV));
        }

        double offeredA = InputAllowance.ShortCircuitA(_input);
        double labelW = InputAllowance.LabelPowerW(_input);
        double? leastW = fullW / _mildPowerFactor / inString / strings;
        return new IdealLabel
        {
            InString = inString,
            Strings = strings,
            LeastOpenCircuitV = (_input.StartVoltageV ?? 0) / inString / _startFactor,
            MostOpenCircuitV = MostOpenV(inString),
            LeastMaximumPowerV = leastBestV,
            MostMaximumPowerV = mostBestV,
            MostShortCircuitA = offeredA > 0 ? offeredA / strings : null,
            LeastPowerW = leastW,
            MostPowerW = double.IsFinite(labelW) ? labelW / inString / strings : null,
            Unless = Unless(inString, strings, leastBestV, mostBestV, offeredA, labelW, fullW, leastW),
        };
    }

    private string? Unless(int inString, int strings, double leastBestV, double mostBestV, double offeredA, double labelW, double? fullW, double? leastW)
    {
        if (leastBestV > mostBestV)
        {
            return "its volts cannot stay inside the window both hot and cold";
        }

        if (fullW is not { } wantedW || leastW is not { } panelW)
        {
            return null;
        }

        double arrayW = inString * strings * panelW;
        if (_input.DrawLimitA is { } drawnA && drawnA * inString * mostBestV * _mildFactor < wantedW * (1 - 1e-9))
        {
            return "the most amps come before the most watts";
        }

        return offeredA > 0 && CurrentShare * offeredA * inString * mostBestV < arrayW ? "the short-circuit limit comes before the most watts"
            : labelW < arrayW ? "more label watts than the input's figure need asking"
            : null;
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
