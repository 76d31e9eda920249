using System.Collections.Immutable;
using Arraywright.Climate;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Tests.Energy;

/// <summary>What a run costs, counted in Newton steps on the whole circuit: the same count on any machine, where a time is not.</summary>
public sealed class EnergyCostTests
{
    /// <summary>A first hour starts from nowhere; later ones from the hour before.</summary>
    private const double StartShare = 0.01;

    /// <summary>Newton steps an hour at the most: the budget behind the year's time in bench/README.md.</summary>
    private const double MostAnHour = 30;

    private static readonly Plan Farm = Made();
    private static readonly PlanPhysics Physics = new(Farm);
    private static readonly SunSeries Year = SunOnPanels.Of(Farm, SyntheticYear.For(Farm)!, SunOptions.Default);

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void So_many_times_the_hours_cost_so_many_times_the_work(int times)
    {
        long once = Cost(Year);
        Assert.InRange(Cost(Taken(Year, [.. Enumerable.Range(0, times * Year.Count).Select(i => i % Year.Count)])) / (double)(times * once), 1 - StartShare, 1 + StartShare);
    }

    [Fact]
    public void A_year_costs_what_its_months_cost_one_by_one()
    {
        long months = Enumerable.Range(0, 12).Sum(month => Cost(Taken(Year, [.. Enumerable.Range(0, Year.Count).Where(i => Year.Span[i] == month)])));
        Assert.InRange(months / (double)Cost(Year), 1 - StartShare, 1 + StartShare);
    }

    [Fact]
    public void An_hour_costs_no_more_than_its_budget_and_a_dark_one_nothing()
    {
        int[] lit = [.. Enumerable.Range(0, Year.Count).Where(i => Year.Stocks[0].UsefulWPerM2[i] >= MovingArray.DarkWPerM2)];
        Assert.InRange(lit.Length, 4000, 5000);
        Assert.InRange(Cost(Taken(Year, lit)) / (double)lit.Length, 3, MostAnHour);
        Assert.Equal(Cost(Taken(Year, lit)), Cost(Year));
    }

    private static long Cost(SunSeries series) =>
        EnergyRun.Of(Physics, [Farm.Inputs[0].StatedWiring], series, new EnergyOptions { SpreadWithinStep = false }).NewtonSteps;

    /// <summary>Some steps of a series, in a given order, as a series.</summary>
    private static SunSeries Taken(SunSeries series, int[] steps)
    {
        T[] Of<T>(T[] all) => [.. steps.Select(step => all[step])];
        return series with
        {
            Span = Of(series.Span),
            Day = Of(series.Day),
            EndHour = Of(series.EndHour),
            ClockEndHour = Of(series.ClockEndHour),
            Stocks = [.. series.Stocks.Select(sun => new StockSun(Of(sun.PlaneWPerM2), Of(sun.UsefulWPerM2), Of(sun.ShadedFraction), Of(sun.CellC), Of(sun.ClearWPerM2)))],
        };
    }

    /// <summary>Two strings of four panels of the hill farm, no two alike.</summary>
    private static Plan Made()
    {
        ImmutableArray<PanelStock> stocks = [.. Enumerable.Range(0, 8).Select(i => Stock($"p{i}", 100 + (17 * i), 22 + i))];
        Wiring String(int first) => Wiring.InSeries(Enumerable.Range(0, 4).Select(i => (Wiring)new Wiring.Single($"p{first + (2 * i)}")));
        return new Plan
        {
            Name = "farm",
            Goal = Goal.Year,
            Place = new Place(54.6, -3.1, 200, -14, null),
            Mount = new Mount(40, 180, MountKind.OpenRack),
            Panels = stocks,
            Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = 150 }, Wiring.InParallel([String(0), String(1)]))],
            Units = [],
            Cable = new Cable(Sourced.Given(10.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
            Assumed = [],
            Doubts = [],
        };
    }

    private static PanelStock Stock(string name, double powerW, double openV) => new(
        PanelReader.Read(new PanelLabel { Name = name, PowerW = powerW, OpenCircuitV = openV, ShortCircuitA = 1.07 * powerW / (0.82 * openV), MaximumPowerV = 0.82 * openV, MaximumPowerA = powerW / (0.82 * openV) }).Panel!,
        1,
        Shade.None,
        null);
}
