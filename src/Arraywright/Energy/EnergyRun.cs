using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Gear;

namespace Arraywright.Energy;

/// <summary>A design through a span of weather: every step solved on the true circuit.</summary>
internal sealed class EnergyRun
{
    private static readonly int Stages = Enum.GetValues<Stage>().Length;

    private readonly Plan _plan;
    private readonly SunSeries _series;
    private readonly EnergyOptions _options;
    private readonly bool _isSpread;
    private readonly MovingArray?[] _arrays;
    private readonly Owner[] _owners;
    private readonly SpanSums[] _spans;
    private readonly double[] _inputLevelsW;
    private readonly double[] _partLevelsW;
    private readonly double[] _stepLevelsW;
    private readonly ImmutableArray<EnergyMoment>.Builder _moments = ImmutableArray.CreateBuilder<EnergyMoment>();
    private double _currentH;
    private double _powerH;
    private double _voltageH;
    private double _offH;
    private double _withinStepWh;

    private EnergyRun(PlanPhysics physics, ImmutableArray<Wiring?> wirings, SunSeries series, EnergyOptions options, bool hasLadder)
    {
        _plan = physics.Plan;
        _series = series;
        _options = options;
        _arrays = [.. wirings.Select((wiring, input) => wiring is null ? null : new MovingArray(physics, wiring, _plan.Inputs[input].Input, hasLadder))];
        _isSpread = options.SpreadWithinStep && series.AveragedOverH > WithinStep.ShortestH;
        _owners = Owner.Of(_plan);
        _spans = [.. series.SpanNames.Select(_ => new SpanSums(Stages))];
        _inputLevelsW = new double[Stages];
        _partLevelsW = new double[Stages];
        _stepLevelsW = new double[Stages];
    }

    /// <summary>Runs a design through a series.</summary>
    /// <param name="physics">The panels and circuits of the plan.</param>
    /// <param name="wirings">One entry an input; null for nothing.</param>
    /// <param name="series">The sun.</param>
    /// <param name="options">How.</param>
    public static EnergyResult Of(PlanPhysics physics, ImmutableArray<Wiring?> wirings, SunSeries series, EnergyOptions options)
    {
        EnergyRun run = new(physics, wirings, series, options, hasLadder: true);
        run.AllSteps();
        return run.Result();
    }

    /// <summary>Energy into the inputs alone, kWh: as <see cref="Of"/>, without what is only needed to say where the rest went.</summary>
    public static double DeliveredKWh(PlanPhysics physics, ImmutableArray<Wiring?> wirings, SunSeries series, EnergyOptions options)
    {
        EnergyRun run = new(physics, wirings, series, options, hasLadder: false);
        run.AllSteps();
        return run.Total().DeliveredKWh;
    }

    private void AllSteps()
    {
        for (int step = 0; step < _series.Count; step++)
        {
            Step(step);
        }
    }

    private void Step(int step)
    {
        Array.Clear(_stepLevelsW);
        LimitedBy heldBy = LimitedBy.None;
        foreach (Owner owner in _owners)
        {
            owner.OfferedW = 0;
            double takenW = 0;
            double convertedW = 0;
            foreach (int input in owner.Inputs)
            {
                if (_arrays[input] is not { } array)
                {
                    continue;
                }

                LimitedBy limited = InputLevels(array, step);
                Count(limited);
                heldBy = heldBy == LimitedBy.None ? limited : heldBy;
                for (int stage = 0; stage <= (int)Stage.VoltageWindow; stage++)
                {
                    _stepLevelsW[stage] += _inputLevelsW[stage];
                }

                double inW = _inputLevelsW[(int)Stage.VoltageWindow];
                DcInput gear = _plan.Inputs[input].Input;
                takenW += inW;
                convertedW += Math.Max(0, (inW * (gear.EfficiencyFraction ?? EnergyOptions.UsualEfficiency)) - (inW > 0 ? gear.SelfUseW : 0));
            }

            double sharedW = Math.Min(takenW, owner.MaxW);
            if (sharedW < takenW)
            {
                _stepLevelsW[(int)Stage.PowerLimit] -= takenW - sharedW;
                _stepLevelsW[(int)Stage.VoltageWindow] -= takenW - sharedW;
                convertedW *= sharedW / takenW;
                _powerH += _series.StepH;
                heldBy = LimitedBy.Power;
            }

            owner.OfferedW = convertedW;
        }

        Store(step, heldBy);
    }

    /// <summary>The levels of one input, the mean of the step's bright and clouded part where that makes a difference to a limit.</summary>
    private LimitedBy InputLevels(MovingArray array, int step)
    {
        LimitedBy limited = array.Levels(_series.Stocks, step, StepPart.Whole, 1, _inputLevelsW);
        StockSun sun = _series.Stocks[array.FirstStock];
        if (!_isSpread
            || WithinStep.Of(sun.UsefulWPerM2[step], sun.ClearWPerM2[step]) is not { } parts
            || !array.WouldBeHeld(parts.Bright))
        {
            return limited;
        }

        double meanW = _inputLevelsW[(int)Stage.VoltageWindow];
        array.Levels(_series.Stocks, step, StepPart.Clouded, parts.Clouded, _partLevelsW);
        LimitedBy held = array.Levels(_series.Stocks, step, StepPart.Bright, parts.Bright, _inputLevelsW);
        for (int stage = 0; stage < _inputLevelsW.Length; stage++)
        {
            _inputLevelsW[stage] = (parts.BrightShare * _inputLevelsW[stage]) + ((1 - parts.BrightShare) * _partLevelsW[stage]);
        }

        _withinStepWh += (meanW - _inputLevelsW[(int)Stage.VoltageWindow]) * _series.StepH;
        return held;
    }

    private void Count(LimitedBy limited)
    {
        _currentH += limited == LimitedBy.Current ? _series.StepH : 0;
        _powerH += limited == LimitedBy.Power ? _series.StepH : 0;
        _voltageH += limited is LimitedBy.Voltage or LimitedBy.AboveWindow ? _series.StepH : 0;
        _offH += limited == LimitedBy.Off && _inputLevelsW[(int)Stage.Cable] > 0 ? _series.StepH : 0; // by night nothing is held off
    }

    private void Store(int step, LimitedBy heldBy)
    {
        double loadW = 0;
        double servedW = 0;
        int hour = (int)Math.Ceiling(_series.ClockEndHour[step] - 1e-9) - 1;
        foreach (Owner owner in _owners)
        {
            (double roomW, double load, double served) = owner.Step(step, _series, Math.Clamp(hour, 0, 23));
            _stepLevelsW[(int)Stage.Conversion] += owner.OfferedW;
            _stepLevelsW[(int)Stage.BatteryFull] += roomW;
            loadW += load;
            servedW += served;
        }

        StockSun sun = _series.Stocks[0];
        _spans[_series.Span[step]].Add(_stepLevelsW, sun.PlaneWPerM2[step], loadW, servedW, _series.StepH);
        if (_options.KeepMoments)
        {
            _moments.Add(new EnergyMoment(
                _series.EndHour[step],
                sun.PlaneWPerM2[step],
                sun.CellC[step],
                _stepLevelsW[(int)Stage.Cable],
                _stepLevelsW[(int)Stage.VoltageWindow],
                heldBy,
                _owners.FirstOrDefault(owner => owner.State is not null)?.State!.StateOfCharge));
        }
    }

    private EnergyResult Result()
    {
        ImmutableArray<EnergySpan> spans = [.. _spans.Select((sums, span) => sums.Named(_series.SpanNames[span]))];
        EnergySpan total = Total();
        return new EnergyResult
        {
            Spans = spans,
            Total = total,
            Losses = EnergyLadder.Of(total),
            HoursLimited = new HoursLimited(_currentH, _powerH, _voltageH, _offH),
            Battery = Owner.Report(_owners, total),
            Moments = _moments.ToImmutable(),
            WithinStepKWh = _withinStepWh / 1000,
            NewtonSteps = _arrays.Sum(array => array?.NewtonSteps ?? 0),
        };
    }

    private EnergySpan Total()
    {
        SpanSums whole = new(Stages);
        foreach (SpanSums sums in _spans)
        {
            whole.Add(sums);
        }

        return whole.Named("whole");
    }
}
