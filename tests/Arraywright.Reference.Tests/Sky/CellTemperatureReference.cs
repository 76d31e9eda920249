using Arraywright.Sky;

namespace Arraywright.Reference.Tests.Sky;

/// <summary>Against the reference pack, section 7: coefficients of King et al., SAND2004-3535 (2004), table 1, worked at 1000 W/m², 20 °C air, 1 m/s.</summary>
public class CellTemperatureReference
{
    public static TheoryData<string, SandiaMounting, double, double> Table => new()
    {
        { "glass/cell/glass, open rack", SandiaMounting.OpenRackGlass, 49.323, 52.323 },
        { "glass/cell/glass, close roof mount", SandiaMounting.CloseRoofGlass, 68.456, 69.456 },
        { "glass/cell/polymer sheet, open rack", SandiaMounting.OpenRackSheet, 46.384, 49.384 },
        { "glass/cell/polymer sheet, insulated back", SandiaMounting.InsulatedSheet, 77.527, 77.527 },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Backs_and_cells_are_as_hot_as_the_table_says(string row, SandiaMounting mounting, double backC, double cellC)
    {
        Assert.Equal(backC, 20 + mounting.BackRiseK(1000, 1), 0.0006);
        Assert.Equal(cellC, 20 + mounting.CellRiseK(1000, 1), 0.0006);
        Assert.NotEmpty(row);
    }

    [Theory]
    [InlineData(MountKind.OpenRack, 49.384)]
    [InlineData(MountKind.CloseRoof, 69.456)]
    [InlineData(MountKind.FlatOnGround, 77.527)]
    public void Each_mount_takes_its_row(MountKind mount, double cellC) =>
        Assert.Equal(cellC, CellTemperature.At(20, 1000, 1, mount, null), 0.0006);

    /// <summary>NOCT 45 °C, 1000 W/m², 20 °C air: 20 + 25/800·1000 = 51.25 °C.</summary>
    [Fact]
    public void A_label_with_noct_on_an_open_rack_follows_it() =>
        Assert.Equal(51.25, CellTemperature.At(20, 1000, 1, MountKind.OpenRack, 45), 1e-9);
}
