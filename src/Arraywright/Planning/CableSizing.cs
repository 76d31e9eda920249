using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;
using Arraywright.Limits.Rules;

namespace Arraywright.Planning;

/// <summary>Sizes the cable of a plan that leaves its size open, for the wirings it is to carry.</summary>
/// <remarks>One size serves all inputs of a plan. What is computed afterwards, volts and energy, has that size.</remarks>
internal sealed class CableSizing
{
    /// <summary>A string's own run may take so much of the drop aimed at; the rest is for the run to the unit. Our own split.</summary>
    private const double StringShare = 1.0 / 3;

    private readonly Plan _plan;
    private readonly ConductorPlace _place;
    private readonly PlanPhysics _physics;
    private readonly ImmutableArray<Conditions> _seen;
    private readonly DesignJudge _judge;

    private CableSizing(Plan plan)
    {
        _plan = plan;
        _place = ConductorPlace.Of(plan, DesignTemperatures.For(plan));
        _physics = new PlanPhysics(plan);
        _seen = _physics.Seen(StatedConditions.None);
        _judge = new DesignJudge(_physics, _seen);
    }

    /// <summary>Whether the plan leaves the size to the tool and nothing has sized it yet.</summary>
    public static bool IsOpen(Plan plan) => plan.Cable.AreaMm2.Origin == Origin.Assumed;

    /// <summary>Drop aimed at, share of the volts.</summary>
    public static double MaxDrop(Plan plan) => plan.Cable.MaxDropFraction ?? ConductorSizing.UsualDropFraction;

    /// <summary>The plan with its cable in the thinnest size there is, to begin with.</summary>
    public static Plan Thinnest(Plan plan)
    {
        ConductorSize thinnest = ConductorSizing.Offered(PartsRules.For(plan).Value)[0];
        return With(plan, thinnest, thinnest, "The thinnest solar cable that is usual.");
    }

    /// <summary>The plan with its cable sized for these wirings; no thinner than a size found before.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wirings">One entry an input; null for nothing.</param>
    public static Plan For(Plan plan, ImmutableArray<Wiring?> wirings) => new CableSizing(plan).Sized(wirings);

    private Plan Sized(ImmutableArray<Wiring?> wirings)
    {
        ConductorSize strings = StringSize(wirings);
        (DcInput Input, Wiring Wiring, ConductorChoice Choice)? most = null;
        for (int i = 0; i < wirings.Length; i++)
        {
            if (wirings[i] is { } wiring)
            {
                DcInput input = _plan.Inputs[i].Input;
                ConductorChoice choice = ConductorSizing.Choose(_place.Rules, size => Judge(size, strings, wiring, input));
                most = most is null || choice.Size.AreaMm2 > most.Value.Choice.Size.AreaMm2 ? (input, wiring, choice) : most;
            }
        }

        if (most is not var (needy, carried, chosen))
        {
            return _plan;
        }

        bool isThickEnough = _plan.Cable.AreaMm2.Origin == Origin.Derived && _plan.Cable.AreaMm2.Value >= chosen.Size.AreaMm2;
        chosen = isThickEnough ? Judge(ConductorSize.Of(_plan.Cable.AreaMm2.Value), strings, carried, needy) : chosen;
        return With(_plan, chosen.Size, strings, Why(needy.Name, DesignA(carried), chosen));
    }

    /// <summary>Copper for each string's own run: the plan's, or the thinnest that does for every string.</summary>
    private ConductorSize StringSize(ImmutableArray<Wiring?> wirings)
    {
        Cable cable = _plan.Cable;
        ConductorSize most = ConductorSizing.Offered(_place.Rules)[0];
        if (cable.StringAreaMm2.Origin == Origin.Given)
        {
            return ConductorSize.Of(cable.StringAreaMm2.Value);
        }

        for (int i = 0; i < wirings.Length; i++)
        {
            if (wirings[i] is not { } wiring)
            {
                continue;
            }

            double allA = LabelSums.ShortCircuitA(wiring, _physics.Stock);
            ImmutableArray<double?> fusesA = DesignRules.StringFusesA(_judge.Context(wiring, _plan.Inputs[i].Input));
            for (int part = 0; part < fusesA.Length; part++)
            {
                // What others drive back is held to the label's largest series fuse, by a fuse where it must be.
                Wiring own = wiring.Strings[part];
                double ownA = LabelSums.ShortCircuitA(own, _physics.Stock);
                double bornA = own.Panels.Min(name => _physics.Stock[name].Panel.MaxSeriesFuseA) ?? double.PositiveInfinity;
                double designA = Math.Max(StrongSunCurrentRule.Factor * ownA, Math.Min(StrongSunCurrentRule.Factor * (allA - ownA), bornA));
                ConductorDuty duty = new(designA, LabelSums.MaximumPowerA(own, _physics.Stock), VoltageV(wiring), cable.StringLengthM.Value, 0);
                ConductorSize size = ForFuse(fusesA[part] ?? 0, ConductorSizing.Choose(duty, _place, StringShare * MaxDrop(_plan)).Size);
                most = size.AreaMm2 > most.AreaMm2 ? size : most;
            }
        }

        return cable.StringAreaMm2.Origin == Origin.Derived && cable.StringAreaMm2.Value > most.AreaMm2 ? ConductorSize.Of(cable.StringAreaMm2.Value) : most;
    }

    /// <summary>The size, or a thicker one where the string's fuse asks for it.</summary>
    private ConductorSize ForFuse(double fuseA, ConductorSize size)
    {
        while (SmallConductor.MostFuseA(size.AreaMm2, _place.Rules) < fuseA && ConductorSizing.Thicker(size) is { } thicker)
        {
            size = thicker;
        }

        return size;
    }

    /// <summary>A size of the run against what it must carry and the drop that the circuit has with it, in strong sun on a mild day: the drop it is judged by later.</summary>
    private ConductorChoice Judge(ConductorSize run, ConductorSize strings, Wiring wiring, DcInput input)
    {
        WireResistances wires = WireResistances.Of(With(_plan, run, strings, "").Cable);
        CircuitTree tree = CircuitTree.Of(wiring, name => _physics.Shaded(name, _physics.Of(name, _seen)), wires);
        return ConductorSizing.Judge(run, DesignA(wiring), LineDrop.Fraction(tree, input), _place, MaxDrop(_plan));
    }

    /// <summary>Labels' short-circuit current in strong sun, A.</summary>
    private double DesignA(Wiring wiring) => StrongSunCurrentRule.Factor * LabelSums.ShortCircuitA(wiring, _physics.Stock);

    private double VoltageV(Wiring wiring) => wiring.LowestV(name => _physics.Stock[name].Panel.MaximumPowerV.Value);

    private static Plan With(Plan plan, ConductorSize run, ConductorSize strings, string why)
    {
        Assumption said = new(Cable.SizeName, run.BothNames, why);
        return plan with
        {
            Cable = plan.Cable with
            {
                AreaMm2 = Sourced.Derived(run.AreaMm2, why),
                StringAreaMm2 = plan.Cable.StringAreaMm2.Origin == Origin.Given ? plan.Cable.StringAreaMm2 : Sourced.Derived(strings.AreaMm2, why),
            },
            Assumed = [.. plan.Assumed.Select(assumption => assumption.What == Cable.SizeName ? said : assumption)],
        };
    }

    private string Why(string input, double designA, ConductorChoice choice)
    {
        string drop = Figures.Result(100 * choice.DropFraction, 100 * MaxDrop(_plan), "%");
        string over = Figures.Over(choice.DropFraction, MaxDrop(_plan)) ? $", over the {Figures.Percent(MaxDrop(_plan))} aimed at" : "";
        return $"Sized by the tool, rules {(_place.Rules == RuleSet.Us ? "us" : "iec")}: for {input} it carries {Figures.Result(choice.Ampacity.CarriesA, "A")}, {Figures.Result(designA, "A")} needed; with connectors the drop is {drop} in strong sun{over}.";
    }
}
