using Arraywright.Electrical;
using Arraywright.Gear;
using Arraywright.Limits;
using Arraywright.Limits.Rules;
using Arraywright.Testing;
using CsCheck;

namespace Arraywright.Tests.Limits;

/// <summary>What the search is told ahead of a wiring against what the rules say of it whole.</summary>
public sealed class StringAllowanceProperties
{
    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static readonly Gen<Panel[]> Kinds =
        (from openV in Gen.Double[15, 60]
         from shortA in Gen.Double[1, 24]
         from fuseA in OneOf<double?>(null, null, 10, 15, 25, 30)
         from systemV in OneOf<double?>(null, 70, 150, 600)
         select (openV, shortA, fuseA, systemV)).Array[6].Select(all => all.Select((label, i) => LimitsScene.Shed with
         {
             Name = $"{i}",
             OpenCircuitV = label.openV,
             ShortCircuitA = label.shortA,
             MaximumPowerA = Sourced.Given(label.shortA * 0.93),
             MaxSeriesFuseA = label.fuseA,
             MaxSystemVoltageV = label.systemV,
         }).ToArray());

    [Theory]
    [InlineData(Level.Go)]
    [InlineData(Level.Ask)]
    public void Strings_that_may_stand_beside_each_other_are_those_that_the_rules_let_pass(Level worst) =>
        Gen.Select(Kinds, Gen.Int[0, int.MaxValue - 1], Gen.Int[1, 6]).Sample(
            (kinds, seed, panels) =>
            {
                RuleContext context = WiringText.Canonical(RandomArrays.Wiring(new Random(seed), 0, panels)).On(LimitsScene.Input(1000), kinds);
                double OfferedA(Wiring part) => LabelSums.ShortCircuitA(part, context.Stock);
                double sumA = OfferedA(context.Wiring);
                StringAllowance allowance = new(context, worst);
                bool fits = context.Wiring.Strings.All(part => sumA - OfferedA(part) <= allowance.BesideA(part) + (1e-9 * sumA));
                bool passes = new IRule[] { new BackFeedRule(), new SystemVoltageRule() }.All(rule => rule.Judge(context).All(finding => finding.Level <= worst));

                Assert.Equal(passes, fits);
                if (fits)
                {
                    Assert.All(context.Wiring.Strings, part => Assert.All(part.Panels, name =>
                        Assert.True(sumA - OfferedA(part) <= StringAllowance.BesideA(context.Panel(name), worst) + (1e-9 * sumA))));
                }
            },
            iter: 2000);

    [Fact]
    public void Drawn_amps_that_fit_are_those_that_the_rule_does_not_ask_about() =>
        Gen.Select(Kinds, Gen.Int[0, int.MaxValue - 1], OneOf<double?>(null, 8, 20, 60), OneOf(EvidenceKind.None, EvidenceKind.Label, EvidenceKind.Maker), OneOf(0, 0, 0.3), OneOf<double?>(null, 12, 70)).Sample(
            (kinds, seed, drawnA, kind, exceed, offeredA) =>
            {
                DcInput input = LimitsScene.Input(1000) with
                {
                    MaxCurrent = drawnA is { } drawn ? LimitsScene.Limit(drawn, kind, kind == EvidenceKind.None ? 0 : exceed) : null,
                    MaxShortCircuitCurrent = offeredA is { } offered ? LimitsScene.Limit(offered, EvidenceKind.Label) : null,
                };
                RuleContext context = RandomArrays.Wiring(new Random(seed), 0, 4).On(input, kinds);
                double labelA = LabelSums.MaximumPowerA(context.Wiring, context.Stock);
                context = context with { Physics = context.Physics with { MaximumPowerPoint = (_, _) => (1, labelA, labelA) } };
                if (LabelSums.ShortCircuitA(context.Wiring, context.Stock) <= InputAllowance.ShortCircuitA(input))
                {
                    bool asks = new DrawLimitRule().Judge(context).Any(finding => finding.Level > Level.Go);
                    Assert.Equal(asks, labelA > InputAllowance.MaximumPowerA(input) * (1 + 1e-9));
                }
            },
            iter: 2000);
}
