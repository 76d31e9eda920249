using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Parts;

namespace Arraywright.Presentation.Drawing;

/// <summary>Plugs an array together, and numbers its panels and joints on the way.</summary>
/// <param name="pieces">What lies between the panels and the unit.</param>
/// <param name="firstPanel">Number of its first panel.</param>
/// <param name="firstJoint">Number of its first joint.</param>
internal sealed class HookupBuilder(HookupPieces pieces, int firstPanel, int firstJoint)
{
    private readonly ImmutableArray<Joint>.Builder _joints = ImmutableArray.CreateBuilder<Joint>();
    private int _panels = firstPanel - 1;

    /// <summary>The array of one input.</summary>
    /// <param name="assignment">The input; its wiring is not null.</param>
    /// <param name="unit">Name of its unit.</param>
    public Hookup Build(Assignment assignment, string? unit)
    {
        HookupPart part = Part(assignment.Wiring!, []);
        Branch array = assignment.Wiring is Wiring.Parallel ? new Branch(part, [], []) : WithOwn(part, []);
        return new Hookup
        {
            Assignment = assignment,
            Verdict = pieces.Verdict > assignment.Verdict ? pieces.Verdict : assignment.Verdict,
            Unit = unit,
            Array = array,
            Trunk = Trunk(array),
            Joints = _joints.ToImmutable(),
        };
    }

    private HookupPart Part(Wiring wiring, ImmutableArray<int> path) => wiring switch
    {
        Wiring.Single single => new HookupPart.Panel(++_panels, single.Panel),
        Wiring.Series series => Row(series, path),
        Wiring.Parallel parallel => Block(parallel, path),
        _ => throw new InvalidOperationException("A wiring is a panel, a series or a parallel."),
    };

    private HookupPart.Row Row(Wiring.Series series, ImmutableArray<int> path)
    {
        ImmutableArray<HookupPart> parts = [.. series.Parts.Select((part, index) => Part(part, path.Add(index + 1)))];
        return new HookupPart.Row(parts, [.. parts.Zip(parts.Skip(1), (above, below) => Join(End(above, Pole.Minus), End(below, Pole.Plus)))]);
    }

    private HookupPart.Block Block(Wiring.Parallel parallel, ImmutableArray<int> path)
    {
        ImmutableArray<Branch> branches = [.. parallel.Parts.Select((part, index) => WithOwn(Part(part, path.Add(index + 1)), path.Add(index + 1)))];
        return new HookupPart.Block(branches, Gather(branches, path, Pole.Plus), Gather(branches, path, Pole.Minus));
    }

    /// <summary>A part with its own fuse and run.</summary>
    private Branch WithOwn(HookupPart part, ImmutableArray<int> path) => new(part, Own(part, path, Pole.Plus), Own(part, path, Pole.Minus));

    private ImmutableArray<Step> Own(HookupPart part, ImmutableArray<int> path, Pole pole)
    {
        string from = End(part, pole);
        List<Step> steps = [];
        foreach (Element element in pieces.OfBranch(path, pole))
        {
            steps.Add(new Step(Join(from, element.Name), element));
            from = $"{Sign(pole)} {element.Name} of {Named(part)}";
        }

        return [.. steps];
    }

    private Connector Gather(ImmutableArray<Branch> branches, ImmutableArray<int> path, Pole pole) =>
        Gather(pieces.Gathering(path, pole, branches.Length), branches, pole);

    private Connector Gather(Gathering gathering, ImmutableArray<Branch> branches, Pole pole)
    {
        ImmutableArray<Leg>.Builder legs = ImmutableArray.CreateBuilder<Leg>();
        string into = $"{Sign(pole)} {gathering.Element.Name}";

        // What is gathered first is plugged first.
        ImmutableArray<Connector?> inner = [.. gathering.Members.Select(member => member.Inner is { } other ? Gather(other, branches, pole) : null)];
        for (int i = 0; i < gathering.Members.Length; i++)
        {
            int branch = gathering.Members[i].Branch;
            string from = inner[i] is null ? Outer(branches[branch], pole) : $"{Sign(pole)} {gathering.Members[i].Inner!.Element.Name}";
            legs.Add(new Leg(Join(from, into), branch, inner[i]));
        }

        return new Connector(gathering.Element, legs.ToImmutable());
    }

    private ImmutableArray<PairStep> Trunk(Branch array)
    {
        (string plus, string minus) = (Outer(array, Pole.Plus), Outer(array, Pole.Minus));
        List<PairStep> steps = [];
        foreach (Element element in pieces.ToUnit())
        {
            bool isOnePlug = element.Kind is null;
            Joint first = isOnePlug ? Join(steps.Count > 0 ? $"plug of the {steps[^1].Element.Name}" : "plug of the array", element.Name) : Join(plus, $"plus of the {element.Name}");
            steps.Add(new PairStep(first, isOnePlug ? first : Join(minus, $"minus of the {element.Name}"), element));
            (plus, minus) = ($"plus of the {element.Name}", $"minus of the {element.Name}");
        }

        return [.. steps];
    }

    private Joint Join(string from, string into)
    {
        Joint joint = new(firstJoint + _joints.Count, from, into);
        _joints.Add(joint);
        return joint;
    }

    private static string Outer(Branch branch, Pole pole)
    {
        ImmutableArray<Step> steps = pole == Pole.Plus ? branch.Plus : branch.Minus;
        return steps.IsEmpty ? End(branch.Part, pole) : $"{Sign(pole)} {steps[^1].Element.Name} of {Named(branch.Part)}";
    }

    /// <summary>The lead that a part ends in.</summary>
    private static string End(HookupPart part, Pole pole) => part switch
    {
        HookupPart.Panel panel => $"{Sign(pole)} of panel {panel.Number}",
        HookupPart.Row row => End(pole == Pole.Plus ? row.Parts[0] : row.Parts[^1], pole),
        _ => $"{Sign(pole)} branch connector of {Named(part)}",
    };

    private static string Named(HookupPart part)
    {
        int[] numbers = [.. Numbers(part)];
        return numbers.Length == 1 ? $"panel {numbers[0]}" : $"panels {numbers[0]} {(numbers.Length == 2 ? "and" : "to")} {numbers[^1]}";
    }

    private static IEnumerable<int> Numbers(HookupPart part) => part switch
    {
        HookupPart.Panel panel => [panel.Number],
        HookupPart.Row row => row.Parts.SelectMany(Numbers),
        HookupPart.Block block => block.Branches.SelectMany(branch => Numbers(branch.Part)),
        _ => [],
    };

    private static string Sign(Pole pole) => pole == Pole.Plus ? "plus" : "minus";
}
