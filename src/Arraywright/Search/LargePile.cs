using System.Collections.Immutable;
using Arraywright.Electrical;

namespace Arraywright.Search;

/// <summary>A pile too large to prove: panels that are nearly alike are taken for alike until it is small enough.</summary>
/// <remarks>
/// Once with the worst of each group's volts and amps, which gives wirings that any of its panels may fill; and once with the best of
/// everything, which no real wiring can beat. What is found by the first lies below the second: that is the gap, and it is honest.
/// </remarks>
internal static class LargePile
{
    /// <summary>Exact circuits spent on exchanging panels within their group.</summary>
    private const int Exchanges = 300;

    /// <summary>Groups of stocks, closest first joined, until the pile fits.</summary>
    /// <param name="stocks">The stocks.</param>
    /// <param name="fits">Whether the groups make a pile that is small enough.</param>
    public static List<ImmutableArray<SearchStock>> Groups(ImmutableArray<SearchStock> stocks, Func<List<ImmutableArray<SearchStock>>, bool> fits)
    {
        List<ImmutableArray<SearchStock>> groups = [.. stocks.Select(stock => ImmutableArray.Create(stock))];
        while (groups.Count > 1 && !fits(groups))
        {
            (int first, int second) = (0, 1);
            double closest = double.PositiveInfinity;
            for (int i = 0; i < groups.Count; i++)
            {
                for (int j = i + 1; j < groups.Count; j++)
                {
                    double spread = Spread(groups[i].AddRange(groups[j]));
                    (closest, first, second) = spread < closest ? (spread, i, j) : (closest, first, second);
                }
            }

            groups[first] = groups[first].AddRange(groups[second]);
            groups.RemoveAt(second);
        }

        return groups;
    }

    /// <summary>A stock that stands for a group and may be replaced by any of its panels: worst limits, middling curve.</summary>
    public static SearchStock Worst(ImmutableArray<SearchStock> group)
    {
        SearchStock middle = group.OrderBy(stock => stock.LabelPowerW).ElementAt(group.Length / 2);
        return middle with
        {
            Count = group.Sum(stock => stock.Count),
            ColdLabelV = group.Max(stock => stock.ColdLabelV),
            ColdModelV = group.Max(stock => stock.ColdModelV),
            MaxSystemV = group.Min(stock => stock.MaxSystemV),
            MaxBesideA = group.Min(stock => stock.MaxBesideA),
            LabelIscA = group.Max(stock => stock.LabelIscA),
            LabelImpA = group.Max(stock => stock.LabelImpA),
            LabelPowerW = group.Max(stock => stock.LabelPowerW),
        };
    }

    /// <summary>A stock that no panel of the group beats: best limits, and a curve above them all.</summary>
    public static SearchStock Best(ImmutableArray<SearchStock> group) => group[0] with
    {
        Count = group.Sum(stock => stock.Count),
        ColdLabelV = group.Min(stock => stock.ColdLabelV),
        ColdModelV = group.Min(stock => stock.ColdModelV),
        MaxSystemV = group.Max(stock => stock.MaxSystemV),
        MaxBesideA = group.Max(stock => stock.MaxBesideA),
        LabelIscA = group.Min(stock => stock.LabelIscA),
        LabelImpA = group.Min(stock => stock.LabelImpA),
        LabelPowerW = group.Min(stock => stock.LabelPowerW),
        Members = group,
    };

    /// <summary>The problem of a pile that no real one of these groups beats, held by no rule that asks about single panels.</summary>
    public static SearchProblem Ideal(SearchProblem problem, List<ImmutableArray<SearchStock>> groups) =>
        problem with { Stocks = [.. groups.Select(Best)], Accept = null, MaxBesideA = null };

    /// <summary>A wiring of groups with real panels in its places.</summary>
    public static ImmutableArray<Wiring?> Placed(List<ImmutableArray<SearchStock>> groups, ImmutableArray<Wiring?> rough) =>
        Named(rough, [.. Places(groups, rough).Select(place => place.Name)]);

    /// <summary>Puts real panels in the places of a wiring of groups, then exchanges panels of a group as long as it pays.</summary>
    public static Candidate Fill(SearchProblem problem, List<ImmutableArray<SearchStock>> groups, Candidate rough, ExactWorth exact, Effort effort)
    {
        List<(int Group, string Name)> places = Places(groups, rough.Wirings);
        string[] names = [.. places.Select(place => place.Name)];
        int used = rough.Panels;
        double worthW = exact.ObjectiveW(Named(rough.Wirings, names));
        int tries = 0;
        for (int i = 0; i < used; i++)
        {
            for (int j = i + 1; j < names.Length && tries < Exchanges && !effort.IsCalledOff; j++)
            {
                if (places[i].Group == places[j].Group && names[i] != names[j])
                {
                    tries++;
                    effort.Spend(Effort.Circuit * problem.Weights.Length);
                    (names[i], names[j]) = (names[j], names[i]);
                    ImmutableArray<Wiring?> changed = Named(rough.Wirings, names);
                    double changedW = exact.ObjectiveW(changed);
                    bool better = changedW > worthW && (problem.Accept?.Invoke(changed) ?? true);
                    worthW = better ? changedW : worthW;
                    (names[i], names[j]) = better ? (names[i], names[j]) : (names[j], names[i]);
                }
            }
        }

        return rough with { Wirings = Named(rough.Wirings, names), ObjectiveW = worthW };
    }

    /// <summary>A real panel for each place from left to right, then those left over.</summary>
    private static List<(int Group, string Name)> Places(List<ImmutableArray<SearchStock>> groups, ImmutableArray<Wiring?> rough)
    {
        var places = new List<(int Group, string Name)>();
        Queue<string>[] spare = [.. groups.Select(group => new Queue<string>(ByCurrent(group)))];
        string[] roughNames = [.. groups.Select(group => Worst(group).Name)];
        foreach (string name in rough.Where(wiring => wiring is not null).SelectMany(wiring => wiring!.Panels))
        {
            int group = Array.IndexOf(roughNames, name);
            places.Add((group, spare[group].Dequeue()));
        }

        places.AddRange(spare.SelectMany((left, group) => left.Select(name => (group, name))));
        return places;
    }

    /// <summary>Weighted mean of what every panel gives by itself at its best, and no more than all inputs take: no wiring gets more out of them.</summary>
    public static double PanelsAloneW(SearchProblem problem)
    {
        double sum = 0;
        for (int moment = 0; moment < problem.Weights.Length; moment++)
        {
            int at = moment;
            double panelsW = problem.Stocks.Sum(stock => stock.Count * AloneW(stock.AtWork[at]));
            sum += problem.Weights[moment] * Math.Min(panelsW, ExactWorth.TogetherW(problem, input => problem.Inputs[input].Window.MaxW));
        }

        return sum / problem.Weights.Sum();
    }

    private static double AloneW(PanelAtWork panel) =>
        new Circuit(CircuitTree.Of(new Wiring.Single("it"), _ => panel, WireResistances.None)).MaximumPower().PowerW;

    /// <summary>The same wirings with other panels, by place.</summary>
    private static ImmutableArray<Wiring?> Named(ImmutableArray<Wiring?> wirings, string[] names)
    {
        int place = 0;
        Wiring Rename(Wiring wiring) => wiring switch
        {
            Wiring.Series series => Wiring.InSeries([.. series.Parts.Select(Rename)]),
            Wiring.Parallel parallel => Wiring.InParallel([.. parallel.Parts.Select(Rename)]),
            _ => new Wiring.Single(names[place++]),
        };
        return [.. wirings.Select(wiring => wiring is null ? null : Rename(wiring))];
    }

    /// <summary>Panels of a group, strongest current first: neighbours then go into the same string.</summary>
    private static IEnumerable<string> ByCurrent(ImmutableArray<SearchStock> group) =>
        group.OrderByDescending(stock => stock.LabelIscA).SelectMany(stock => Enumerable.Repeat(stock.Name, stock.Count));

    /// <summary>How far apart a group's volts and amps lie, as a ratio less one.</summary>
    private static double Spread(ImmutableArray<SearchStock> group) =>
        (group.Max(stock => stock.ColdLabelV) / group.Min(stock => stock.ColdLabelV))
        + (group.Max(stock => stock.LabelIscA) / group.Min(stock => stock.LabelIscA)) - 2;
}
