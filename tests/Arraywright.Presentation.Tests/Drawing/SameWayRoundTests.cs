using System.Text.RegularExpressions;
using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Parts.Connecting;
using Arraywright.Presentation.Drawing;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests.Drawing;

/// <summary>Words, the picture in characters and the drawings have a string the same way round.</summary>
public sealed partial class SameWayRoundTests
{
    [Fact]
    public void Words_join_the_leads_that_the_drawings_join()
    {
        Wiring wiring = SampleSheets.Parse("a + b");
        Hookup hookup = SampleSheets.Of(false, wiring).Hookups[0];
        Match drawn = DrawnJoint().Match(hookup.Joints[0].From + " into " + hookup.Joints[0].Into);
        Assert.True(drawn.Success, hookup.Joints[0].ToString());
        (string from, string into) = (Sign(drawn.Groups["from"].Value), Sign(drawn.Groups["into"].Value));
        ConnectedInput one = new(new DcInput { Name = "in", MaxVoltageV = 60 }, hookup.Assignment with { Wiring = wiring }, []);
        Assert.Contains($"the {from} lead of each into the {into} lead of the next", string.Concat(StepWords.Joining(one)), StringComparison.Ordinal);
        Assert.StartsWith($"The {from} lead of each plugs into the {into} lead of the next", WiringWords.HowToJoin(wiring), StringComparison.Ordinal);
        Assert.StartsWith($"Within a string {from} plugs into the next {into};", WiringWords.HowToJoin(SampleSheets.Parse("a + b | a + b")), StringComparison.Ordinal);

        StringWriter picture = new();
        WiringPicture.Write(picture, wiring, [], "in", TerminalStyle.Plain);
        Assert.Contains($"a {from}]──[{into} b", picture.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_ends_of_a_string_are_those_that_the_drawings_lead_to_the_unit()
    {
        Wiring wiring = SampleSheets.Parse("a + b + c");
        Hookup hookup = SampleSheets.Of(false, wiring).Hookups[0];
        Assert.Equal(("plus of panel 1", "minus of panel 3"), (hookup.Array.Plus[0].Joint.From, hookup.Array.Minus[0].Joint.From));
        Assert.Contains("+ of the first and − of the last, go to the input", WiringWords.HowToJoin(wiring), StringComparison.Ordinal);
        ConnectedInput one = new(new DcInput { Name = "in", MaxVoltageV = 60 }, hookup.Assignment with { Wiring = wiring }, []);
        Assert.Contains("The + lead of the first and the − lead of the last are the ends of the string", string.Concat(StepWords.Joining(one)), StringComparison.Ordinal);
    }

    private static string Sign(string pole) => pole == "plus" ? "+" : "−";

    [GeneratedRegex("^(?<from>plus|minus) of panel 1 into (?<into>plus|minus) of panel 2$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex DrawnJoint();
}
