using Arraywright.Gear;
using Arraywright.Presentation.Terminal;

namespace Arraywright.Presentation.Tests;

public sealed class PartsWordsTests
{
    private static Assignment Assignment { get; } = SampleResults.Go.Designs[0].Assignments[0] with { IscDesignA = 16.8 };

    private static DcInput Input { get; } = new() { Name = "store", MaxVoltageV = 60 };

    [Theory]
    [InlineData("", null, null)]
    [InlineData("A 12 A gPV fuse goes into the + lead of each string.", 12.0, 12.0)]
    [InlineData("gPV fuses go into + leads: 12 A into string 2.", null, 12.0)]
    [InlineData("gPV fuses go into + leads: 15 A into string 1, 12 A into string 2.", 15.0, 12.0)]
    public void Where_fuses_go_is_said(string words, double? firstA, double? secondA) =>
        Assert.Equal(words, PartsWords.Fuses(Assignment with { StringFusesA = [firstA, secondA] }));

    [Theory]
    [InlineData("Connectors, adapter and the unit's socket must bear 16.80 A in strong sun; no rating is stated, so read it on them.", null, null)]
    [InlineData("Connectors must bear 16.80 A in strong sun; no rating is stated, so read it on them.", null, 20.0)]
    [InlineData("The unit's socket and its adapter must bear 16.80 A in strong sun; no rating is stated, so read it on them.", 30.0, null)]
    [InlineData("", 30.0, 20.0)]
    public void What_no_rule_could_judge_is_said_with_the_amps_it_must_bear(string words, double? connectorA, double? socketA) =>
        Assert.Equal(words, PartsWords.MustBear(Input with { ConnectorA = connectorA, SocketA = socketA }, Assignment));

    [Fact]
    public void Where_nothing_is_connected_nothing_must_bear_anything() => Assert.Equal("", PartsWords.MustBear(Input, Assignment with { Wiring = null }));
}
