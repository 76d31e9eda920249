using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Energy;

/// <summary>One input's array through changing conditions: its circuit is built once and updated.</summary>
internal sealed class MovingArray
{
    /// <summary>Below so many W/m² on every panel a step counts as dark: no input starts in it.</summary>
    private const double DarkWPerM2 = 1;

    private readonly PlanPhysics _physics;
    private readonly InputWindow _window;
    private readonly Circuit _circuit;
    private readonly int[] _stocks;
    private readonly double[] _counts;
    private readonly int _stride;
    private readonly DiodeParameters[] _groups;
    private readonly PanelTop[] _coldTops;
    private readonly PanelTop[] _warmTops;
    private readonly Circuit?[] _shaded;
    private double _topShare;

    public MovingArray(PlanPhysics physics, Wiring wiring, DcInput input)
    {
        _physics = physics;
        _window = PlanPhysics.Window(input);
        ImmutableArray<PanelStock> stocks = physics.Plan.Panels;
        _counts = [.. stocks.Select(stock => (double)wiring.Panels.Count(name => name == stock.Panel.Name))];
        _stocks = [.. Enumerable.Range(0, stocks.Length).Where(stock => _counts[stock] > 0)];
        _stride = stocks.Max(stock => physics.Model(stock.Panel.Name).Groups);
        _groups = new DiodeParameters[stocks.Length * _stride];
        _coldTops = new PanelTop[stocks.Length];
        _warmTops = new PanelTop[stocks.Length];
        _shaded = new Circuit?[stocks.Length];
        PanelAtWork OfKind(int stock) => physics.Shaded(stocks[stock].Panel.Name, Conditions.Standard) with { Kind = stock };
        _circuit = new Circuit(CircuitTree.Of(wiring, name => OfKind(IndexOf(stocks, name)), physics.Wires));
        foreach (int stock in _stocks.Where(stock => !stocks[stock].Shade.GroupFractions.IsEmpty))
        {
            _shaded[stock] = new Circuit(CircuitTree.Of(new Wiring.Single(stocks[stock].Panel.Name), _ => OfKind(stock), WireResistances.None));
        }
    }

    /// <summary>What the last step's circuit gives at its maximum.</summary>
    public CurvePoint Top { get; private set; }

    /// <summary>The first kind of panel in the array, by place in the plan.</summary>
    public int FirstStock => _stocks[0];

    /// <summary>Whether a limit would hold the input if the last step were brighter by a factor: amps and watts go with the sun, near enough to decide whether to look.</summary>
    public bool WouldBeHeld(double brighter) => Top.CurrentA * brighter > _window.MaxA || Top.PowerW * brighter > _window.MaxW;

    /// <summary>The power level after each stage up to the voltage window, W, under the conditions of one step.</summary>
    /// <param name="suns">One entry a kind of panel, in plan order.</param>
    /// <param name="step">The step.</param>
    /// <param name="brightness">Factor on the irradiance: 1 for the mean of the step.</param>
    /// <param name="levelsW">Receives one entry a stage.</param>
    /// <returns>What holds the input.</returns>
    public LimitedBy Levels(ImmutableArray<StockSun> suns, int step, double brightness, Span<double> levelsW)
    {
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

        foreach (int stock in _stocks)
        {
            AddPanel(stock, suns[stock].UsefulWPerM2[step] * brightness, suns[stock].CellC[step], suns[stock].ShadedFraction[step], levelsW);
        }

        _circuit.Update(_groups, _stride);
        Top = _circuit.MaximumPowerNear(_topShare * _circuit.OpenCircuitV);
        _topShare = Top.VoltageV / Math.Max(_circuit.OpenCircuitV, 1e-9);
        levelsW[(int)Stage.Cable] = Top.PowerW;
        levelsW[(int)Stage.Mismatch] = Top.PowerW + _circuit.WireLossW(Top.VoltageV);
        return Limited(levelsW);
    }

    private void AddPanel(int stock, double usefulWPerM2, double cellC, double shadedFraction, Span<double> levelsW)
    {
        PanelStock kind = _physics.Plan.Panels[stock];
        PanelModel model = _physics.Model(kind.Panel.Name);
        DiodeParameters open = model.At(new Conditions(usefulWPerM2, cellC));
        double count = _counts[stock];
        double hotW = _warmTops[stock].PowerW(open);
        levelsW[(int)Stage.WeakSun] += count * _coldTops[stock].PowerW(model.At(new Conditions(usefulWPerM2, 25)));
        levelsW[(int)Stage.Heat] += count * hotW;

        Span<DiodeParameters> groups = _groups.AsSpan(stock * _stride, _stride);
        Conditions seen = new(usefulWPerM2 * (1 - shadedFraction), cellC);
        model.FillGroups(seen, kind.Shade, groups);
        levelsW[(int)Stage.Shade] += count * (_shaded[stock] is { } alone
            ? AloneW(alone)
            : shadedFraction + kind.Shade.Fraction > 0 ? _warmTops[stock].PowerW(model.At(seen with { IrradianceWPerM2 = seen.IrradianceWPerM2 * (1 - kind.Shade.Fraction) })) : hotW);
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

        double currentW = Top.CurrentA <= _window.MaxA ? freeW : _circuit.PowerTakenW(InputWindow.Open with { MaxA = _window.MaxA });
        double powerW = Math.Min(currentW, _window.MaxW);
        double takenW = inWindow ? powerW : _circuit.PowerTakenW(_window);
        levelsW[(int)Stage.CurrentLimit] = currentW;
        levelsW[(int)Stage.PowerLimit] = powerW;
        levelsW[(int)Stage.VoltageWindow] = takenW;
        return takenW <= 0 ? LimitedBy.Off
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
