using Arraywright.Electrical;

namespace Arraywright.Testing;

/// <summary>Random circuits of unequal, partly shaded panels with cable.</summary>
public static class RandomArrays
{
    /// <summary>A random circuit of so many panels.</summary>
    public static CircuitTree Tree(Random random, int panels)
    {
        PanelAtWork[] pile = Pile(random, panels);
        return CircuitTree.Of(Wiring(random, 0, panels), name => pile[int.Parse(name)], Wires(random));
    }

    /// <summary>Random copper and contacts.</summary>
    public static WireResistances Wires(Random random) => new(random.NextDouble() * 0.2, random.NextDouble() * 0.05, 0.0005);

    /// <summary>Random panels, named by their index.</summary>
    public static PanelAtWork[] Pile(Random random, int panels) => [.. Enumerable.Range(0, panels).Select(_ => Panel(random))];

    /// <summary>A panel of 33 to 72 cells around a handbook module (54 cells, 200 W), scaled in area, cells and quality; a third of them shaded by group.</summary>
    private static PanelAtWork Panel(Random random)
    {
        double cells = random.Next(33, 73) / 54.0;
        double area = 0.4 + (0.9 * random.NextDouble());
        int groups = random.Next(0, 4);
        bool shaded = random.Next(3) == 0;
        double sun = 0.2 + (0.9 * random.NextDouble());
        DiodeParameters whole = new(8.227 * area * sun, 4.37e-10 * area, 0.335 * cells / area, area / (160.5 * cells), 1.392 * cells);
        DiodeParameters group = whole.OneOf(Math.Max(1, groups));
        return new PanelAtWork(
            [.. Enumerable.Range(0, Math.Max(1, groups)).Select(_ => shaded ? group with { LightCurrentA = group.LightCurrentA * random.NextDouble() } : group)],
            groups == 0 ? BypassDiode.None : BypassDiode.Schottky(8 * area));
    }

    /// <summary>A random tree of the panels from one index up to, not including, another.</summary>
    public static Wiring Wiring(Random random, int from, int to)
    {
        if (to - from == 1)
        {
            return new Wiring.Single(from.ToString());
        }

        int parts = random.Next(2, Math.Min(to - from, 4) + 1);
        int[] cuts = [from, .. Enumerable.Range(from + 1, to - from - 1).OrderBy(_ => random.Next()).Take(parts - 1).Order(), to];
        Wiring[] children = [.. Enumerable.Range(0, parts).Select(i => Wiring(random, cuts[i], cuts[i + 1]))];
        return random.Next(2) == 0 ? Electrical.Wiring.InSeries(children) : Electrical.Wiring.InParallel(children);
    }
}
