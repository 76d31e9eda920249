using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using static Arraywright.Testing.LimitsScene;

namespace Arraywright.Tests.Limits;

/// <summary>The letter: figures of this plan (two strings of two: 45.8 V, 13.44 A, 12.7 A, 480 W), one meaning a question.</summary>
public sealed class MakerLetterTests
{
    private const string Text = "2*shed-120 | 2*shed-120";
    private static readonly Wiring TwoByTwo = Side(Row(2, "shed-120"), Row(2, "shed-120"));

    private static string Flat(string? text) => string.Join(' ', (text ?? "").Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static (string Letter, string Fields) Write(RuleContext context, params Finding[] ofUnit)
    {
        Finding[] findings = [.. DesignRules.Judge(context), .. ofUnit];
        return (Flat(MakerLetter.For(context, Text, findings)), MakerLetter.WhereTheAnswerGoes(context, findings) ?? "");
    }

    [Fact]
    public void Nothing_to_ask_gives_no_letter_and_no_fields()
    {
        RuleContext context = TwoByTwo.On(Input(60) with { RatedCurrent = Limit(20), MaxPower = Limit(500) });
        Assert.Null(MakerLetter.For(context, Text, DesignRules.Judge(context)));
        Assert.Null(MakerLetter.WhereTheAnswerGoes(context, DesignRules.Judge(context)));
    }

    [Fact]
    public void A_printed_current_of_unknown_meaning_is_asked_apart()
    {
        (string letter, string fields) = Write(TwoByTwo.On(Input(60) with { RatedCurrent = Limit(10) }));
        Assert.Contains("marked 10 A. Which current is meant: (a) the most the input draws by itself, or (b) the highest short-circuit current", letter, StringComparison.Ordinal);
        Assert.Contains("May an array with a short-circuit current of 13.44 A (sum of the labels at 1000 W/m², cells at 25 °C)", letter, StringComparison.Ordinal);
        Assert.Contains("In strong sun (1250 W/m²) the same array can offer 16.8 A", letter, StringComparison.Ordinal);
        Assert.Contains("At full power the array offers 12.7 A. Does the input by itself hold down the current", letter, StringComparison.Ordinal);
        Assert.Contains("warranty", letter, StringComparison.Ordinal);
        Assert.Contains(Text, letter, StringComparison.Ordinal);
        Assert.DoesNotContain("stated at", letter, StringComparison.Ordinal);
        Assert.Contains("in place of rated_current: 10 A", fields, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fields_are_lines_of_the_plan_file()
    {
        (_, string fields) = Write(TwoByTwo.On(Input(60) with { MaxCurrent = Limit(10) }));
        Assert.EndsWith(
            """
            inputs:
              - name: store-a
                max_current:  # what the input draws at most by itself
                  value: 10 A
                  evidence: maker
                  note: letter of <date>, "<their words>"
                  exceed: ... %  # leave out unless they allow a percentage above it
                max_short_circuit_current:  # what the array may offer at most
                  value: ... A
                  evidence: maker
                  note: letter of <date>, "<their words>"

            """.ReplaceLineEndings("\n"),
            fields,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Power_is_asked_with_the_word_that_says_which_power()
    {
        (string letter, string fields) = Write(TwoByTwo.On(Input(60) with { RatedCurrent = Limit(20), MaxPower = Limit(400) }));
        Assert.Contains("stated at 400 W; the labels of our panels add up to 480 W.", letter, StringComparison.Ordinal);
        Assert.Contains("the watts on the panels' labels, or the watts the input draws", letter, StringComparison.Ordinal);
        Assert.DoesNotContain("Which current", letter, StringComparison.Ordinal);
        Assert.Contains("    max_power:", fields, StringComparison.Ordinal);
        Assert.DoesNotContain("max_current", fields, StringComparison.Ordinal);
    }

    [Fact]
    public void An_input_of_which_nothing_is_known_is_asked_everything()
    {
        (string letter, _) = Write(TwoByTwo.On(Input(60)));
        Assert.Contains("We find no current stated for this input.", letter, StringComparison.Ordinal);
        Assert.Contains("We find no power stated for this input; the labels of our panels add up to 480 W.", letter, StringComparison.Ordinal);
    }

    [Fact]
    public void The_power_of_a_whole_unit_is_asked_for_the_unit()
    {
        ChargingUnit unit = new("barn", Limit(500), null);
        RuleContext context = TwoByTwo.On(Input(60) with { RatedCurrent = Limit(20), Unit = "barn" }) with { Unit = unit };
        Finding finding = Assert.Single(UnitRules.Judge(unit, [("store-a", TwoByTwo), ("store-b", One("shed-120"))], context.Stock));
        (string letter, string fields) = Write(context, finding);
        Assert.Contains("The whole unit (\"barn\") is stated at 500 W for all its solar inputs together; the labels of the panels on all of them add up to 600 W.", letter, StringComparison.Ordinal);
        Assert.Contains("units:\n  - name: barn\n    max_power:", fields, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cold_doubt_asks_what_the_voltage_figure_is_and_where_the_cold_goes()
    {
        // 50.98 V at -14 °C; -20 °C would be 45.8 × (1 + 0.0029 × 45) = 51.8 V over 51 V.
        (string letter, string fields) = Write(TwoByTwo.On(Input(51) with { RatedCurrent = Limit(20), MaxPower = Limit(500) }).Coldest(-14, -20));
        Assert.Contains("Is 51 V the highest open-circuit voltage the input bears at any time", letter, StringComparison.Ordinal);
        Assert.Contains("place:\n  coldest: ... C", fields, StringComparison.Ordinal);
        Assert.Contains("max_voltage: ... V", fields, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_the_panel_maker_knows_goes_into_a_letter_of_its_own()
    {
        Wiring three = Side(One("shed-120"), One("shed-120"), One("shed-120"));
        RuleContext context = three.On(Input(60) with { RatedCurrent = Limit(30), MaxPower = Limit(500) }, Shed with { MaxSeriesFuseA = null });
        (string letter, string fields) = Write(context);
        Assert.StartsWith("Subject: solar panels", letter, StringComparison.Ordinal);
        Assert.Contains("largest series fuse (maximum overcurrent protection rating), in amps, of the panel \"shed-120\" (120 W, open circuit 22.9 V, short circuit 6.72 A)", letter, StringComparison.Ordinal);
        Assert.Contains("panels:\n  - name: shed-120\n    max_series_fuse: ... A", fields, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_finding_that_can_ask_has_a_question()
    {
        RuleContext context = TwoByTwo.On(Input(60), Shed with { MaxSeriesFuseA = null, MaxSystemVoltageV = null, ToleranceFraction = Sourced.Assumed(0.03, "typical") });
        Finding any = DesignRules.Judge(context)[0] with { Level = Level.Ask };
        foreach (string rule in (string[])[.. DesignRules.All.Where(rule => rule.Card.Worst >= Level.Ask && rule.Card.Name is not ("start_voltage" or "stated_parts")).Select(rule => rule.Card.Name), UnitRules.Card.Name])
        {
            Assert.NotNull(MakerLetter.For(context, Text, [any with { Rule = rule }]));
        }
    }

    [Fact]
    public void No_line_is_wider_than_a_mail()
    {
        RuleContext context = TwoByTwo.On(Input(60));
        string letter = MakerLetter.For(context, Text, DesignRules.Judge(context))!;
        Assert.All(letter.Split('\n'), line => Assert.InRange(line.Length, 0, 76));
        Assert.DoesNotContain("\r", letter, StringComparison.Ordinal);
    }
}
