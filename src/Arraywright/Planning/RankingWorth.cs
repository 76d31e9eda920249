using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Planning;

/// <summary>What designs are ranked by: power into the inputs, weighted over the ranking moments.</summary>
internal sealed class RankingWorth(PlanPhysics physics, RankingMoments ranking)
{
    public RankingMoments Ranking => ranking;

    private double TotalWeight => ranking.Moments.Sum(moment => moment.WeightH);

    /// <summary>Weighted mean power into all inputs, W; what a unit's inputs share is capped together.</summary>
    public double ObjectiveW(ImmutableArray<Wiring?> wirings)
    {
        double sum = 0;
        foreach (Moment moment in ranking.Moments)
        {
            sum += moment.WeightH * TakenTogetherW(wirings, moment.ByStock);
        }

        return sum / TotalWeight;
    }

    /// <summary>The objective as energy a year, kWh; null when the moments do not stand for a year of a place.</summary>
    public double? YearKWh(double objectiveW) => ranking.IsYearEnergy ? objectiveW * TotalWeight / 1000 : null;

    private double TakenTogetherW(ImmutableArray<Wiring?> wirings, ImmutableArray<Conditions> seen)
    {
        double[] takenW = new double[wirings.Length];
        for (int i = 0; i < wirings.Length; i++)
        {
            if (wirings[i] is { } wiring)
            {
                takenW[i] = new Circuit(physics.Tree(wiring, seen)).PowerTakenW(PlanPhysics.Window(physics.Plan.Inputs[i].Input));
            }
        }

        return SharedW(physics.Plan, takenW);
    }

    /// <summary>The sum of what inputs take, each unit's inputs capped by what the unit takes at most, W.</summary>
    public static double SharedW(Plan plan, IReadOnlyList<double> takenW)
    {
        double sumW = 0;
        for (int i = 0; i < takenW.Count; i++)
        {
            sumW += plan.Inputs[i].Input.Unit is null ? takenW[i] : 0;
        }

        foreach (ChargingUnit unit in plan.Units)
        {
            double ofUnitW = 0;
            for (int i = 0; i < takenW.Count; i++)
            {
                ofUnitW += plan.Inputs[i].Input.Unit == unit.Name ? takenW[i] : 0;
            }

            sumW += Math.Min(ofUnitW, unit.MaxPower?.Figure ?? double.PositiveInfinity);
        }

        return sumW;
    }
}
