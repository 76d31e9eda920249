using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Planning;
using Arraywright.Testing;

namespace Arraywright.Tests.Planning;

/// <summary>Threads change no figure by one bit.</summary>
/// <remarks>
/// The library works on more than one in two places: a plan searches with and without the limits that a maker may let be passed side by side, and
/// solves its best designs over the year side by side. Here eight threads at once contend for all it has, and each gets what it gets alone.
/// Other counts of processors are tried on the command, in a process each.
/// </remarks>
public sealed class ManyThreadsTests
{
    private const int Threads = 8;

    /// <summary>Bits of figures that an answer to a plan holds at the least; so that the comparison cannot be of nothing.</summary>
    private const int ManyFigures = 200;

    private static readonly Plan[] Plans = [Farm(60, 9), Farm(100, 7)];

    [Fact]
    public void A_plan_has_the_same_answer_alone_and_beside_seven_others() =>
        SameAloneAndTogether(plan => Planner.Answer(plan, PlannerOptions.Default, null, CancellationToken.None));

    [Fact]
    public void A_year_has_the_same_figures_alone_and_beside_seven_others() => SameAloneAndTogether(plan =>
    {
        Plan stated = plan with { Inputs = [plan.Inputs[0] with { StatedWiring = Strings }] };
        return YearStudy.Run(stated, SyntheticYear.For(stated)!, EnergyOptions.Default, null, CancellationToken.None);
    });

    private static Wiring Strings { get; } = Wiring.InParallel([
        Wiring.InSeries([new Wiring.Single("a"), new Wiring.Single("c")]),
        Wiring.InSeries([new Wiring.Single("b"), new Wiring.Single("d")])]);

    private static void SameAloneAndTogether(Func<Plan, object> run)
    {
        List<string>[] alone = [.. Plans.Select(plan => EveryFigure.In(run(plan)))];
        Assert.All(alone, figures => Assert.InRange(figures.Count, ManyFigures, int.MaxValue));
        Assert.NotEqual(alone[0], alone[1]);
        var together = new List<string>[Threads];
        using Barrier start = new(Threads);
        Thread[] threads = [.. Enumerable.Range(0, Threads).Select(i => new Thread(() =>
        {
            start.SignalAndWait();
            together[i] = EveryFigure.In(run(Plans[i % Plans.Length]));
        }))];
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        for (int i = 0; i < Threads; i++)
        {
            Assert.Equal(alone[i % Plans.Length], together[i]);
        }
    }

    /// <summary>Four different panels of the hill farm, one partly shaded, on an input whose limits bind.</summary>
    private static Plan Farm(double maxVoltageV, double drawA) => new()
    {
        Name = "farm",
        Goal = Goal.Year,
        Place = new Place(54.6, -3.1, 200, -14, null),
        Mount = new Mount(40, 180, MountKind.OpenRack),
        Panels = [Stock("a", 120, 22.9, 6.72, Shade.None), Stock("b", 100, 21.6, 6.1, new Shade(0, [0.4], [])), Stock("c", 160, 25.4, 8.1, Shade.None), Stock("d", 60, 21, 3.8, Shade.None)],
        Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = maxVoltageV, MaxCurrent = new Limit(drawA, new Evidence(EvidenceKind.Maker, 2, null)), MaxShortCircuitCurrent = new Limit(40, Evidence.Nothing), MaxPower = new Limit(300, Evidence.Nothing) }, null)],
        Units = [],
        Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
        Assumed = [],
        Doubts = [],
    };

    private static PanelStock Stock(string name, double powerW, double openV, double shortA, Shade shade) => new(
        PanelReader.Read(new PanelLabel { Name = name, PowerW = powerW, OpenCircuitV = openV, ShortCircuitA = shortA, MaximumPowerV = 0.82 * openV, MaximumPowerA = powerW / (0.82 * openV), MaxSeriesFuseA = 20 }).Panel!,
        1,
        shade,
        null);
}
