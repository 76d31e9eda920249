using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Conductors;

namespace Arraywright.Growing;

/// <summary>Tries a kind of panel on an input, all strings alike, and lets the rules judge each array.</summary>
internal sealed class KindFitting
{
    private const int MostInString = 30;
    private const int MostStrings = 12;

    /// <summary>An array that takes so much more is worth its further panels.</summary>
    private const double ClearlyMore = 0.01;

    private readonly PlanPhysics _physics;
    private readonly ImmutableArray<Conditions> _mild;

    /// <param name="all">A plan with every kind.</param>
    public KindFitting(Plan all)
    {
        _physics = new PlanPhysics(all);
        _mild = _physics.Seen(StatedConditions.None);
    }

    /// <summary>The array of a kind that fills an input best without asking.</summary>
    public KindFit Of(Panel panel, DcInput input, double? fullW)
    {
        (int InString, int Strings, double TakenW) best = default;
        for (int inString = 1; inString <= MostInString && Against(panel, input, inString, 1) is not { Level: Level.Stop }; inString++)
        {
            for (int strings = 1; strings <= MostStrings && Against(panel, input, inString, strings) is null; strings++)
            {
                double takenW = new Circuit(_physics.Tree(Array(panel, inString, strings), _mild)).TakenBy(PlanPhysics.Window(input)).PowerW;
                if (takenW > best.TakenW * (1 + ClearlyMore))
                {
                    best = (inString, strings, takenW);
                }
            }
        }

        return new KindFit
        {
            Panel = panel.Name,
            InString = best.InString,
            Strings = best.Strings,
            TakenW = best.TakenW,
            UsedShare = fullW is { } full ? Math.Min(1, best.TakenW / full) : null,
            Obstacles = best.InString == 0
                ? [.. Obstacle(panel, input, 1, 1)]
                : [.. Obstacle(panel, input, best.InString + 1, best.Strings), .. Obstacle(panel, input, best.InString, best.Strings + 1)],
        };
    }

    private IEnumerable<KindObstacle> Obstacle(Panel panel, DcInput input, int inString, int strings) =>
        Against(panel, input, inString, strings) is { } finding ? [new KindObstacle(inString, strings, finding)] : [];

    /// <summary>The worst that any rule says; null where nothing is against it.</summary>
    private Finding? Against(Panel panel, DcInput input, int inString, int strings)
    {
        Wiring wiring = Array(panel, inString, strings);
        RuleContext context = new()
        {
            Wiring = wiring,
            Input = input,
            Unit = _physics.Plan.Units.FirstOrDefault(unit => unit.Name == input.Unit),
            Stock = _physics.Stock,
            Temperatures = _physics.Extremes,
            Physics = _physics.ForRules(wiring, input),
            Rules = PartsRules.For(_physics.Plan).Value,
        };
        return DesignRules.Judge(context).Where(finding => finding.Level > Level.Go).MaxBy(finding => finding.Level);
    }

    private static Wiring Array(Panel panel, int inString, int strings) =>
        Wiring.InParallel(Enumerable.Repeat(Wiring.InSeries(Enumerable.Repeat<Wiring>(new Wiring.Single(panel.Name), inString)), strings));
}
