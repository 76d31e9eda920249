using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Limits;
using Arraywright.Limits.Rules;

namespace Arraywright.Parts;

/// <summary>The current that every node of a wiring must be able to carry: its own in strong sun, and what the others may drive back through it.</summary>
internal sealed class DesignCurrents
{
    private readonly RuleContext _context;
    private readonly double _factor;
    private readonly Dictionary<string, double> _forwardA = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _backA = new(StringComparer.Ordinal);

    /// <param name="context">The wiring and its labels.</param>
    /// <param name="fuses">The fuses its strings have: they hold back what other strings send.</param>
    /// <param name="factor">Of the labels' short-circuit currents: 1.25 for strong sun, 1 for standard conditions.</param>
    public DesignCurrents(RuleContext context, IEnumerable<StringFuse> fuses, double factor = StrongSunCurrentRule.Factor)
    {
        (_context, _factor) = (context, factor);
        Dictionary<int, double> fusesA = fuses.Where(fuse => fuse.SizeA is not null).ToDictionary(fuse => fuse.String, fuse => fuse.SizeA!.Value);
        Forward(context.Wiring, [], ShortCircuitA(context.Wiring));
        ImmutableArray<Wiring> strings = context.Wiring.Strings;
        bool isOne = context.Wiring is not Wiring.Parallel;
        for (int index = 0; index < strings.Length; index++)
        {
            double othersA = 0;
            for (int other = 0; other < strings.Length; other++)
            {
                othersA += other == index ? 0 : ShortCircuitA(strings[other]);
            }

            double fromOthersA = _factor * othersA;
            fromOthersA = fusesA.TryGetValue(index, out double fuseA) ? Math.Min(fromOthersA, fuseA) : fromOthersA;
            Back(strings[index], isOne ? [] : [index + 1], fromOthersA);
        }
    }

    /// <summary>What a node carries of its own in strong sun, A.</summary>
    public double ForwardA(ImmutableArray<int> path) => _factor * _forwardA[TreeCurrents.Key(path)];

    /// <summary>What the rest can drive back through a node, A.</summary>
    public double BackA(ImmutableArray<int> path) => _backA.GetValueOrDefault(TreeCurrents.Key(path));

    /// <summary>The larger of the two, A.</summary>
    public double Of(ImmutableArray<int> path) => Math.Max(ForwardA(path), BackA(path));

    private double ShortCircuitA(Wiring part) => LabelSums.ShortCircuitA(part, _context.Stock);

    /// <summary>In series the strongest part may drive its current through all. Through a block weaker than that, the excess takes one branch and its bypass diodes.</summary>
    private void Forward(Wiring wiring, ImmutableArray<int> path, double throughA)
    {
        _forwardA[TreeCurrents.Key(path)] = throughA;
        ImmutableArray<Wiring> parts = Parts(wiring);
        double excessA = wiring is Wiring.Parallel ? Math.Max(0, throughA - ShortCircuitA(wiring)) : 0;
        for (int i = 0; i < parts.Length; i++)
        {
            Forward(parts[i], path.Add(i + 1), wiring is Wiring.Parallel ? ShortCircuitA(parts[i]) + excessA : throughA);
        }
    }

    private void Back(Wiring wiring, ImmutableArray<int> path, double fromOthersA)
    {
        _backA[TreeCurrents.Key(path)] = fromOthersA;
        ImmutableArray<Wiring> parts = Parts(wiring);
        for (int i = 0; i < parts.Length; i++)
        {
            double besideA = 0;
            for (int other = 0; wiring is Wiring.Parallel && other < parts.Length; other++)
            {
                besideA += other == i ? 0 : _factor * ShortCircuitA(parts[other]);
            }

            Back(parts[i], path.Add(i + 1), fromOthersA + besideA);
        }
    }

    private static ImmutableArray<Wiring> Parts(Wiring wiring) => wiring switch
    {
        Wiring.Series series => series.Parts,
        Wiring.Parallel parallel => parallel.Parts,
        _ => [],
    };
}
