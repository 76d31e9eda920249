using System.Text.RegularExpressions;
using Arraywright.Electrical;
using Arraywright.Presentation.Terminal;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Presentation.Tests;

public sealed partial class PlanScreenProperties
{
    private static readonly PlanResult[] Samples = [SampleResults.Go, SampleResults.Ask, SampleResults.Stop, SampleResults.TwoInputs];

    [Fact]
    public void No_line_is_wider_than_the_width_whatever_the_wiring() =>
        Gen.Select(Gens.Wiring, Gen.OneOf(Samples), Gen.Int[64, 100]).Sample((wiring, sample, width) =>
        {
            foreach (string line in Page(With(sample, wiring), new TerminalStyle(width, Color: false)).Split('\n'))
            {
                Assert.True(line.Length <= width || !line.TrimStart().Contains(' ', StringComparison.Ordinal), $"{line.Length} > {width}: {line}");
            }
        });

    [Fact]
    public void Colour_adds_nothing_but_escape_sequences() =>
        Gen.Select(Gens.Wiring, Gen.OneOf(Samples)).Sample((wiring, sample) =>
        {
            PlanResult result = With(sample, wiring);
            string colored = Page(result, TerminalStyle.Plain with { Color = true });
            Assert.Contains('\e', colored);
            Assert.Equal(Page(result, TerminalStyle.Plain), Escapes().Replace(colored, ""));
        });

    [Fact]
    public void Every_panel_of_the_wiring_is_named_or_counted_in_words_and_picture() =>
        Gens.Wiring.Sample(wiring =>
        {
            string page = Page(With(SampleResults.Go, wiring), TerminalStyle.Plain);
            foreach (string panel in wiring.Panels)
            {
                Assert.Contains(panel, page, StringComparison.Ordinal);
            }
        });

    private static PlanResult With(PlanResult sample, Wiring wiring)
    {
        Design best = sample.Designs[0];
        Design rewired = best with { Assignments = best.Assignments.SetItem(0, best.Assignments[0] with { Wiring = wiring }) };
        return sample with { Designs = sample.Designs.SetItem(0, rewired) };
    }

    private static string Page(PlanResult result, TerminalStyle style)
    {
        StringWriter writer = new() { NewLine = "\n" };
        new PlanScreen(writer, style).Write(result);
        return writer.ToString();
    }

    [GeneratedRegex("\e\\[[0-9;]*m", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Escapes();
}
