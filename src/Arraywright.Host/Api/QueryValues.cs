using System.Collections.Immutable;
using System.Text;
using Arraywright.Energy;
using Arraywright.Files.Asking;
using Arraywright.Files.Keys;
using Arraywright.Planning;
using Microsoft.Extensions.Primitives;

namespace Arraywright.Host.Api;

/// <summary>The options of one question, as they came in its address.</summary>
internal sealed class QueryValues
{
    private readonly SunMemory _memory;
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    /// <summary>Reads them; every fault is told, with the option's name before it.</summary>
    public QueryValues(IQueryCollection query, ImmutableArray<QueryOption> options, SunMemory memory)
    {
        _memory = memory;
        List<string> faults = [];
        foreach ((string name, StringValues values) in query)
        {
            if (options.FirstOrDefault(option => option.Name == name) is not { } option)
            {
                string near = Nearest.Of(name, options.Select(known => known.Name)) is { } meant ? $"did you mean \"{meant}\"?" : Known(options);
                faults.Add($"there is no option \"{name}\"; {near}");
            }
            else if (values.Count != 1)
            {
                faults.Add($"{name}: found it {values.Count} times; expected it once");
            }
            else if (option.Fault(values.ToString()) is { } fault)
            {
                faults.Add($"{name}: {fault}");
            }
            else
            {
                _texts.Add(name, values.ToString());
            }
        }

        faults.AddRange(options.Where(option => option.IsRequired && !query.ContainsKey(option.Name)).Select(option => $"{option.Name} is missing: {option.About}"));
        AddAtOdds(faults);
        Faults = faults;
    }

    /// <summary>What is wrong with them; empty when they may be used.</summary>
    public IReadOnlyList<string> Faults { get; }

    /// <summary>The conditions for operating points.</summary>
    public PlannerOptions Planner => new(new StatedConditions(Value(AskedOptions.Irradiance), Value(AskedOptions.Cell), Value(AskedOptions.Air), Value(AskedOptions.Wind))) { Memory = _memory };

    /// <summary>How a year or a day is to be run.</summary>
    public EnergyQuestion Energy => new(Value(AskedOptions.Step), IsSet("no-spread"));

    /// <summary>A value; null when it was left out.</summary>
    public T? Value<T>(AskedOption<T> asked)
        where T : struct => _texts.TryGetValue(asked.Name, out string? text) ? asked.Read(text) : null;

    /// <summary>A name; null when it was left out.</summary>
    public string? Name(string name) => _texts.GetValueOrDefault(name);

    /// <summary>Whether a flag is set.</summary>
    public bool IsSet(string name) => _texts.GetValueOrDefault(name) == "true";

    /// <summary>All of them in one text, the same for the same options in any order.</summary>
    public string Canonical()
    {
        StringBuilder text = new();
        foreach ((string name, string value) in _texts.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            text.Append(name).Append('=').Append(value).Append('\n');
        }

        return text.ToString();
    }

    private static string Known(ImmutableArray<QueryOption> options) =>
        options.IsEmpty ? "this question takes none" : $"expected one of {string.Join(", ", options.Select(option => option.Name))}";

    private void AddAtOdds(List<string> faults)
    {
        bool air = _texts.ContainsKey(AskedOptions.Air.Name);
        if (air && _texts.ContainsKey(AskedOptions.Cell.Name))
        {
            faults.Add("cell and air exclude each other: the temperature of the cells, or that of the air to compute it from");
        }

        if (!air && _texts.ContainsKey(AskedOptions.Wind.Name))
        {
            faults.Add("wind serves to compute the cells' temperature from the air's: it needs air");
        }
    }
}
