using Arraywright.Climate;
using Arraywright.Files.Weather;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>
/// What the check of a weather file's clock says of real years (TMY3). Held against the sun by an independent script in 2026-11: at six places each month's bright sun
/// has its middle within 16 minutes of the sun's noon; in Honolulu nine months are 54 to 67 minutes early and the other three are right. That is no cloud:
/// there the first and last light are early too.
/// </summary>
public sealed class WeatherClockAgainstRealYears
{
    [Fact]
    public void Nine_months_of_honolulu_are_said_to_be_an_hour_early()
    {
        string told = Assert.Single(Load("USA_HI").Repairs);
        Assert.StartsWith("The sun of January, April, May, June, July, August, October, November, December is ", told, StringComparison.Ordinal);
        Assert.EndsWith(" minutes early (first in line 9), as where stamps are the beginnings of steps; it was taken as it stands.", told, StringComparison.Ordinal);
        Assert.InRange(int.Parse(told.Split(" is ")[1].Split(' ')[0]), 55, 65);
    }

    [Theory]
    [InlineData("USA_AK")]
    [InlineData("USA_VT")]
    [InlineData("USA_IL")]
    [InlineData("USA_CO")]
    [InlineData("USA_CA")]
    [InlineData("USA_AZ")]
    public void Of_the_other_files_nothing_is_said(string name) => Assert.Empty(Load(name).Repairs);

    private static WeatherYear Load(string name) => WeatherFile.Load(Assert.Single(Directory.GetFiles(SharedFiles.PathOrSkip("weather"), name + "*.epw"))).Year!;
}
