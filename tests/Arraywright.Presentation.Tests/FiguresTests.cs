using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class FiguresTests
{
    [Theory]
    [InlineData(45.8, "V", "45.8 V")]
    [InlineData(6.7249, "A", "6.72 A")]
    [InlineData(359.6, "W", "360 W")]
    [InlineData(-11, "°C", "−11 °C")]
    [InlineData(-0.04, "V", "0.0 V")]
    [InlineData(3.825, "A", "3.83 A")]
    [InlineData(24.975, "A", "24.98 A")]
    [InlineData(15.375, "A", "15.38 A")]
    [InlineData(0.25, "V", "0.3 V")]
    public void A_figure_has_the_digits_of_a_meter_and_its_unit(double value, string unit, string expected) =>
        Assert.Equal(expected, Figures.Of(value, unit));

    [Theory]
    [InlineData(50.04, 50, "50.04 V")]
    [InlineData(49.996, 50, "49.996 V")]
    [InlineData(50, 50, "50.0 V")]
    [InlineData(47.11, 50, "47.1 V")]
    public void A_figure_over_its_limit_never_looks_equal_to_it(double value, double limit, string expected) =>
        Assert.Equal(expected, Figures.Against(value, limit, "V"));

    [Theory]
    [InlineData(999_999, "999,999")]
    [InlineData(12, "12")]
    [InlineData(3.24e9, "3.2 × 10^9")]
    [InlineData(1e22, "1.0 × 10^22")]
    public void A_large_count_is_told_by_its_power_of_ten(double count, string expected) => Assert.Equal(expected, Figures.Count(count));

    [Theory]
    [InlineData(9.94, "9.9 %")]
    [InlineData(9.96, "10 %")]
    [InlineData(34.4, "34 %")]
    public void A_percentage_is_fine_only_where_it_is_small(double percent, string expected) => Assert.Equal(expected, Figures.Percent(percent));
}
