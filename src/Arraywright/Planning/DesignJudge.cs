using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;

namespace Arraywright.Planning;

/// <summary>Turns a wiring for each input into a judged and computed design.</summary>
/// <param name="physics">The panels and circuits of the plan.</param>
/// <param name="seen">Conditions of the operating points, one a kind of panel.</param>
internal sealed class DesignJudge(PlanPhysics physics, ImmutableArray<Conditions> seen)
{
    private Plan Plan => physics.Plan;

    /// <summary>The design of these wirings, one entry an input, null for nothing.</summary>
    public Design Judge(ImmutableArray<Wiring?> wirings, DesignEnergy energy, int rank, ImmutableArray<string> chosenFor)
    {
        ImmutableArray<Assignment> assignments = [.. Plan.Inputs.Select((planned, index) => Assign(planned.Input, wirings[index]))];
        assignments = WithUnitHolds(WithUnitFindings(assignments));
        LossLadder ladder = new(physics, seen);
        return new Design
        {
            Rank = rank,
            ChosenFor = chosenFor,
            Assignments = assignments,
            ObjectiveW = energy.ObjectiveW,
            EnergyKWh = energy.KWh,
            PeakPowerW = ladder.TakenW(assignments),
            UnusedPanels = Unused(wirings),
            Losses = ladder.Of(assignments),
        };
    }

    /// <summary>Whether every rule that can ask or stop lets these wirings go, at least up to a level.</summary>
    public bool Passes(ImmutableArray<Wiring?> wirings, Level worst)
    {
        for (int i = 0; i < wirings.Length; i++)
        {
            if (wirings[i] is { } wiring && DesignRules.Worst(Context(wiring, Plan.Inputs[i].Input), worst) > worst)
            {
                return false;
            }
        }

        return Plan.Units.All(unit => UnitFindings(unit, wirings).All(finding => finding.Level <= worst));
    }

    /// <summary>What the rules look at.</summary>
    public RuleContext Context(Wiring wiring, DcInput input) => new()
    {
        Wiring = wiring,
        Input = input,
        Unit = Plan.Units.FirstOrDefault(unit => unit.Name == input.Unit),
        Stock = physics.Stock,
        Temperatures = physics.Extremes,
        Physics = physics.ForRules(wiring, input),
        Rules = PartsRules.For(Plan).Value,
    };

    private Assignment Assign(DcInput input, Wiring? wiring)
    {
        if (wiring is null)
        {
            return new Assignment
            {
                Input = input.Name,
                Wiring = null,
                VocStcV = 0,
                VocColdV = 0,
                IscStcA = 0,
                IscDesignA = 0,
                Conditions = seen[0],
                Operating = new OperatingPoint(0, 0, 0, LimitedBy.Off, 0, 0),
                Findings = [],
            };
        }

        wiring = WiringText.Canonical(wiring);
        RuleContext context = Context(wiring, input);
        double labelA = LabelSums.ShortCircuitA(wiring, physics.Stock);
        return new Assignment
        {
            Input = input.Name,
            Wiring = wiring,
            VocStcV = LabelSums.OpenCircuitV(wiring, physics.Stock),
            VocColdV = ColdVoltage.Of(context),
            VocWeather = physics.Weather?.Of(wiring),
            IscStcA = labelA,
            IscDesignA = 1.25 * labelA,
            Conditions = physics.Of(wiring.Panels.First(), seen),
            Operating = new Circuit(physics.Tree(wiring, seen)).TakenBy(PlanPhysics.Window(input)),
            StringFusesA = DesignRules.StringFusesA(context),
            Findings = DesignRules.Judge(context),
        };
    }

    /// <summary>What belongs to a whole unit stands with the first of its inputs that is used.</summary>
    private ImmutableArray<Assignment> WithUnitFindings(ImmutableArray<Assignment> assignments)
    {
        foreach (ChargingUnit unit in Plan.Units)
        {
            int first = -1;
            for (int i = assignments.Length - 1; i >= 0; i--)
            {
                first = Plan.Inputs[i].Input.Unit == unit.Name && assignments[i].Wiring is not null ? i : first;
            }

            if (first >= 0)
            {
                ImmutableArray<Finding> added = UnitFindings(unit, [.. assignments.Select(assignment => assignment.Wiring)]);
                assignments = assignments.SetItem(first, assignments[first] with { Findings = [.. assignments[first].Findings, .. added] });
            }
        }

        return assignments;
    }

    /// <summary>An operating point is of one input by itself; where a unit takes less than all of them together, each says so.</summary>
    private ImmutableArray<Assignment> WithUnitHolds(ImmutableArray<Assignment> assignments)
    {
        foreach (ChargingUnit unit in Plan.Units)
        {
            int[] own = [.. Enumerable.Range(0, assignments.Length).Where(i => Plan.Inputs[i].Input.Unit == unit.Name && assignments[i].Wiring is not null)];
            double offeredW = own.Sum(i => assignments[i].Operating.PowerW);
            if (unit.MaxPower is { Figure: var maxW } && offeredW > maxW)
            {
                foreach (int i in own)
                {
                    assignments = assignments.SetItem(i, assignments[i] with { HeldByUnit = new UnitHold(unit.Name, maxW, offeredW) });
                }
            }
        }

        return assignments;
    }

    private ImmutableArray<Finding> UnitFindings(ChargingUnit unit, ImmutableArray<Wiring?> wirings)
    {
        List<(string Input, Wiring Wiring)> connected = [];
        for (int i = 0; i < wirings.Length; i++)
        {
            if (Plan.Inputs[i].Input.Unit == unit.Name && wirings[i] is { } wiring)
            {
                connected.Add((Plan.Inputs[i].Input.Name, wiring));
            }
        }

        return UnitRules.Judge(unit, connected, physics.Stock);
    }

    private ImmutableArray<(string Panel, int Count)> Unused(ImmutableArray<Wiring?> wirings)
    {
        Dictionary<string, int> used = wirings.OfType<Wiring>().SelectMany(wiring => wiring.Panels).CountBy(name => name).ToDictionary();
        return
        [
            .. Plan.Panels
                .Select(stock => (stock.Panel.Name, Count: stock.Count - used.GetValueOrDefault(stock.Panel.Name)))
                .Where(left => left.Count > 0),
        ];
    }
}
