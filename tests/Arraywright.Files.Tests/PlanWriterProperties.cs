using Arraywright.Files.Quantities;
using CsCheck;

namespace Arraywright.Files.Tests;

public sealed class PlanWriterProperties
{
    [Fact]
    public void A_plan_written_and_read_again_is_the_same_plan() => PlanTexts.Any.Sample(
        text =>
        {
            Plan plan = Plans.Read(text);
            string written = PlanWriter.Write(plan);
            Plan again = Plans.Read(written);
            Assert.Equal(Dump.Of(plan), Dump.Of(again));
            Assert.Equal(written, PlanWriter.Write(again));
        },
        iter: 300);

    [Fact]
    public void A_written_number_reads_back_to_the_same_double_at_any_shift() => Gen.Double.Where(double.IsFinite).Select(Gen.Int[-3, 3]).Sample((value, shift) =>
    {
        string written = Decimals.Shifted(value, shift);
        Assert.DoesNotContain("E", written, StringComparison.Ordinal);
        Assert.Equal(value, double.Parse(written + "e" + -shift, System.Globalization.CultureInfo.InvariantCulture));
    });
}
