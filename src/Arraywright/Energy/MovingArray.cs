using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Energy;

/// <summary>One input's array through changing conditions: its circuit is built once and updated.</summary>
internal sealed class MovingArray
{
    /// <summary>Below so many W/m² on every panel a step counts as dark: no input starts in it.</summary>
    internal const double DarkWPerM2 = 1;

    private readonly PlanPhysics _physics;
    private readonly bool _hasLadder;
    private readonly PanelModel[] _models;
    private readonly InputWindow _window;
    private readonly Circuit[] _circuits;
    private Circuit _circuit;
    private readonly int[] _stocks;
    private readonly double[] _counts;
    private readonly int _stride;
    private readonly DiodeParameters[] _groups;
    private readonly bool[] _isEvenlyShaded;
    private readonly PanelTops _coldTops;
    private readonly PanelTops _warmTops;
    private readonly PanelTops _shadedTops;
    private readonly Circuit?[] _shaded;

    /// <param name="physics">The panels and circuits of the plan.</param>
    /// <param name="wiring">The wiring.</param>
    /// <param name="input">The input it is on.</param>
    /// <param name="hasLadder">Whether the stages before the cable are wanted: what the panels would give by themselves.</param>
    public MovingArray(PlanPhysics physics, Wiring wiring, DcInput input, bool hasLadder)
    {
        _hasLadder = hasLadder;
        _physics = physics;
        _models = [.. physics.Plan.Panels.Select(stock => physics.Model(stock.Panel.Name))];
        _window = PlanPhysics.Window(input);
        ImmutableArray<PanelStock> stocks = physics.Plan.Panels;
        _counts = [.. stocks.Select(stock => (double)wiring.Panels.Count(name => name == stock.Panel.Name))];
        _stocks = [.. Enumerable.Range(0, stocks.Length).Where(stock => _counts[stock] > 0)];
        _stride = stocks.Max(stock => physics.Model(stock.Panel.Name).Groups);
        _groups = new DiodeParameters[stocks.Length * _stride];
        _isEvenlyShaded = new bool[stocks.Length];
        _coldTops = new PanelTops(stocks.Length);
        _warmTops = new PanelTops(stocks.Length);
        _shadedTops = new PanelTops(stocks.Length);
        _shaded = new Circuit?[stocks.Length];
        PanelAtWork OfKind(int stock) => physics.Shaded(stocks[stock].Panel.Name, Conditions.Standard) with { Kind = stock };
        CircuitTree tree = CircuitTree.Of(wiring, name => OfKind(IndexOf(stocks, name)), physics.Wires);
        _circuits = [new Circuit(tree), new Circuit(tree), new Circuit(tree)];
        _circuit = _circuits[0];
        foreach (int stock in _stocks.Where(stock => !stocks[stock].Shade.GroupFractions.IsEmpty))
        {
            _shaded[stock] = new Circuit(CircuitTree.Of(new Wiring.Single(stocks[stock].Panel.Name), _ => OfKind(stock), WireResistances.None));
        }
    }

    /// <summary>What the last step's circuit gives at its maximum.</summary>
    public CurvePoint Top { get; private set; }

    /// <summary>The first kind of panel in the array, by place in the plan.</summary>
    public int FirstStock => _stocks[0];

    /// <summary>Newton steps on its circuits so far.</summary>
    public long NewtonSteps => _circuits.Sum(circuit => circuit.NewtonSteps) + _shaded.Sum(alone => alone?.NewtonSteps ?? 0);

    /// <summary>Whether a limit would hold the input if the last step were brighter by a factor: amps and watts go with the sun, near enough to decide whether to look.</summary>
    public bool WouldBeHeld(double brighter) => Top.CurrentA * brighter > _window.MaxA || Top.PowerW * brighter > _window.MaxW;

    /// <summary>The power level after each stage up to the voltage window, W, under the conditions of one step.</summary>
    /// <param name="suns">One entry a kind of panel, in plan order.</param>
    /// <param name="step">The step.</param>
    /// <param name="part">Which part of the step: each is followed from step to step by a circuit of its own, so that little changes from one to the next.</param>
    /// <param name="brightness">Factor on the irradiance: 1 for the mean of the step.</param>
    /// <param name="levelsW">Receives one entry a stage.</param>
    /// <returns>What holds the input.</returns>
    public LimitedBy Levels(ImmutableArray<StockSun> suns, int step, StepPart part, double brightness, Span<double> levelsW)
    {
        _circuit = _circuits[(int)part];
        levelsW.Clear();
        double brightest = 0;
        foreach (int stock in _stocks)
        {
            StockSun sun = suns[stock];
            double usefulWPerM2 = sun.UsefulWPerM2[step] * brightness;
            brightest = Math.Max(brightest, usefulWPerM2);
            double labelW = _counts[stock] * _physics.Plan.Panels[stock].Panel.PowerW.Value / 1000;
            levelsW[(int)Stage.Label] += labelW * sun.PlaneWPerM2[step] * brightness;
            levelsW[(int)Stage.Incidence] += labelW * usefulWPerM2;
        }

        if (brightest < DarkWPerM2)
        {
            Top = default;
            return LimitedBy.Off;
        }

        SetPanels(suns, step, brightness);
        if (_hasLadder)
        {
            AddPanelsAlone(levelsW);
        }

        _circuit.Update(_groups, _stride);
        Top = _circuit.MaximumPowerAgain();
        levelsW[(int)Stage.Cable] = Top.PowerW;
        levelsW[(int)Stage.Mismatch] = Top.PowerW + (_hasLadder ? _circuit.WireLossW(Top.VoltageV) : 0);
        return Limited(levelsW);
    }

    /// <summary>What the panels would give each by itself: in weak sun at 25 °C, as warm as they are, and in their shade.</summary>
    private void AddPanelsAlone(Span<double> levelsW)
    {
        _coldTops.Solve();
        _warmTops.Solve();
        _shadedTops.Solve();
        foreach (int stock in _stocks)
        {
            levelsW[(int)Stage.WeakSun] += _counts[stock] * _coldTops.PowerW(stock);
            levelsW[(int)Stage.Heat] += _counts[stock] * _warmTops.PowerW(stock);
            levelsW[(int)Stage.Shade] += _counts[stock] * (_shaded[stock] is { } alone ? AloneW(alone) : (_isEvenlyShaded[stock] ? _shadedTops : _warmTops).PowerW(stock));
        }
    }

    /// <summary>Gives every panel, and every group of its cells, the conditions of a step.</summary>
    private void SetPanels(ImmutableArray<StockSun> suns, int step, double brightness)
    {
        foreach (int stock in _stocks)
        {
            PanelStock kind = _physics.Plan.Panels[stock];
            PanelModel model = _models[stock];
            StockSun sun = suns[stock];
            Conditions open = new(sun.UsefulWPerM2[step] * brightness, sun.CellC[step]);
            DiodeParameters whole = model.At(open);
            if (_hasLadder)
            {
                _coldTops.Set(stock, model.At(open with { CellC = Conditions.Standard.CellC }));
                _warmTops.Set(stock, whole);
            }

            Span<DiodeParameters> groups = _groups.AsSpan(stock * _stride, _stride);
            double litFraction = 1 - sun.ShadedFraction[step];
            double evenFraction = litFraction * (1 - kind.Shade.Fraction);
            _isEvenlyShaded[stock] = evenFraction < 1;
            if (evenFraction == 1 && kind.Shade.GroupFractions.IsEmpty)
            {
                groups[..model.Groups].Fill(whole.OneOf(model.Groups));
                continue;
            }

            _shadedTops.Set(stock, model.At(open with { IrradianceWPerM2 = open.IrradianceWPerM2 * evenFraction }));
            model.FillGroups(open with { IrradianceWPerM2 = open.IrradianceWPerM2 * litFraction }, kind.Shade, groups);
        }
    }

    private double AloneW(Circuit alone)
    {
        alone.Update(_groups, _stride);
        return alone.MaximumPower().PowerW;
    }

    /// <summary>One limit after another, so that each is charged with what it takes off what the ones before have left.</summary>
    private LimitedBy Limited(Span<double> levelsW)
    {
        double freeW = Top.PowerW;
        bool inWindow = Top.VoltageV >= _window.MinV && Top.VoltageV <= _window.MaxV && _circuit.OpenCircuitV >= _window.StartV;
        if (inWindow && Top.CurrentA <= _window.MaxA && freeW <= _window.MaxW)
        {
            levelsW[(int)Stage.CurrentLimit] = levelsW[(int)Stage.PowerLimit] = levelsW[(int)Stage.VoltageWindow] = freeW;
            return LimitedBy.None;
        }

        double currentW = Top.CurrentA <= _window.MaxA ? freeW : _circuit.PowerUnderCurrentW(_window.MaxA);
        double powerW = Math.Min(currentW, _window.MaxW);
        bool mayRiseAbove = _circuit.OpenCircuitV > _window.MaxV;
        double takenW = inWindow && !mayRiseAbove ? powerW : _circuit.PowerTakenW(_window);
        levelsW[(int)Stage.CurrentLimit] = currentW;
        levelsW[(int)Stage.PowerLimit] = powerW;
        levelsW[(int)Stage.VoltageWindow] = takenW;
        return takenW <= 0 ? (_circuit.Reaches(_window) ? LimitedBy.AboveWindow : LimitedBy.Off)
            : takenW < powerW ? LimitedBy.Voltage
            : powerW < currentW ? LimitedBy.Power
            : currentW < freeW ? LimitedBy.Current
            : LimitedBy.None;
    }

    private static int IndexOf(ImmutableArray<PanelStock> stocks, string name)
    {
        for (int i = 0; i < stocks.Length; i++)
        {
            if (stocks[i].Panel.Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException($"No panel of the plan is named \"{name}\".", nameof(name));
    }
}
