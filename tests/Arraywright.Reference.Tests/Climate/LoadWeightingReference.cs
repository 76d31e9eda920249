using Arraywright.Climate;

namespace Arraywright.Reference.Tests.Climate;

/// <summary>
/// The two weightings as public technical pages print them, both in one formula each: the European one after the Joint Research Centre (Ispra),
/// the CEC one after Sandia's inverter test guideline of 2005, p. 17. EN 50530 itself was not at hand.
/// </summary>
public class LoadWeightingReference
{
    [Fact]
    public void The_European_weighting_is_the_published_one() => Matches(
        LoadWeighting.European, [(5, 0.03), (10, 0.06), (20, 0.13), (30, 0.10), (50, 0.48), (100, 0.20)]);

    [Fact]
    public void The_Cec_weighting_is_the_published_one() => Matches(
        LoadWeighting.Cec, [(10, 0.04), (20, 0.05), (30, 0.12), (50, 0.21), (75, 0.53), (100, 0.05)]);

    private static void Matches(LoadWeighting weighting, (double LoadPercent, double Weight)[] published)
    {
        Assert.Equal(published, weighting.Levels.Select(level => (100 * level.Fraction, level.EnergyShare)));
        Assert.Equal(1, weighting.Levels.Sum(level => level.EnergyShare), 1e-12);
    }
}
