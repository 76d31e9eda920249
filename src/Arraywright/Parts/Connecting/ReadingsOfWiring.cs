using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Planning;

namespace Arraywright.Parts.Connecting;

/// <summary>What a meter shows on parts of a wiring.</summary>
internal sealed class ReadingsOfWiring
{
    private readonly PlanPhysics _physics;
    private readonly ImmutableArray<Conditions> _now;
    private readonly ImmutableArray<Conditions> _standard;
    private readonly ImmutableArray<Conditions> _dim;
    private readonly DesignJudge _judge;

    public ReadingsOfWiring(PlanPhysics physics, StatedConditions stated)
    {
        _physics = physics;
        _now = physics.Seen(stated);
        _standard = [.. physics.Plan.Panels.Select(_ => Conditions.Standard)];
        _dim = [.. physics.Plan.Panels.Select(_ => physics.Extremes.HotDim)];
        _judge = new DesignJudge(physics, _now);
    }

    /// <summary>What the first panel of a wiring sees now.</summary>
    public Conditions Now(Wiring wiring) => _physics.Of(wiring.Panels.First(), _now);

    /// <summary>Open leads of a part.</summary>
    /// <param name="point">Where the probes are held.</param>
    /// <param name="part">The part.</param>
    /// <param name="input">The input it is meant for.</param>
    public ExpectedReading OpenLeads(string point, Wiring part, DcInput input) => new(
        point,
        "V",
        StandardV(part),
        OpenV(part, _now),
        OpenV(part, _dim) * (1 - part.Panels.Max(name => _physics.Stock[name].Panel.ToleranceFraction.Value)),
        ColdVoltage.Of(_judge.Context(part, input)));

    /// <summary>Volts, amps and watts once the input is on.</summary>
    public ImmutableArray<ExpectedReading> Working(Wiring wiring, DcInput input)
    {
        OperatingPoint standard = Taken(wiring, input, _standard);
        OperatingPoint now = Taken(wiring, input, _now);
        return
        [
            new($"{input.Name}, volts", "V", standard.VoltageV, now.VoltageV, null, null),
            new($"{input.Name}, amps", "A", standard.CurrentA, now.CurrentA, null, null),
            new($"{input.Name}, watts", "W", standard.PowerW, now.PowerW, null, null),
        ];
    }

    /// <summary>Label volts added up; where unequal parts stand side by side, what the circuit settles at between them.</summary>
    private double StandardV(Wiring part) => part switch
    {
        Wiring.Single single => _physics.Stock[single.Panel].Panel.OpenCircuitV,
        Wiring.Series series => series.Parts.Sum(StandardV),
        Wiring.Parallel parallel when parallel.Parts.All(each => each.Equals(parallel.Parts[0])) => StandardV(parallel.Parts[0]),
        _ => OpenV(part, _standard),
    };

    private double OpenV(Wiring part, ImmutableArray<Conditions> seen) => new Circuit(_physics.Tree(part, seen)).OpenCircuitV;

    private OperatingPoint Taken(Wiring wiring, DcInput input, ImmutableArray<Conditions> seen) =>
        new Circuit(_physics.Tree(wiring, seen)).TakenBy(PlanPhysics.Window(input));
}
