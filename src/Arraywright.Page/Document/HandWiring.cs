using Arraywright.Electrical;
using Arraywright.Files.Drafts;

namespace Arraywright.Page.Document;

/// <summary>A wiring put together by hand: for each input strings side by side, each of panels in a row; the rest lies free.</summary>
internal sealed class HandWiring
{
    private readonly Dictionary<string, int> _owned;

    /// <summary>Nothing connected yet.</summary>
    public HandWiring(Plan plan)
    {
        _owned = plan.Panels.ToDictionary(stock => stock.Panel.Name, stock => stock.Count);
        Inputs = [.. plan.Inputs.Select(planned => new HandInput(planned.Input.Name))];
    }

    public IReadOnlyList<HandInput> Inputs { get; }

    /// <summary>Kinds with panels that lie free, and how many.</summary>
    public IEnumerable<(string Kind, int Count)> Free => _owned.Select(owned => (owned.Key, owned.Value - Used(owned.Key))).Where(free => free.Item2 > 0);

    /// <summary>Lays out wirings as far as they are strings of single panels.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wirings">One text an input; null where nothing is connected.</param>
    /// <returns>Null where a wiring is more than strings side by side.</returns>
    public static HandWiring? Of(Plan plan, IReadOnlyList<string?> wirings)
    {
        HandWiring hand = new(plan);
        for (int i = 0; i < hand.Inputs.Count && i < wirings.Count; i++)
        {
            if (wirings[i] is null)
            {
                continue;
            }

            if (!WiringText.TryParse(wirings[i]!, out Wiring? wiring, out _))
            {
                return null;
            }

            foreach (Wiring part in wiring.Strings)
            {
                if (part is not Wiring.Single && !(part is Wiring.Series series && series.Parts.All(one => one is Wiring.Single)))
                {
                    return null;
                }

                hand.Inputs[i].Strings.Add([.. part.Panels]);
            }
        }

        return hand;
    }

    /// <summary>Puts a free panel, or one from another place, at the end of a string; a string past the last is a new one.</summary>
    public void Move(HandPlace from, int input, int toString)
    {
        string kind = from.Kind;
        Take(from);
        List<List<string>> strings = Inputs[input].Strings;
        if (toString >= strings.Count)
        {
            strings.Add([kind]);
        }
        else
        {
            strings[toString].Add(kind);
        }

        Inputs.ToList().ForEach(one => one.Strings.RemoveAll(panels => panels.Count == 0));
    }

    /// <summary>Takes a panel off and lays it free.</summary>
    public void LayFree(HandPlace from)
    {
        Take(from);
        Inputs.ToList().ForEach(one => one.Strings.RemoveAll(panels => panels.Count == 0));
    }

    /// <summary>The plan with these wirings stated, ready to be checked.</summary>
    public string? Stated(string planText) => PlanDraft.Stating(planText, [.. Inputs.Select(input => input.Text)]);

    private int Used(string kind) => Inputs.Sum(input => input.Strings.Sum(panels => panels.Count(name => name == kind)));

    private void Take(HandPlace from)
    {
        if (from.Input >= 0)
        {
            Inputs[from.Input].Strings[from.String].RemoveAt(from.Panel);
        }
    }
}

/// <summary>What is connected to one input by hand.</summary>
internal sealed class HandInput(string name)
{
    public string Name { get; } = name;

    public List<List<string>> Strings { get; } = [];

    /// <summary>In the plan's notation; null where nothing is connected.</summary>
    public string? Text => Strings.Count == 0 ? null : string.Join(" | ", Strings.Select(panels => panels.Count == 1 ? panels[0] : $"({string.Join(" + ", panels)})"));
}

/// <summary>Where a panel is: in a string of an input, or free (input -1).</summary>
internal readonly record struct HandPlace(string Kind, int Input, int String, int Panel)
{
    public static HandPlace Free(string kind) => new(kind, -1, -1, -1);
}
