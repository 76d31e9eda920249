using Arraywright.Growing;
using CsCheck;

namespace Arraywright.Tests.Growing;

public sealed class DiminishingReturnTests
{
    /// <summary>Curves and answers by hand: with a share of a quarter.</summary>
    [Theory]
    [InlineData(new[] { 100.0, 160, 190, 205, 212 }, 3, 60, 7, 4)] // 60, 30, 15 (a quarter is enough), 7
    [InlineData(new[] { 100.0, 100, 220, 220, 220 }, 2, 60, 0, null)] // one adds nothing, two complete a string
    [InlineData(new[] { 100.0, 100, 220, 230, 270 }, 4, 60, 0, null)] // 25 each by the second pair, not 10 and 40
    [InlineData(new[] { 100.0, 100, 100 }, 0, 0, 0, null)]
    [InlineData(new[] { 100.0 }, 0, 0, 0, null)]
    [InlineData(new[] { 100.0, 101, 102 }, 0, 1, 1, 1)] // next to nothing from the start
    public void It_stops_where_a_panel_adds_less_than_the_share(double[] kWh, int more, double first, double next, int? nextMore) =>
        Assert.Equal(new DiminishingReturn(more, first, next, nextMore), DiminishingReturn.Of(kWh, 0.25, 5));

    [Fact]
    public void On_a_concave_curve_it_is_the_first_panel_that_adds_too_little() => Gen.Double[1, 100].Array[1, 12].Select(Gen.Double[0.05, 1]).Sample((gains, share) =>
    {
        Array.Sort(gains, (one, other) => other.CompareTo(one));
        double[] kWh = [0, .. gains.Select((_, i) => gains.Take(i + 1).Sum())];
        int expected = gains.TakeWhile(gain => gain >= share * gains[0] * (1 + 1e-9)).Count();
        int generous = gains.TakeWhile(gain => gain >= share * gains[0] * (1 - 1e-9)).Count();
        Assert.InRange(DiminishingReturn.Of(kWh, share, 0).More, expected, generous);
    });
}
