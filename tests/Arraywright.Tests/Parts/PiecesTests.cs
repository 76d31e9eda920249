using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Parts;
using CsCheck;
using static Arraywright.Tests.Parts.PartsScene;

namespace Arraywright.Tests.Parts;

/// <summary>Which pieces a wiring has, what each must bear, and what the rules say of it. Arithmetic by hand.</summary>
public sealed class PiecesTests
{
    [Fact]
    public void One_string_has_its_leads_its_run_a_switch_and_an_adapter()
    {
        PartsList list = PartsScene.Of("2*shed");
        Assert.Equal(
            ["PanelLead Plus store/1", "PanelLead Minus store/1", "PanelLead Plus store/2", "PanelLead Minus store/2", "Run Plus store", "Run Minus store", "Switch Both store", "Adapter Both store"],
            list.Pieces.Select(piece => $"{piece.Kind} {piece.Pole} {piece.Place.Id}"));
        Assert.All(list.Pieces, piece => Assert.Equal(1.25 * 6.72, piece.DesignA, 1e-12));
    }

    [Fact]
    public void A_switch_is_the_next_usual_size_over_one_and_a_quarter_of_all_strings()
    {
        // 1.25 × 2 × 6.72 = 16.8 A: the next of 16, 20, 25 is 20 A (common practice).
        Piece breaker = Assert.Single(PartsScene.Of("2*shed | 2*shed").Of(PieceKind.Switch));
        Assert.Equal((16.8, 20.0, 600.0), (Math.Round(breaker.NeededA, 9), breaker.RatingA, breaker.RatingV));
    }

    [Fact]
    public void Four_strings_on_a_15_A_label_need_12_A_fuses_and_bear_back_feed_only_up_to_them()
    {
        // Others: 1.25 × 3 × 6.72 = 25.2 A into 15 A. Window 10.08 < In < 16.128 (IEC 62548): 12 A. The lead must bear 12 A, not 25.2 A.
        PartsList list = PartsScene.Of("2*shed | 2*shed | 2*shed | 2*shed");
        Assert.Equal(["store/1", "store/2", "store/3", "store/4"], list.Of(PieceKind.StringFuse).Select(piece => piece.Place.Id));
        Assert.All(list.Of(PieceKind.StringFuse), fuse => Assert.Equal((12.0, Pole.Plus), (fuse.RatingA, fuse.Pole)));
        Assert.All(list.Of(PieceKind.PanelLead), lead => Assert.Equal(12, lead.DesignA, 1e-9));
    }

    [Fact]
    public void By_the_us_rules_the_fuse_is_the_next_of_240_6_over_156_percent()
    {
        // 1.5625 × 6.72 = 10.5 A: 15 A, which the label still allows.
        Assert.All(PartsScene.Of("2*shed | 2*shed | 2*shed", plan => plan with { Rules = RuleSet.Us }).Of(PieceKind.StringFuse), fuse =>
        {
            Assert.Equal(10.5, fuse.NeededA, 1e-9);
            Assert.Equal(15, fuse.RatingA);
        });
    }

    [Fact]
    public void Where_no_standard_fuse_fits_the_list_stops()
    {
        // 1.5 × 10.41 = 15.615 A is over the 15 A of the label.
        PartsList list = PartsScene.Of("2*barn | 2*barn | 2*barn");
        Assert.Equal(Level.Stop, list.Verdict);
        Assert.All(list.Of(PieceKind.StringFuse), fuse => Assert.Equal((null, Level.Stop), (fuse.RatingA, Assert.Single(fuse.Findings).Level)));
    }

    [Fact]
    public void Two_strings_bear_each_other_without_fuses()
    {
        // 1.25 × 6.72 = 8.4 A into 15 A.
        Assert.Empty(PartsScene.Of("2*shed | 2*shed").Of(PieceKind.StringFuse));
    }

    [Fact]
    public void A_strong_panel_in_a_string_drives_its_current_through_the_weak_ones()
    {
        // 1.25 × 10.41 = 13.0125 A through all of them: the weak panel's bypass diodes carry the rest.
        Assert.All(PartsScene.Of("shed + barn").Of(PieceKind.PanelLead), lead => Assert.Equal(13.0125, lead.DesignA, 1e-9));
    }

    [Fact]
    public void A_block_within_a_string_has_its_own_branch_connectors()
    {
        // Two sheds side by side, in series with a barn: each shed 1.25 × 6.72 = 8.4 A, the block as much as the string, 13.44 A by its own sum.
        PartsList list = PartsScene.Of("barn + (shed | shed)");
        Piece[] branches = list.Of(PieceKind.BranchConnector);
        Assert.Equal(["store/2 Plus", "store/2 Minus"], branches.Select(piece => $"{piece.Place.Id} {piece.Pole}"));
        Assert.All(branches, branch => Assert.Equal(1.25 * 13.44, branch.DesignA, 1e-9));
        Assert.Equal(1.25 * 6.72, list.Of(PieceKind.PanelLead).First(lead => lead.Place.Id == "store/2.1").DesignA, 1e-9);
    }

    [Theory]
    [InlineData(2, new[] { 2 })]
    [InlineData(4, new[] { 4 })]
    [InlineData(5, new[] { 3, 2, 2 })]
    [InlineData(8, new[] { 4, 4, 2 })]
    public void Branches_go_at_most_four_into_one(int branches, int[] ways) => Assert.Equal(ways, BranchStage.For(branches).Select(stage => stage.Ways));

    [Fact]
    public void Every_branch_reaches_the_last_connector_once() => Gen.Int[2, 200].Sample(branches =>
    {
        var stages = BranchStage.For(branches);
        Assert.Equal(Enumerable.Range(1, branches), stages[^1].Gathers);
        Assert.All(stages, stage => Assert.InRange(stage.Ways, 2, 4));

        // Each connector turns as many ways into one: what is left in the end is one.
        Assert.Equal(branches - 1, stages.Sum(stage => stage.Ways - 1));
    });

    [Theory]
    [InlineData(16.8, Level.Go)]
    [InlineData(16.79, Level.Stop)]
    public void A_socket_below_the_design_current_stops(double socketA, Level level)
    {
        // 1.25 × 13.44 = 16.8 A.
        Finding finding = Says(PartsScene.Of("2*shed | 2*shed", input: bare => bare with { SocketA = socketA }), "socket_rating");
        Assert.Equal((level, socketA), (finding.Level, finding.Limit));
    }

    [Fact]
    public void A_socket_that_nobody_rated_is_asked_about_with_the_usual_ratings()
    {
        Finding finding = Says(PartsScene.Of("2*shed | 2*shed", input: bare => bare with { SocketA = null }), "socket_rating");
        Assert.Equal(Level.Ask, finding.Level);
        Assert.Contains("15 to 20 A", finding.Note, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, "shed", Level.Go)]
    [InlineData(null, "2*barn | 2*barn | 2*shed", Level.Ask)]
    [InlineData(30.0, "2*barn | 2*barn | 2*shed", Level.Stop)]
    [InlineData(40.0, "2*barn | 2*barn | 2*shed", Level.Go)]
    public void Connectors_over_the_usual_30_A_are_asked_about_and_over_their_own_rating_stop(double? connectorA, string wiring, Level level)
    {
        // 1.25 × (10.41 + 10.41 + 6.72) = 34.4 A.
        PartsList list = PartsScene.Of(wiring, input: bare => bare with { ConnectorA = connectorA });
        Assert.Equal(level, list.Pieces.SelectMany(piece => piece.Findings).Where(finding => finding.Rule == "connector_rating").Max(finding => finding.Level));
    }

    [Theory]
    [InlineData(null, "2*bull", Level.Go)]
    [InlineData(null, "bull | bull", Level.Go)]
    [InlineData(null, "bull | bull | bull", Level.Ask)]
    [InlineData(34.9, "bull | bull | bull", Level.Ask)]
    [InlineData(35.0, "bull | bull | bull", Level.Go)]
    [InlineData(27.9, "bull | bull | bull", Level.Stop)]
    [InlineData(null, "(bull | bull | bull) + giant", Level.Go)]
    [InlineData(null, "(bull | bull | bull) + bull", Level.Ask)]
    public void A_lead_that_carries_more_than_its_own_panels_current_is_judged(double? connectorA, string wiring, Level level)
    {
        // Bull: 14 A, label's fuse 40 A, so no string fuse. Two beside one: 1.25 × 28 = 35 A back into it, 28 A by the labels alone; usual
        // connectors bear 30 A. In a row, and with one beside it, its lead carries its own 1.25 × 14 = 17.5 A. Three in a block drive
        // 1.25 × 42 = 52.5 A through what stands in series with them: a giant of 42 A gives that itself, a bull does not; within the block
        // 35 A come back through each, which is asked about as well unless the connectors are stated.
        PanelStock bull = Fused(Stock("bull", 45, 14, 37.6, 13.3, 20), 40);
        PanelStock giant = bull with { Panel = bull.Panel with { Name = "giant", ShortCircuitA = 42, MaximumPowerA = Sourced.Given(39.9), PowerW = Sourced.Given(1500.0) } };
        PartsList list = PartsScene.Of(
            wiring,
            plan => plan with { Panels = [bull, giant] },
            bare => bare with { ConnectorA = connectorA });
        Finding[] said = [.. list.Of(PieceKind.PanelLead).Where(piece => level != Level.Go || piece.Panel == "giant" || !wiring.Contains("giant", StringComparison.Ordinal)).SelectMany(piece => piece.Findings)];
        Assert.Equal(level, said.Select(finding => finding.Level).DefaultIfEmpty(Level.Go).Max());
        Assert.All(said, finding => Assert.Equal("panel_lead", finding.Rule));
        Assert.True(list.Verdict >= level);
    }

    [Fact]
    public void What_leads_bear_is_asked_about_with_the_way_to_find_it_out()
    {
        Finding finding = PartsScene.Of("bull | bull | bull", plan => plan with { Panels = [Fused(Stock("bull", 45, 14, 37.6, 13.3, 3), 40)] }, bare => bare with { ConnectorA = null })
            .Of(PieceKind.PanelLead)[0].Findings.Single();
        Assert.Equal((35.0, 30.0), (Math.Round(finding.Value, 9), finding.Limit));
        Assert.Contains("Read the rating on the connectors", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void The_leads_of_a_panel_in_a_row_bear_its_current_by_its_label_whatever_its_terminals_would_by_the_us_rules()
    {
        // 1.25 × 14 = 17.5 A; the label's largest series fuse 25 A vouches for lead and connector.
        PartsList list = PartsScene.Of("2*bull", plan => plan with { Rules = RuleSet.Us, Panels = [Fused(Stock("bull", 45, 14, 37.6, 13.3, 2), 25)] });
        Assert.All(list.Of(PieceKind.PanelLead), lead =>
        {
            Assert.True(lead.RatingA >= 25);
            Assert.Empty(lead.Findings);
        });
    }

    [Theory]
    [InlineData(2.08, Level.Stop, 15)]
    [InlineData(3.31, Level.Stop, 20)]
    [InlineData(4, Level.Stop, 20)]
    [InlineData(5.26, Level.Go, 30)]
    [InlineData(6, Level.Go, 30)]
    public void By_the_rules_us_thin_cable_has_a_largest_fuse_of_its_own(double stringMm2, Level level, double mostA)
    {
        // 1.5625 × 14 = 21.9 A: a fuse of 25 A. NEC 240.4(D), from memory: 14 AWG 15 A, 12 AWG 20 A, 10 AWG 30 A; 4 mm² is thinner than 10 AWG.
        Finding finding = Assert.Single(ThreeBulls(RuleSet.Us, Sourced.Given(stringMm2)).Of(PieceKind.StringFuse)[0].Findings, finding => finding.Title.Contains("may have before it", StringComparison.Ordinal));
        Assert.Equal((level, 25, mostA), (finding.Level, finding.Value, finding.Limit!.Value));
    }

    [Theory]
    [InlineData(RuleSet.Us, 8.37)]
    [InlineData(RuleSet.Iec, 2.5)]
    public void Thick_cable_has_none_and_the_rules_iec_know_none(RuleSet rules, double stringMm2) =>
        Assert.DoesNotContain(ThreeBulls(rules, Sourced.Given(stringMm2)).Of(PieceKind.StringFuse)[0].Findings, finding => finding.Title.Contains("may have before it", StringComparison.Ordinal));

    [Fact]
    public void A_string_cable_whose_size_is_open_is_thick_enough_for_its_fuse()
    {
        PartsList list = ThreeBulls(RuleSet.Us, Sourced.Assumed(4.0, "open"));
        Assert.Equal(25, list.Of(PieceKind.StringFuse)[0].RatingA);
        Assert.True(list.Plan.Cable.StringAreaMm2.Value >= 5.25);
        Assert.All(list.Of(PieceKind.StringFuse)[0].Findings, finding => Assert.Equal(Level.Go, finding.Level));
    }

    private static PartsList ThreeBulls(RuleSet rules, Sourced<double> stringMm2) => PartsScene.Of("bull | bull | bull", plan => plan with
    {
        Rules = rules,
        Panels = [Fused(Stock("bull", 45, 14, 37.6, 13.3, 3), 30)],
        Cable = PartsScene.Copper with { AreaMm2 = stringMm2.Origin == Origin.Given ? Sourced.Given(25.0) : Sourced.Assumed(4.0, "open"), StringLengthM = Sourced.Given(2.0), StringAreaMm2 = stringMm2 },
        Assumed = [new Assumption(Cable.SizeName, "4 mm2", "open")],
    });

    private static PanelStock Fused(PanelStock stock, double fuseA) => stock with { Panel = stock.Panel with { MaxSeriesFuseA = fuseA } };

    [Fact]
    public void A_cable_too_thin_for_the_heat_stops_and_names_the_size_that_does()
    {
        // 2.5 mm² in a pair: 33 A × √((120 − 95)/60) = 21.3 A; 3 × 6.72 × 1.25 = 25.2 A. 4 mm²: 44 A × 0.6455 = 28.4 A.
        Finding finding = PartsScene.Of("2*shed | 2*shed | 2*shed", plan => plan with { Rules = RuleSet.Iec, Cable = Copper with { AreaMm2 = Sourced.Given(2.5), AmbientC = 95 } })
            .Of(PieceKind.Run)[0].Findings.First(found => found.Rule == "conductor_ampacity");
        Assert.Equal(Level.Stop, finding.Level);
        Assert.Equal(33 * Math.Sqrt(25.0 / 60), finding.Limit!.Value, 1e-9);
        Assert.Contains("4 mm²", finding.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_finding_is_called_like_a_rule_and_is_no_worse_than_its_card()
    {
        PartsList list = PartsScene.Of("2*barn | 2*barn | 2*barn", input: bare => bare with { SocketA = 5, ConnectorA = 5 });
        Assert.All(list.Pieces.SelectMany(piece => piece.Findings), finding =>
        {
            var card = Assert.Single(PartRules.All, rule => rule.Card.Name == finding.Rule).Card;
            Assert.InRange(finding.Level, Level.Go, card.Worst);
            Assert.NotEqual("", finding.Working);
            Assert.NotEqual("", finding.Source);
        });
    }

    private static Finding Says(PartsList list, string rule) => Assert.Single(list.Pieces.SelectMany(piece => piece.Findings), finding => finding.Rule == rule);
}
