using Arraywright.Sky;
using CsCheck;

namespace Arraywright.Tests.Sky;

public class CellTemperatureTests
{
    private static readonly Gen<(MountKind Mount, double? NoctC, double AirC, double IrradianceWPerM2, double WindMPerS)> Cases = Gen.Select(
        Gen.Int[0, 2].Select(kind => (MountKind)kind),
        Gen.OneOf(Gen.Const((double?)null), Gen.Double[40, 50].Select(noct => (double?)noct)),
        Gen.Double[-60, 50],
        Gen.Double[1, 1500],
        Gen.Double[0, 20]);

    [Theory]
    [InlineData(MountKind.OpenRack)]
    [InlineData(MountKind.CloseRoof)]
    [InlineData(MountKind.FlatOnGround)]
    public void In_the_dark_the_cells_are_as_cold_as_the_air(MountKind mount) =>
        Assert.Equal(-14, CellTemperature.At(-14, 0, 3, mount, 45));

    /// <summary>By hand from the table of King et al.: NOCT 45 on a rack rises 31.25 K at 1000 W/m²; close roof over rack, glass on glass, 49.456/32.323.</summary>
    [Fact]
    public void A_label_with_noct_is_hotter_close_to_a_roof_as_the_usual_panel_is() =>
        Assert.Equal(20 + (31.25 * 49.456 / 32.323), CellTemperature.At(20, 1000, 1, MountKind.CloseRoof, 45), 0.003);

    [Fact]
    public void More_sun_is_hotter_and_more_wind_is_cooler() => Cases.Sample(c =>
    {
        double cellC = CellTemperature.At(c.AirC, c.IrradianceWPerM2, c.WindMPerS, c.Mount, c.NoctC);
        return cellC > c.AirC
            && CellTemperature.At(c.AirC, c.IrradianceWPerM2 + 1, c.WindMPerS, c.Mount, c.NoctC) > cellC
            && CellTemperature.At(c.AirC, c.IrradianceWPerM2, c.WindMPerS + 0.1, c.Mount, c.NoctC) < cellC;
    });

    [Fact]
    public void Less_air_behind_is_hotter() => Cases.Sample(c =>
    {
        double On(MountKind mount) => CellTemperature.At(c.AirC, c.IrradianceWPerM2, c.WindMPerS, mount, c.NoctC);
        return On(MountKind.OpenRack) < On(MountKind.CloseRoof) && On(MountKind.CloseRoof) < On(MountKind.FlatOnGround);
    });

    [Theory]
    [InlineData(double.NaN, 800, 1, 45.0)]
    [InlineData(20, -1, 1, 45.0)]
    [InlineData(20, 800, -0.1, 45.0)]
    [InlineData(20, double.PositiveInfinity, 1, 45.0)]
    [InlineData(20, 800, 1, 20.0)]
    [InlineData(20, 800, 1, double.NaN)]
    public void What_cannot_be_is_refused(double airC, double irradianceWPerM2, double windMPerS, double noctC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CellTemperature.At(airC, irradianceWPerM2, windMPerS, MountKind.OpenRack, noctC));
}
