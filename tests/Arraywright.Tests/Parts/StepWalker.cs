using System.Text.RegularExpressions;
using Arraywright.Gear;
using Arraywright.Parts.Connecting;

namespace Arraywright.Tests.Parts;

/// <summary>Somebody who does what the steps say, word by word, and nothing else.</summary>
/// <param name="inputs">The inputs of the plan.</param>
/// <param name="hasSwitch">Whether there is a switch in each run.</param>
internal sealed partial class StepWalker(IReadOnlyList<DcInput> inputs, bool hasSwitch)
{
    private readonly Dictionary<string, Run> _runs = inputs.ToDictionary(input => input.Name, input => new Run(input.Unit));
    private readonly HashSet<string> _on = new(StringComparer.Ordinal);

    /// <summary>Does every step, and fails where a plug would meet current, or a meter that is to show volts would show none.</summary>
    public void Walk(ConnectionOrder order)
    {
        foreach (ConnectionStep step in order.Steps)
        {
            Run[] about = step.Input is { } name ? [_runs[name]] : [.. _runs.Values];
            foreach (string sentence in step.Do.SelectMany(text => Sentence().Split(text)).Where(sentence => !hasSwitch || !sentence.StartsWith("Where there is none", StringComparison.Ordinal)))
            {
                Array.ForEach(about, run => Do(sentence, step, run));
            }

            if (step.Act == ConnectionAct.SwitchOn)
            {
                Assert.True(_on.Contains(UnitOf(step.Input!)) && _runs[step.Input!] is { IsPlugged: true, IsCovered: false } run && IsLive(run), $"{step.Input} cannot read anything");
            }
        }
    }

    private void Do(string sentence, ConnectionStep step, Run run)
    {
        bool Says(string words) => sentence.Contains(words, StringComparison.OrdinalIgnoreCase);
        if (Says("uncover") || Says("in the light"))
        {
            run.IsCovered = false;
        }
        else if (Says("cover the panels") || Says("panels covered"))
        {
            run.IsCovered = true;
        }

        if (Says("close the switch"))
        {
            Assert.True(!run.IsPlugged || step.Act == ConnectionAct.SwitchOn, "current begins before the unit is to start");
            run.IsClosed = true;
        }
        else if (Says("open the switch"))
        {
            run.IsClosed = false;
        }

        if (Says("sign first"))
        {
            Assert.False(run.IsCovered, $"{step.Title}: 0 V, covered");
            Assert.True(step.Act == ConnectionAct.MeasureString || (IsLive(run) && !run.IsPlugged), $"{step.Title}: 0 V, the switch is open");
        }

        if (Says("Adapter and plug into"))
        {
            Assert.True(IsSafe(run) && !_on.Contains(UnitOf(step.Input!)), $"{step.Input} is plugged in under current");
            run.IsPlugged = true;
        }

        if (SwitchedOn().IsMatch(sentence))
        {
            Assert.All(_runs.Where(one => UnitOf(one.Key) == UnitOf(step.Input!)), one => Assert.True(one.Value.IsPlugged && (IsSafe(one.Value) || _on.Contains(UnitOf(step.Input!))), $"{one.Key} is not ready"));
            _on.Add(UnitOf(step.Input!));
        }
    }

    /// <summary>Inputs of no named unit may be of one and the same.</summary>
    private string UnitOf(string input) => _runs[input].Unit ?? "unnamed";

    private bool IsLive(Run run) => run.IsClosed || !hasSwitch;

    private bool IsSafe(Run run) => hasSwitch ? !run.IsClosed : run.IsCovered;

    [GeneratedRegex(@"(?<=\.) (?=[A-Z])", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Sentence();

    [GeneratedRegex("^Switch .+ on[,.]", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex SwitchedOn();

    private sealed class Run(string? unit)
    {
        public string? Unit { get; } = unit;

        public bool IsCovered { get; set; }

        public bool IsClosed { get; set; } = true;

        public bool IsPlugged { get; set; }
    }
}
