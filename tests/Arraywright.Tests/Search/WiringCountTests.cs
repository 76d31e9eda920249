using Arraywright.Search;

namespace Arraywright.Tests.Search;

public sealed class WiringCountTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 5)]
    [InlineData(3, 15)]
    [InlineData(4, 52)]
    [InlineData(7, 4140)]
    [InlineData(8, 21147)]
    [InlineData(10, 678570)]
    [InlineData(12, 27644437)]
    public void Different_panels_on_one_input_count_as_Bell_numbers(int panels, double expected)
    {
        // Partial partitions of a set of n are the partitions of a set of n + 1: Bell numbers, OEIS A000110.
        Assert.Equal(expected, WiringCount.Family([.. Enumerable.Repeat(1, panels)], WiringFamily.Strings, 1, new Effort(long.MaxValue, CancellationToken.None)));
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 4)]
    [InlineData(3, 7)]
    [InlineData(4, 12)]
    [InlineData(5, 19)]
    [InlineData(10, 139)]
    public void Equal_panels_on_one_input_count_as_sums_of_partition_numbers(int panels, double expected)
    {
        // 1 + p(1) + … + p(n), OEIS A000070.
        Assert.Equal(expected, WiringCount.Family([panels], WiringFamily.Strings, 1, new Effort(long.MaxValue, CancellationToken.None)));
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 11)]
    [InlineData(3, 47)]
    public void Two_inputs_tell_their_strings_apart(int panels, double expected)
    {
        // By hand: sum over panels used k of C(n, k) times the sum over strings j of S(k, j)·2^j, S the Stirling numbers of the second kind.
        // n = 3: 1 + 3·2 + 3·(2 + 4) + (2 + 3·4 + 8) = 47.
        Assert.Equal(expected, WiringCount.Family([.. Enumerable.Repeat(1, panels)], WiringFamily.Strings, 2, new Effort(long.MaxValue, CancellationToken.None)));
    }

    [Fact]
    public void Two_pairs_of_equal_panels_count_as_bipartite_partitions()
    {
        // Sum of the bipartite partition numbers p(i, j), i, j ≤ 2 (OEIS A054225): 1 + 2·1 + 2·2 + 2 + 2·4 + 9.
        Assert.Equal(26, WiringCount.Family([2, 2], WiringFamily.Strings, 1, new Effort(long.MaxValue, CancellationToken.None)));
    }

    [Fact]
    public void Three_panels_make_three_more_wirings_with_blocks()
    {
        // By hand: beside the 15 of strings only, a panel in series with the other two side by side, 3 ways.
        Assert.Equal(18, WiringCount.Family([1, 1, 1], WiringFamily.StringsOfBlocks, 1, new Effort(long.MaxValue, CancellationToken.None)));
    }
}
