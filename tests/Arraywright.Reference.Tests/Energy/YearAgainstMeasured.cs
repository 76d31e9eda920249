using System.Globalization;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Reference.Tests.Climate;
using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Energy;

/// <summary>Cells' temperature and the shape of the power against measured systems whose modules nobody names. Bounds are bias and spread as found in 2026-11, rounded outward; nothing is tuned to them.</summary>
public sealed class YearAgainstMeasured
{
    /// <summary>Back of a module on an open rack against the measured one. Wind is not in the data; it is taken as steady. By far the most of the spread is wind.</summary>
    [Theory]
    [InlineData(1, 2, 2.5)] // as where nothing is known
    [InlineData(2, 0.5, 1.5)] // as in the years made from the built-in climate
    public void Modules_in_Nevada_are_as_warm_as_the_rack_says(double windMPerS, double biasFromK, double biasToK)
    {
        double[] missK = [.. MeasuredSystem.Quarters().Where(row => row.PlaneWPerM2 > 200)
            .Select(row => row.AirC + SandiaMounting.OpenRackSheet.BackRiseK(row.PlaneWPerM2, windMPerS) - row.ModuleC)];
        double biasK = missK.Average();
        double spreadK = Math.Sqrt(missK.Average(miss => (miss - biasK) * (miss - biasK)));
        TestContext.Current.TestOutputHelper?.WriteLine($"{windMPerS} m/s: bias {biasK:0.00} K, spread {spreadK:0.00} K, {missK.Length} quarter hours");
        Assert.InRange(missK.Length, 12000, 13000);
        Assert.InRange(biasK, biasFromK, biasToK);
        Assert.InRange(spreadK, 3, 4);
    }

    /// <summary>
    /// Power of a common panel with its coefficients left out, in the measured light at the measured temperature, times one factor for the whole year. Whether the
    /// meter reads direct or alternating current is not stated: an inverter's own losses in weak sun would be in it.
    /// </summary>
    [Fact]
    public void Power_in_Nevada_rises_with_the_sun_and_falls_with_heat_as_a_common_panels_does()
    {
        PanelModel model = PanelModel.FitTo(PanelReader.Read(new PanelLabel { Name = "common", PowerW = 250, OpenCircuitV = 37.6, ShortCircuitA = 8.8, MaximumPowerV = 30.5, MaximumPowerA = 8.2, Cells = 60 }).Panel!);
        List<(MeasuredQuarter Row, double ModelW)> rows = [.. MeasuredSystem.Quarters().Where(row => row.PlaneWPerM2 > 100).Select(row => (row, ModelW(model, row)))];
        double factor = rows.Sum(row => row.Row.PowerW) / rows.Sum(row => row.ModelW);
        double Bias(Func<MeasuredQuarter, bool> which)
        {
            double[] misses = [.. rows.Where(row => which(row.Row)).Select(row => (factor * row.ModelW / row.Row.PowerW) - 1).Order()];
            Assert.True(misses.Length > 200);
            return 100 * misses[misses.Length / 2];
        }

        foreach ((double from, double to) in new[] { (100.0, 200.0), (200, 400), (400, 600), (600, 800), (800, 1000), (1000, 1200) })
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"{from} to {to} W/m²: {Bias(row => row.PlaneWPerM2 >= from && row.PlaneWPerM2 < to):0.0} % in the median");
        }

        foreach ((double from, double to) in new[] { (0.0, 15.0), (15, 30), (30, 45), (45, 60), (60, 75) })
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"{from} to {to} °C, over 600 W/m²: {Bias(row => row.ModuleC >= from && row.ModuleC < to && row.PlaneWPerM2 > 600):0.0} % in the median");
        }
    }

    private static double ModelW(PanelModel model, MeasuredQuarter row)
    {
        (double voltageV, double currentA) = DiodeCurve.MaximumPower(model.At(new Conditions(row.PlaneWPerM2, row.ModuleC + (row.PlaneWPerM2 / 1000 * SandiaMounting.OpenRackSheet.BackToCellK))));
        return voltageV * currentA;
    }

    /// <summary>
    /// Two balcony systems in Pforzheim, 2024: two modules of 405 W each, tilt 35°, 58° east of south, micro-inverter of 600 W and 96.7 % at best (Karlsruhe Institute of
    /// Technology, MPVBench, BSD 3-Clause). No irradiance was measured, both are shaded a part of the day: only the months' shares are compared, a climate's year with one real one.
    /// </summary>
    [Fact]
    public void A_balconys_months_have_the_shares_of_the_built_in_climates_year()
    {
        Plan plan = ReferencePlans.Read("""
            plan: balcony
            goal: year
            place: { latitude: 48.89, longitude: 8.70, elevation: 270 m }
            mount: { tilt: 35 deg, azimuth: 122 deg, kind: open rack }
            panels:
              - { name: a, count: 2, power: 405 W, voc: 37.2 V, isc: 13.9 A, vmp: 31.2 V, imp: 12.98 A, cells: 54 }
            inputs:
              - { name: inverter, max_voltage: 120 V, max_power: 620 W, wiring: a + a }
            cable: { length: 2 m, size: 4 mm2 }
            """);
        EnergyResult year = ReferencePlans.Run(plan, SunOnPanels.Of(plan, ReferencePlans.BuiltIn(plan), SunOptions.Default), EnergyOptions.Default);
        double[] measured = new double[12];
        foreach (string[] field in File.ReadLines(SharedFiles.PathOrSkip("measured/balcony_2024_15min.csv")).Skip(1).Select(line => line.Split(',')))
        {
            measured[DateTime.Parse(field[0], CultureInfo.InvariantCulture).Month - 1] += double.Parse(field[1], CultureInfo.InvariantCulture) / 4000;
        }

        for (int month = 0; month < 12; month++)
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"{month + 1}: {100 * year.Spans[month].DeliveredKWh / year.Total.DeliveredKWh:0.0} % made, {100 * measured[month] / measured.Sum():0.0} % measured");
        }
    }
}
