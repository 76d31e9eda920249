using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Tests.Energy;

/// <summary>Hours that people state follow the clock on the wall; the built-in year is kept in UTC at 3.1° W and borrows the days of 2025.</summary>
public sealed class ClockTests
{
    private const int NoonOf1July = (181 * 24) + 11;
    private const int NoonOf1January = 11;

    [Fact]
    public void In_summer_loads_are_met_an_hour_further_on()
    {
        SunSeries series = Series(London());
        Assert.Equal(12, series.EndHour[NoonOf1July], 1e-9);
        Assert.Equal(13, series.ClockEndHour[NoonOf1July], 1e-9);
        Assert.Equal(12, series.ClockEndHour[NoonOf1January], 1e-9);
        Assert.All(series.ClockEndHour, hour => Assert.InRange(hour, 0.5, 24));
    }

    [Fact]
    public void Shade_from_noon_by_the_clock_begins_an_hour_earlier_in_summer()
    {
        double[] summerTime = Series(London()).Stocks[0].ShadedFraction;
        double[] standard = Series(null).Stocks[0].ShadedFraction;
        Assert.Equal((0.5, 0.0), (summerTime[NoonOf1July], standard[NoonOf1July]));
        Assert.Equal((0.0, 0.0), (summerTime[NoonOf1January], standard[NoonOf1January]));
        Assert.Equal(0.25, standard[NoonOf1July + 3], 1e-12); // Half of the hour to 15 h.
    }

    /// <summary>London in 2025: forward on 30 March, back on 26 October, at 1 h universal time.</summary>
    private static PlaceZone London() => new("Europe/London", [new(new DateTime(2024, 10, 27, 1, 0, 0), 0), new(new DateTime(2025, 3, 30, 1, 0, 0), 1), new(new DateTime(2025, 10, 26, 1, 0, 0), 0)]);

    private static SunSeries Series(PlaceZone? zone)
    {
        Panel panel = PanelReader.Read(new PanelLabel { Name = "a", PowerW = 120, OpenCircuitV = 22.9, ShortCircuitA = 6.72, MaximumPowerV = 18.9, MaximumPowerA = 6.35, Cells = 36 }).Panel!;
        Plan plan = new()
        {
            Name = "lambing shed",
            Goal = Goal.Year,
            Place = new Place(54.6, -3.1, 200, null, null) { Zone = zone },
            Mount = new Mount(40, 180, MountKind.OpenRack),
            Panels = [new PanelStock(panel, 1, new Shade(0, [], [new ShadeHours(12, 14.5, 0.5)]), null)],
            Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = 60 }, null)],
            Units = [],
            Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
            Assumed = [],
            Doubts = [],
        };
        return SunOnPanels.Of(plan, SyntheticYear.For(plan)!, SunOptions.Default);
    }
}
