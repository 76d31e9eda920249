using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Planning;
using Arraywright.Sky;

namespace Arraywright.Tests.Energy;

/// <summary>What a plan says of its site reaches the panels, and is no longer listed as assumed.</summary>
public sealed class SiteOptionsTests
{
    private static readonly string[] Site = ["dirt on the glass", "ground beside the panels", "horizon", "clock"];

    private static readonly Plan Silent = new()
    {
        Name = "lambing shed",
        Goal = Goal.Year,
        Place = new Place(54.6, -3.1, 200, null, null),
        Mount = new Mount(40, 180, MountKind.OpenRack),
        Panels = [new PanelStock(PanelReader.Read(new PanelLabel { Name = "a", PowerW = 120, OpenCircuitV = 22.9, ShortCircuitA = 6.72, MaximumPowerV = 18.9, MaximumPowerA = 6.35, Cells = 36 }).Panel!, 1, Shade.None, null)],
        Inputs = [new PlannedInput(new DcInput { Name = "store", MaxVoltageV = 60 }, null)],
        Units = [],
        Cable = new Cable(Sourced.Given(8.0), Sourced.Given(4.0), Sourced.Given(0.0), Sourced.Given(4.0), Sourced.Given(0.0005)),
        Assumed = [],
        Doubts = [],
    };

    private static readonly WeatherYear Weather = SyntheticYear.For(Silent)!;

    [Fact]
    public void A_silent_plan_has_the_ordinary_site_and_says_so()
    {
        Assert.Equal(SunOptions.Default, SunOptions.Of(Silent) with { AlbedoFractions = SunOptions.Default.AlbedoFractions });
        Assert.Equal([0.2], SunOptions.Of(Silent).AlbedoFractions);
        Assert.Equal(Site[..3], Assumed(Silent).Where(Site.Contains));
        PanelStock shaded = Silent.Panels[0] with { Shade = Shade.None with { Hours = [new ShadeHours(8, 10, 0.5)] } };
        Assert.Equal(Site, Assumed(Silent with { Panels = [shaded] }).Where(Site.Contains));
    }

    [Fact]
    public void What_is_stated_is_taken_and_not_called_assumed()
    {
        Plan stated = Silent with
        {
            Sky = SkyModel.Isotropic,
            Mount = Silent.Mount with { SoilingFraction = 0.1 },
            Place = Silent.Place! with { Horizon = new HorizonProfile([new(180, 5)]), AlbedoFractions = [0.4], Zone = new PlaceZone("UTC", [new(default, 0)]) },
        };
        SunOptions options = SunOptions.Of(stated);
        Assert.Equal((0.1, SkyModel.Isotropic, 5.0, 0.4), (options.SoilingFraction, options.Sky, options.Horizon.ElevationDeg(180), options.AlbedoFraction(7)));
        Assert.DoesNotContain(Assumed(stated), Site.Contains);
    }

    /// <summary>Dirt takes its share of all that comes through: by hand 0.9/0.97.</summary>
    [Fact]
    public void Dirt_takes_its_share()
    {
        double usual = Useful(Silent).Sum();
        Assert.Equal(usual * 0.9 / 0.97, Useful(Silent with { Mount = Silent.Mount with { SoilingFraction = 0.1 } }).Sum(), 1e-9 * usual);
    }

    /// <summary>Snow in January only: the other months stay to the bit; January gains what the ground gives: by hand (0.8 − 0.2)·GHI·(1 − cos 40°)/2, less glass and dirt.</summary>
    [Fact]
    public void Snow_in_one_month_brightens_that_month_alone()
    {
        double[] usual = Useful(Silent);
        double[] snow = Useful(Silent with { Place = Silent.Place! with { AlbedoFractions = [0.8, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2] } });
        double global = Weather.Steps.Take(744).Sum(step => step.GlobalWPerM2);
        double gain = 0.6 * global * (1 - Math.Cos(40 * Math.PI / 180)) / 2 * IncidenceLoss.GroundFraction(40) * 0.97;
        Assert.Equal(gain, snow.Take(744).Sum() - usual.Take(744).Sum(), 1e-6 * gain);
        Assert.Equal(usual.Skip(744), snow.Skip(744));
    }

    /// <summary>A ring of 15° hides the whole midwinter sun there (12° at noon) and cos²15° of a level sky; high summer noon keeps its beam.</summary>
    [Fact]
    public void Hills_hide_the_low_sun_and_some_of_the_sky()
    {
        Plan level = Silent with { Mount = new Mount(0, 180, MountKind.OpenRack), Sky = SkyModel.Isotropic };
        Plan valley = level with { Place = level.Place! with { Horizon = new HorizonProfile([new(0, 15)]) } };
        double[] free = Useful(level);
        double[] hidden = Useful(valley);
        double skyLeft = Math.Pow(Math.Cos(15 * Math.PI / 180), 2);
        for (int step = 0; step < free.Length; step++)
        {
            Assert.InRange(hidden[step], 0, free[step]);
        }

        int midwinter = (354 * 24) + 12; // 21 December, 12 to 13 h.
        double diffuse = Weather.Steps[midwinter].DiffuseWPerM2;
        Assert.True(diffuse > 0);
        Assert.Equal(diffuse * skyLeft * IncidenceLoss.SkyFraction(0) * 0.97, hidden[midwinter], 1e-6 * diffuse);

        int midsummer = (171 * 24) + 12;
        double lost = Weather.Steps[midsummer].DiffuseWPerM2 * (1 - skyLeft) * IncidenceLoss.SkyFraction(0) * 0.97;
        Assert.Equal(free[midsummer] - lost, hidden[midsummer], 1e-6 * free[midsummer]);
    }

    private static double[] Useful(Plan plan) => SunOnPanels.Of(plan, Weather, SunOptions.Of(plan)).Stocks[0].UsefulWPerM2;

    private static IEnumerable<string> Assumed(Plan plan) => YearAssumptions.Of(plan, Weather, EnergyOptions.Default).Select(assumption => assumption.What);
}
