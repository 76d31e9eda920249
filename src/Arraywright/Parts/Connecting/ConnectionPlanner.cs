using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Limits;

namespace Arraywright.Parts.Connecting;

/// <summary>Puts the steps of connecting in order.</summary>
public static class ConnectionPlanner
{
    /// <summary>The order for the wiring of a parts list.</summary>
    /// <param name="parts">The wiring with its pieces; its verdict is the worst that is said of the design, its labels and its parts.</param>
    /// <param name="stated">Conditions of the day, for what the meter shows then.</param>
    public static ConnectionOrder Of(PartsList parts, StatedConditions stated)
    {
        PlanPhysics physics = new(parts.Plan, asked: stated);
        ReadingsOfWiring readings = new(physics, stated);
        ImmutableArray<ConnectedInput> connected =
        [
            .. parts.Plan.Inputs.Zip(parts.Design.Assignments, parts.Inputs)
                .Where(each => each.Second.Wiring is not null)
                .Select(each => new ConnectedInput(each.First.Input, each.Second, each.Third.Pieces)),
        ];

        // Inputs of no named unit may share one: they are treated as if they did.
        return new ConnectionOrder
        {
            Verdict = parts.Verdict,
            Now = connected.IsEmpty ? Conditions.Standard : readings.Now(connected[0].Wiring),
            Steps = parts.Verdict == Level.Stop ? [] :
            [
                MakeReady(connected, parts.Design.HighestVocColdV),
                CheckPanels(physics, readings, connected),
                .. connected.GroupBy(one => one.Input.Unit).SelectMany(unit => OfUnit([.. unit], readings)),
                LookAgain(),
            ],
            Undoing = parts.Verdict == Level.Stop ? [] : Prohibitions.Undoing,
            Never = Prohibitions.For(connected, parts.Design.HighestVocColdV),
        };
    }

    private static ConnectionStep MakeReady(ImmutableArray<ConnectedInput> connected, double highestV) => new(
        ConnectionAct.MakeReady,
        null,
        "Make ready",
        [
            .. TouchVoltage.Warnings(highestV),
            $"Switch {(connected.Select(one => one.Unit).Distinct().Count() > 1 ? "every" : "the")} unit off, open the switch in every run{(connected.Any(one => one.HasFuses) ? ", and take string fuses out" : "")}.",
            $"Set the meter to volts, direct current, on a range above {TouchVoltage.Text(highestV)}: red lead in V, black lead in COM.",
            $"Cover the panels or turn their faces to the ground until a step asks for light. {(TouchVoltage.IsDangerous(highestV) ? "Gloves on" : "Dry hands")}, dry ground, no rings or chains.",
        ],
        [],
        null);

    private static ConnectionStep CheckPanels(PlanPhysics physics, ReadingsOfWiring readings, ImmutableArray<ConnectedInput> connected)
    {
        HashSet<string> used = [.. connected.SelectMany(one => one.Wiring.Panels)];
        ImmutableArray<ExpectedReading> expected =
        [
            .. physics.Plan.Panels
                .Where(stock => used.Contains(stock.Panel.Name))
                .Select(stock => readings.OpenLeads($"each {stock.Panel.Name}", new Wiring.Single(stock.Panel.Name), connected[0].Input)),
        ];
        return new ConnectionStep(
            ConnectionAct.CheckPanels,
            null,
            "Check every panel by itself",
            [
                "Panel in the light, nothing plugged in: red probe on the + lead, black probe on the − lead.",
                "The figure must stand without a minus sign. Mark the lead that is really +; the colour of a cable proves nothing.",
            ],
            expected,
            StepWords.PanelIfNot);
    }

    /// <summary>Nothing is plugged into a unit that is on: all its inputs are joined, measured and plugged in first, then switched on one by one.</summary>
    private static IEnumerable<ConnectionStep> OfUnit(ImmutableArray<ConnectedInput> inputs, ReadingsOfWiring readings) =>
    [
        .. inputs.SelectMany(one => UntilPluggedIn(one, inputs.Length > 1, readings)),
        .. inputs.Select((one, index) => SwitchOn(one, inputs.Length > 1, index == 0, readings)),
    ];

    private static IEnumerable<ConnectionStep> UntilPluggedIn(ConnectedInput one, bool isOneOfSeveral, ReadingsOfWiring readings)
    {
        ImmutableArray<Wiring> strings = one.Wiring.Strings;
        if (strings.Any(part => part is not Wiring.Single))
        {
            yield return new ConnectionStep(ConnectionAct.JoinString, one.Name, strings.Length == 1 ? "Make the string" : "Make the strings, one at a time", StepWords.Joining(one), [], null);
        }

        if (strings.Length > 1)
        {
            ImmutableArray<ExpectedReading> each = [.. StepWords.Grouped(strings).Select(group => readings.OpenLeads(group.Name, group.Part, one.Input))];
            yield return new ConnectionStep(
                ConnectionAct.MeasureString,
                one.Name,
                "Measure each string before it meets another",
                ["Strings in the light, apart from each other: red probe on the open + end, black probe on the open − end.", "Sign first, then volts. Write both down."],
                each,
                StepWords.StringIfNot(one));
            yield return new ConnectionStep(ConnectionAct.JoinStrings, one.Name, "Join the strings side by side", StepWords.JoiningStrings(one, each), [], null);
        }

        yield return new ConnectionStep(
            ConnectionAct.MeasureArray,
            one.Name,
            "Measure the whole array at the end of its run",
            StepWords.Measuring(one),
            [readings.OpenLeads("the array", one.Wiring, one.Input)],
            StepWords.ArrayIfNot(one));
        yield return new ConnectionStep(ConnectionAct.ConnectInput, one.Name, $"Connect {one.Name}", StepWords.Connecting(one, isOneOfSeveral), [], null);
    }

    private static ConnectionStep SwitchOn(ConnectedInput one, bool isOneOfSeveral, bool isFirst, ReadingsOfWiring readings) => new(
        ConnectionAct.SwitchOn,
        one.Name,
        isFirst || one.Input.Unit is null ? $"Switch {one.Unit} on and read {one.Name}" : $"Close the switch of {one.Name} and read it",
        [
            isFirst ? $"Switch {one.Unit} on, with {(isOneOfSeveral ? "every switch in a run" : "the switch in the run")} still open."
                : one.Input.Unit is null ? $"Switch {one.Unit} on, if it is not on already."
                : $"{one.Unit} stays on. Nothing is plugged in or pulled out any more.",
            $"With its panels in the light, close the switch in the run to {one.Name}. Where there is none, uncover its panels now.",
            "Give it some minutes: an input searches for its best point, and takes less when its battery is nearly full.",
        ],
        readings.Working(one.Wiring, one.Input),
        "0 V: its switch is open, its panels are still covered, or its plug is not home. Volts as before and no amps: the input has not started, or its battery is full. Amps far below in full sun: shade, a string that is not joined, or an open fuse. Before any plug is touched: unit off, switch open." + StepWords.HeldTogether(one.Assignment));

    private static ConnectionStep LookAgain() => new(
        ConnectionAct.LookAgain,
        null,
        "Look again after the first hot hour",
        [
            "Hold the back of a hand near every connector, adapter, fuse and switch. Warm is usual; what is too hot to keep a finger on is not: stop the input and find out why.",
            "Look for leads that chafe, hang on their connectors or lie where water stands.",
        ],
        [],
        null);
}
