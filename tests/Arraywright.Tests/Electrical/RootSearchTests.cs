using Arraywright.Electrical;
using CsCheck;

namespace Arraywright.Tests.Electrical;

public sealed class RootSearchTests
{
    [Fact]
    public void A_known_root_is_found_to_the_last_digits() =>
        Assert.Equal(Math.Sqrt(2), RootSearch.Between(x => (x * x) - 2, 0, 2), 5e-16);

    [Theory]
    [InlineData(1, 3)]
    [InlineData(-3, 1)]
    public void A_root_at_an_end_is_that_end(double lo, double hi) =>
        Assert.Equal(1, RootSearch.Between(x => x - 1, lo, hi));

    [Fact]
    public void A_step_is_closed_in_on_from_both_sides() =>
        Assert.Equal(0.3, RootSearch.Between(x => x < 0.3 ? -1 : 1e9, 0, 1), 1e-15);

    [Fact]
    public void Steep_and_flat_functions_take_few_evaluations() =>
        Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[1, 300]).Sample(
            (root, steepness) =>
            {
                int evaluations = 0;
                double found = RootSearch.Between(
                    x =>
                    {
                        evaluations++;
                        return Math.Exp(steepness * (x - root)) - 1;
                    },
                    0,
                    1);
                Assert.Equal(root, found, 1e-14);

                // Halving alone would need about 55.
                Assert.InRange(evaluations, 2, 50);
            },
            iter: 2000);
}
