using Arraywright.Electrical;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;

namespace Arraywright.Files.Plans;

/// <summary>Reads the stated wirings and holds them against the panels owned.</summary>
internal sealed class WiringReader(StockReader panels)
{
    private readonly Dictionary<string, int> _wired = [];

    public Wiring? Read(Fields input)
    {
        if (input.Scalar(InputKeys.Wiring) is not { } scalar)
        {
            return null;
        }

        if (!WiringText.TryParse(scalar.Text, out Wiring? wiring, out WiringTextFault? fault))
        {
            input.Faults.Add(
                scalar.Line,
                scalar.TextColumn + fault.Position ?? scalar.Column,
                $"{fault.Found} in the wiring {scalar.Described}",
                fault.Expected,
                "+ joins in series, | in parallel, 3*a is three in series, brackets group");
            return null;
        }

        if (!input.Faults.BrokeOff)
        {
            foreach (IGrouping<string, string> same in wiring.Panels.GroupBy(static name => name))
            {
                Count(input, scalar, same.Key, same.Count());
            }
        }

        return wiring;
    }

    private void Count(Fields input, YamlScalar scalar, string name, int count)
    {
        int column = scalar.TextColumn + PositionOf(name, scalar.Text) ?? scalar.Column;
        if (!panels.Owned.TryGetValue(name, out int? owned))
        {
            if (panels.AllAreNamed)
            {
                string? near = Nearest.Of(name, panels.Owned.Keys);
                input.Faults.Add(scalar.Line, column, $"an unknown panel {Quoted.Text(name)} in the wiring", "the name of a panel listed in \"panels\"", near is null ? null : $"did you mean \"{near}\"?");
            }

            return;
        }

        int before = _wired.GetValueOrDefault(name);
        _wired[name] = before + count;
        if (owned is { } have && before <= have && before + count > have)
        {
            string altogether = before > 0 ? " in all wirings so far" : " in the wiring";
            input.Faults.Add(scalar.Line, column, $"{before + count} of {Quoted.Text(name)}{altogether}", $"at most {have}, as many as there are", "raise its \"count\" or wire fewer");
        }
    }

    /// <summary>Where a name stands as a whole word.</summary>
    private static int PositionOf(string name, string text)
    {
        for (int at = text.IndexOf(name, StringComparison.Ordinal); at >= 0; at = text.IndexOf(name, at + 1, StringComparison.Ordinal))
        {
            if ((at == 0 || !IsOfName(text[at - 1])) && (at + name.Length == text.Length || !IsOfName(text[at + name.Length])))
            {
                return at;
            }
        }

        return 0;
    }

    private static bool IsOfName(char letter) => char.IsLetterOrDigit(letter) || letter == '-';
}
