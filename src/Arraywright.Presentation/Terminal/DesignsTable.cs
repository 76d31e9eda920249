using Arraywright.Electrical;

namespace Arraywright.Presentation.Terminal;

/// <summary>The designs side by side, the best first, each with the reason to choose it and its wiring.</summary>
public static class DesignsTable
{
    /// <summary>Writes one entry a design: a row of figures, below it the wiring of each input.</summary>
    /// <param name="writer">Where the text goes.</param>
    /// <param name="designs">The designs.</param>
    /// <param name="dates">Days that their energies are of; null for a year.</param>
    /// <param name="style">Width and colour.</param>
    public static void Write(TextWriter writer, IReadOnlyList<Design> designs, DaySpan? dates, TerminalStyle style)
    {
        bool energy = designs.Any(design => design.EnergyKWh is not null);
        TextTable table = new(true, false, true, false);
        table.Add(["", "", energy ? dates?.ToString() ?? "a year" : "power", "chosen for"]);
        foreach (Design design in designs)
        {
            string amount = energy
                ? design.EnergyKWh is { } kWh ? Figures.Of(kWh, "kWh") : "–"
                : Figures.Of(design.PeakPowerW, "W");
            table.Add(
                [$"{design.Rank}.", FindingsTable.Word(design.Verdict), amount, ChosenFor(design)],
                text => style.Strong(text));
            foreach (Assignment assignment in design.Assignments)
            {
                table.AddNote($"{assignment.Input}: {Text(assignment.Wiring)}", 1);
            }

            if (LeftOver(design) is { Length: > 0 } leftOver)
            {
                table.AddNote($"left over: {leftOver}", 1);
            }
        }

        table.Write(writer, 2, style.Width, wrapped: 3);
    }

    /// <summary>The wiring in the + and | notation, or in words that nothing is connected.</summary>
    public static string Text(Wiring? wiring) => wiring is null ? "nothing connected" : WiringText.Print(wiring);

    /// <summary>The panels left out, such as "2 × shed-120, 1 × barn-60"; empty when all are used.</summary>
    public static string LeftOver(Design design) =>
        string.Join(", ", design.UnusedPanels.Where(unused => unused.Count > 0).Select(unused => $"{unused.Count} × {unused.Panel}"));

    private static string ChosenFor(Design design) =>
        !design.ChosenFor.IsEmpty ? string.Join(", ", design.ChosenFor)
        : design.Rank == 1 ? "the one above"
        : "next best";
}
