using System.Globalization;
using Arraywright.Gear;
using Arraywright.Limits.Conductors;
using Arraywright.Reference.Tests.Climate;
using static Arraywright.Limits.Conductors.AmpacityTables;

namespace Arraywright.Reference.Tests.Parts;

/// <summary>The conductor tables against the reference pack itself, read as it is: shared/reference/values.md §2.</summary>
public sealed class ReferencePackTests
{
    [Fact]
    public void Ampacities_of_the_gauges()
    {
        foreach (string[] row in Rows("| AWG | 310.16 60 C", 15))
        {
            double mm2 = ConductorSize.Gauges.Single(size => size.Name == $"{row[0]} AWG").AreaMm2;
            Assert.Equal<double[]>(Numbers(row[1..]), [OfA(Column.Us60, mm2), OfA(Column.Us75, mm2), OfA(Column.Us90, mm2), OfA(Column.UsFreeAir90, mm2)]);
        }
    }

    [Fact]
    public void Areas_and_resistances_of_the_gauges()
    {
        foreach (string[] row in Rows("| AWG | d mm", 15))
        {
            ConductorSize size = ConductorSize.Gauges.Single(size => size.Name == $"{row[0]} AWG");
            double[] numbers = Numbers(row[1..]);
            Assert.Equal(numbers[1], size.AreaMm2, 6e-5 * numbers[1]);
            Assert.Equal(numbers[3], CopperResistance.PerMetreOhm(size.AreaMm2, CableClass.Fixed, 75) * 304.8, 1e-9);
            Assert.Equal(numbers[5], CopperResistance.PerMetreOhm(size.AreaMm2, CableClass.Flexible, 75) * 304.8, 1e-9);
        }
    }

    [Fact]
    public void Resistances_of_class_5_tinned()
    {
        foreach (string[] row in Rows("| mm2 | plain | tinned", 6))
        {
            Assert.Equal(Number(row[2]), CopperResistance.PerMetreOhm(Number(row[0]), CableClass.Flexible, 20) * 1000, 1e-9);
            Assert.Equal(Number(row[6]), CopperResistance.PerMetreOhm(Number(row[4]), CableClass.Flexible, 20) * 1000, 1e-9);
        }
    }

    [Fact]
    public void Ampacities_of_solar_cable()
    {
        foreach (string[] row in Rows("| mm2 | single cable free in air", 9))
        {
            double mm2 = Number(row[0]);
            Assert.Equal<double[]>(Numbers(row[1..]), [OfA(Column.IecFreeAir, mm2), OfA(Column.IecSurface, mm2), OfA(Column.IecPair, mm2)]);
        }
    }

    [Fact]
    public void Corrections_for_heat()
    {
        foreach (string[] row in Rows("| ambient C | 60 C", 16))
        {
            double edgeC = Number(row[0].Split('-', ' ')[^1]);
            Assert.Equal<double[]>(Numbers(row[1..]), [Correction.UsAmbient(60, edgeC), Correction.UsAmbient(75, edgeC), Correction.UsAmbient(90, edgeC)]);
        }
    }

    /// <summary>The cells of the rows under a table's head; a table of another length is not the one we know.</summary>
    private static List<string[]> Rows(string head, int count)
    {
        string[] lines = File.ReadAllLines(SharedFiles.PathOrSkip("reference/values.md"));
        int start = Array.FindIndex(lines, line => line.StartsWith(head, StringComparison.Ordinal));
        Assert.True(start >= 0, $"The pack has no table \"{head}\".");
        List<string[]> rows = [.. lines.Skip(start + 2).TakeWhile(line => line.StartsWith('|')).Select(line => line.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray())];
        Assert.Equal(count, rows.Count);
        return rows;
    }

    private static double[] Numbers(string[] cells) => [.. cells.Select(Number)];

    private static double Number(string cell) => cell == "-" ? 0 : double.Parse(cell, CultureInfo.InvariantCulture);
}
