using Arraywright.Electrical;
using Arraywright.Energy;
using CsCheck;

namespace Arraywright.Tests.Energy;

public sealed class PanelTopsTests
{
    private static readonly Gen<DiodeParameters> Panels = Gen.Select(
        Gen.Double[0, 15], Gen.Double[-12, -6], Gen.Double[0.05, 1], Gen.Double[1e-5, 0.02], Gen.Double[0.5, 3])
        .Select((light, saturation, series, shunt, ideality) => new DiodeParameters(light, Math.Pow(10, saturation), series, shunt, ideality));

    /// <summary>Two routes: many panels at once against <see cref="DiodeCurve"/>, one at a time.</summary>
    [Fact]
    public void Each_panel_has_its_own_top() =>
        Panels.Array[1, 9].Array[1, 6].Sample(steps =>
        {
            PanelTops tops = new(9);
            foreach (DiodeParameters[] panels in steps)
            {
                for (int i = 0; i < panels.Length; i++)
                {
                    tops.Set(i, panels[i]);
                }

                tops.Solve();
                for (int i = 0; i < panels.Length; i++)
                {
                    (double voltageV, double currentA) = DiodeCurve.MaximumPower(panels[i]);
                    Assert.Equal(voltageV * currentA, tops.PowerW(i), 1e-9 * (1 + (voltageV * currentA)));
                }
            }
        }, iter: 500);

    [Fact]
    public void The_neighbours_in_a_register_do_not_move_a_figure()
    {
        DiodeParameters panel = new(6, 1e-9, 0.3, 0.003, 1.4);
        PanelTops alone = new(1);
        alone.Set(0, panel);
        alone.Solve();
        PanelTops among = new(3);
        among.Set(0, panel);
        among.Set(1, new DiodeParameters(0.002, 1e-7, 1, 0.01, 2.5));
        among.Set(2, new DiodeParameters(14, 1e-12, 0.05, 1e-5, 0.6));
        among.Solve();
        Assert.Equal(alone.PowerW(0), among.PowerW(0));
    }

    [Fact]
    public void In_the_dark_there_is_no_power()
    {
        PanelTops tops = new(1);
        tops.Set(0, new DiodeParameters(0, 1e-9, 0.3, 0.003, 1.4));
        tops.Solve();
        Assert.Equal(0, tops.PowerW(0));
    }
}
