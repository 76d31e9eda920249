using Arraywright.Gear;
using Arraywright.Limits.Conductors;
using static Arraywright.Limits.Conductors.AmpacityTables;

namespace Arraywright.Reference.Tests.Parts;

/// <summary>Every value of the conductor tables against a second copy, typed by hand.</summary>
public sealed class CopperTableTests
{
    private const double KmPerKft = 0.3048;

    public static TheoryData<string, double, double, double, double> Ampacity => CopperTables.Ampacity;

    public static TheoryData<string, double, double, double> Gauge => CopperTables.Gauge;

    public static TheoryData<double, double> Class5 => CopperTables.Class5;

    public static TheoryData<double, double, double, double> SolarCable => CopperTables.SolarCable;

    public static TheoryData<double, double, double, double> Ambient => CopperTables.Ambient;

    [Theory]
    [MemberData(nameof(Ampacity))]
    public void Nec_310_16_and_310_17(string gauge, double at60, double at75, double at90, double freeAir)
    {
        double mm2 = Size(gauge).AreaMm2;
        Assert.Equal((at60, at75, at90, freeAir), (OfA(Column.Us60, mm2), OfA(Column.Us75, mm2), OfA(Column.Us90, mm2), OfA(Column.UsFreeAir90, mm2)));
    }

    [Theory]
    [MemberData(nameof(Gauge))]
    public void Nec_chapter_9_table_8_and_the_areas_of_the_gauges(string gauge, double mm2, double uncoated, double coated)
    {
        Assert.Equal(mm2, Size(gauge).AreaMm2, 6e-5 * mm2);
        Assert.Equal(uncoated, CopperResistance.PerMetreOhm(mm2, CableClass.Fixed, 75) * 1000 * KmPerKft, 1e-9);
        Assert.Equal(coated, CopperResistance.PerMetreOhm(mm2, CableClass.Flexible, 75) * 1000 * KmPerKft, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Class5))]
    public void Iec_60228_class_5_tinned(double mm2, double ohmPerKm) =>
        Assert.Equal(ohmPerKm, CopperResistance.PerMetreOhm(mm2, CableClass.Flexible, 20) * 1000, 1e-9);

    [Theory]
    [MemberData(nameof(SolarCable))]
    public void En_50618_table_A_3(double mm2, double freeAir, double surface, double pair) =>
        Assert.Equal((freeAir, surface, pair), (OfA(Column.IecFreeAir, mm2), OfA(Column.IecSurface, mm2), OfA(Column.IecPair, mm2)));

    [Theory]
    [MemberData(nameof(Ambient))]
    public void Nec_310_15_B_1_at_the_hot_edge_and_just_over_the_cold_one(double edgeC, double at60, double at75, double at90)
    {
        foreach (double ambientC in new[] { edgeC, edgeC - 4, edgeC - 4.9 })
        {
            Assert.Equal((at60, at75, at90), (Correction.UsAmbient(60, ambientC), Correction.UsAmbient(75, ambientC), Correction.UsAmbient(90, ambientC)));
        }
    }

    [Theory]
    [InlineData(3, 1.00)]
    [InlineData(4, 0.80)]
    [InlineData(6, 0.80)]
    [InlineData(7, 0.70)]
    [InlineData(9, 0.70)]
    [InlineData(10, 0.50)]
    [InlineData(20, 0.50)]
    [InlineData(21, 0.45)]
    [InlineData(30, 0.45)]
    [InlineData(31, 0.40)]
    [InlineData(40, 0.40)]
    [InlineData(41, 0.35)]
    public void Nec_310_15_C_1(int wires, double factor) => Assert.Equal(factor, Correction.UsBundle(wires));

    [Fact]
    public void Iec_60364_5_52_table_B_52_17() =>
        Assert.Equal([1.00, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.70, 0.70], Enumerable.Range(1, 10).Select(Correction.IecGrouping));

    [Theory]
    [InlineData(60, 1.00)]
    [InlineData(70, 0.91)]
    [InlineData(80, 0.82)]
    [InlineData(90, 0.71)]
    [InlineData(100, 0.58)]
    [InlineData(110, 0.41)]
    public void Heat_around_solar_cable_goes_by_the_lower_of_two_published_columns(double ambientC, double factor) =>
        Assert.Equal(factor, Correction.IecAmbient(120, 60, ambientC), 0.005);

    [Theory]
    [InlineData("4 mm²", "10 AWG")]
    [InlineData("6 mm²", "8 AWG")]
    [InlineData("12 AWG", "4 mm²")]
    [InlineData("10 AWG", "6 mm²")]
    [InlineData("2 AWG", "35 mm²")]
    public void The_other_name_is_the_smallest_that_is_no_thinner(string size, string other) => Assert.Equal(other, Size(size).Substitute!.Name);

    private static ConductorSize Size(string name) => ConductorSize.Gauges.Concat(ConductorSize.Metric).Single(size => size.Name == name);
}
