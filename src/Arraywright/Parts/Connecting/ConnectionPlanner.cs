using System.Collections.Immutable;
using Arraywright.Electrical;
using Arraywright.Energy;
using Arraywright.Gear;
using Arraywright.Limits;

namespace Arraywright.Parts.Connecting;

/// <summary>Puts the steps of connecting in order.</summary>
public static class ConnectionPlanner
{
    /// <summary>The order for a design of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">One of its designs.</param>
    /// <param name="verdict">The worst that is said of the design, its labels and its parts.</param>
    /// <param name="stated">Conditions of the day, for what the meter shows then.</param>
    public static ConnectionOrder Of(Plan plan, Design design, Level verdict, StatedConditions stated)
    {
        PlanPhysics physics = new(plan, asked: stated);
        ReadingsOfWiring readings = new(physics, stated);
        ImmutableArray<(DcInput Input, Wiring Wiring, Assignment Assignment)> connected =
        [
            .. plan.Inputs.Zip(design.Assignments)
                .Where(pair => pair.Second.Wiring is not null)
                .Select(pair => (pair.First.Input, pair.Second.Wiring!, pair.Second)),
        ];
        return new ConnectionOrder
        {
            Verdict = verdict,
            Now = connected.IsEmpty ? Conditions.Standard : readings.Now(connected[0].Wiring),
            Steps = verdict == Level.Stop ? [] :
            [
                MakeReady(connected.Select(one => one.Assignment.VocColdV).Max(), connected.Length),
                CheckPanels(physics, readings, connected),
                .. connected.SelectMany(one => OfInput(one.Input, one.Wiring, one.Assignment, readings)),
                LookAgain(),
            ],
            Undoing = verdict == Level.Stop ? [] : Prohibitions.Undoing,
            Never = Prohibitions.For(connected),
        };
    }

    private static ConnectionStep MakeReady(double highestV, int inputs) => new(
        ConnectionAct.MakeReady,
        null,
        "Make ready",
        [
            $"Switch the {(inputs > 1 ? "units" : "unit")} off, open any switch in the run, and take string fuses out.",
            $"Set the meter to volts, direct current, on a range above {StepWords.Volts(highestV)}: red lead in V, black lead in COM.",
            "Cover the panels or turn their faces to the ground until a step asks for light. Dry hands, dry ground, no rings or chains.",
        ],
        [],
        null);

    private static ConnectionStep CheckPanels(PlanPhysics physics, ReadingsOfWiring readings, ImmutableArray<(DcInput Input, Wiring Wiring, Assignment Assignment)> connected)
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

    private static IEnumerable<ConnectionStep> OfInput(DcInput input, Wiring wiring, Assignment assignment, ReadingsOfWiring readings)
    {
        ImmutableArray<Wiring> strings = wiring.Strings;
        if (strings.Any(part => part is not Wiring.Single))
        {
            yield return new ConnectionStep(ConnectionAct.JoinString, input.Name, strings.Length == 1 ? "Make the string" : "Make the strings, one at a time", StepWords.Joining(strings), [], null);
        }

        if (strings.Length > 1)
        {
            ImmutableArray<ExpectedReading> each = [.. StepWords.Grouped(strings).Select(group => readings.OpenLeads(group.Name, group.Part, input))];
            yield return new ConnectionStep(
                ConnectionAct.MeasureString,
                input.Name,
                "Measure each string before it meets another",
                ["Strings in the light, apart from each other: red probe on the open + end, black probe on the open − end.", "Sign first, then volts. Write both down."],
                each,
                StepWords.StringIfNot(strings));
            yield return new ConnectionStep(ConnectionAct.JoinStrings, input.Name, "Join the strings side by side", StepWords.JoiningStrings(each), [], null);
        }

        yield return new ConnectionStep(
            ConnectionAct.MeasureArray,
            input.Name,
            "Measure the whole array at the end of its run",
            [
                $"At the plug that will go into {input.Name}, with nothing connected there: sign first, then volts.",
                $"{input.Name} bears {StepWords.Volts(input.MaxVoltageV)}, at no time more. This array reaches {StepWords.Volts(assignment.VocColdV)} on the coldest morning.",
            ],
            [readings.OpenLeads("the array", wiring, input)],
            $"A minus sign: the two leads are swapped; swap them before going on. {StepWords.Volts(input.MaxVoltageV)} or more: do not connect, there are more panels in series than planned.{(strings.Length == 1 ? " " + StepWords.StringIfNot(strings) : "")}");
        yield return new ConnectionStep(ConnectionAct.ConnectInput, input.Name, $"Connect {input.Name}", StepWords.Connecting(input), [], null);
        yield return new ConnectionStep(
            ConnectionAct.SwitchOn,
            input.Name,
            $"Switch {input.Name} on and read it",
            ["Close the switch in the run, if there is one, then switch the unit on.", "Give it some minutes: an input searches for its best point, and takes less when its battery is nearly full."],
            readings.Working(wiring, input),
            "Volts as before and no amps: the input has not started, or its battery is full. Amps far below in full sun: shade, a string that is not joined, or an open fuse." + StepWords.HeldTogether(assignment));
    }

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
