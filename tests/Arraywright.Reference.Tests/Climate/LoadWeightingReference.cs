using Arraywright.Climate;

namespace Arraywright.Reference.Tests.Climate;

public class LoadWeightingReference
{
    /// <summary>As public technical pages print it after the Joint Research Centre (Ispra), in one formula. EN 50530 itself was not at hand.</summary>
    [Fact]
    public void The_European_weighting_is_the_published_one()
    {
        Assert.Equal(
            [(5, 0.03), (10, 0.06), (20, 0.13), (30, 0.10), (50, 0.48), (100, 0.20)],
            LoadWeighting.European.Select(level => (100 * level.Fraction, level.EnergyShare)));
        Assert.Equal(1, LoadWeighting.European.Sum(level => level.EnergyShare), 1e-12);
    }
}
