using Arraywright.Climate;
using Arraywright.Energy;
using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>Worked examples: a month on a tilted plane, weighted efficiency, and a battery's arithmetic.</summary>
public sealed class HandbookEnergy
{
    /// <summary>
    /// Monthly mean of beam on a slope over beam on the flat, outside the air, at 43° N, slope 60° to the equator: Duffie and Beckman, example 2.19.1 (from memory; recomputed in
    /// the project's reference pack after Klein 1977), by the declinations of the book's mean days, which are rounded to 0.1° (in winter 0.01 of the figure). There an integral in closed form; here our plane, minute by minute.
    /// </summary>
    [Theory]
    [InlineData(-20.9, 2.79)]
    [InlineData(-13.0, 2.04)]
    [InlineData(-2.4, 1.42)]
    [InlineData(9.4, 0.96)]
    [InlineData(18.8, 0.71)]
    [InlineData(23.1, 0.62)]
    [InlineData(21.2, 0.66)]
    [InlineData(13.5, 0.84)]
    [InlineData(2.2, 1.21)]
    [InlineData(-9.6, 1.81)]
    [InlineData(-18.9, 2.56)]
    [InlineData(-23.0, 3.06)]
    public void A_months_mean_beam_on_a_slope(double declinationDeg, double book)
    {
        const double Rad = Math.PI / 180;
        double flat = 0;
        double slope = 0;
        for (int minute = -720; minute < 720; minute++)
        {
            double hourAngle = (minute + 0.5) / 4 * Rad;
            double sine = (Math.Sin(43 * Rad) * Math.Sin(declinationDeg * Rad)) + (Math.Cos(43 * Rad) * Math.Cos(declinationDeg * Rad) * Math.Cos(hourAngle));
            if (sine > 0)
            {
                double elevation = Math.Asin(sine) / Rad;
                double azimuth = 180 + (Math.Atan2(Math.Sin(hourAngle), (Math.Cos(hourAngle) * Math.Sin(43 * Rad)) - (Math.Tan(declinationDeg * Rad) * Math.Cos(43 * Rad))) / Rad);
                SunPosition sun = new(elevation, elevation, azimuth, 1);
                slope += TiltedPlane.Of(sun, new SkyLight(1, 1, 0, 1361), 60, TiltedPlane.IncidenceDeg(sun, 60, 180), 0, SkyModel.Isotropic).BeamWPerM2;
                flat += sine;
            }
        }

        Assert.Equal(book, slope / flat, 0.01);
    }

    /// <summary>By hand: 0.03·80 + 0.06·86 + 0.13·91 + 0.10·93 + 0.48·94 + 0.20·92 = 92.21 % for a converter of 80, 86, 91, 93, 94 and 92 % at 5, 10, 20, 30, 50 and 100 % of its load (European weighting).</summary>
    [Fact]
    public void A_weighted_efficiency_is_what_the_sum_by_hand_says()
    {
        Dictionary<double, double> percent = new() { [0.05] = 80, [0.1] = 86, [0.2] = 91, [0.3] = 93, [0.5] = 94, [1] = 92 };
        Assert.Equal(92.21, LoadWeighting.European.Sum(level => level.EnergyShare * percent[level.Fraction]), 1e-9);
    }

    /// <summary>
    /// By hand: in 1000 W/m² at 25 °C a panel gives its label's 18.9 V · 6.35 A = 120.015 W, less the copper; of that 90 %, less 5 W of own use, arrive; a load of 30 W is served
    /// first; in three hours the rest lifts the charge of 1 kWh from 20 % to 20 % + (3·(0.9·P − 5) − 90)/1000.
    /// </summary>
    [Fact]
    public void Three_hours_into_a_battery()
    {
        Plan plan = ReferencePlans.Read("""
            plan: by hand
            goal: year
            mount: { tilt: 0 deg, azimuth: 180 deg, kind: open rack }
            panels:
              - { name: a, count: 1, power: 120 W, voc: 22.9 V, isc: 6.72 A, vmp: 18.9 V, imp: 6.35 A, voc_temperature: -0.29 %/K, isc_temperature: 0.05 %/K, cells: 36 }
            inputs:
              - { name: store, max_voltage: 60 V, efficiency: 90 %, wiring: a, battery: { capacity: 1 kWh, from: 20 %, to: 100 %, load: 30 W } }
            cable: { length: 1 m, size: 10 mm2 }
            """);
        plan = plan with { Inputs = [plan.Inputs[0] with { Input = plan.Inputs[0].Input with { SelfUseW = 5 } }] };
        double[] Three(double each) => [each, each, each];
        SunSeries series = new(1, ["all"], new int[3], new int[3], [11, 12, 13], [new StockSun(Three(1000), Three(1000), Three(0), Three(25), Three(1000))]);
        EnergyResult result = ReferencePlans.Run(plan, series, EnergyOptions.Default with { KeepMoments = true });
        double inKWh = result.Total.DeliveredKWh;

        // Copper there and back 2 m of 10 mm², 3.9 mΩ at 50 °C, and two contacts: 6.35² A² · R is 0.2 W.
        Assert.Equal(3 * 120.015, 1000 * inKWh, 3 * 0.35);
        Assert.Equal((0.9 * inKWh) - 0.015, result.Total.LevelsKWh[(int)Stage.Conversion], 1e-12);
        Assert.Equal(0.090, result.Battery!.ServedKWh, 1e-12);
        Assert.Equal(0.2 + (0.9 * inKWh) - 0.015 - 0.090, result.Moments[^1].StateOfCharge!.Value, 1e-9);
        Assert.Equal(0, result.Battery.TurnedAwayKWh, 1e-12);
        Assert.Equal(360, 1000 * result.Total.LevelsKWh[(int)Stage.Label], 1e-9);
    }
}
