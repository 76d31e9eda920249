using Arraywright.Energy;
using Arraywright.Planning;

namespace Arraywright.Presentation.Terminal;

/// <summary>A year as text: what it brings, month by month, where the energy goes, what the battery sees.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class YearScreen(TextWriter writer, TerminalStyle style)
{
    /// <summary>Writes everything.</summary>
    public void Write(YearResult result)
    {
        TextFlow.Write(writer, "", result.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        WriteShort(result);
        EnergyParts.WriteWirings(writer, result.Design, style);
        EnergyParts.Heading(writer, "Month by month, kWh into the inputs; pale: what their limits cut off", style);
        WriteMonths(result.Energy);
        EnergyParts.WriteEnergy(writer, result.Energy, "year", style);
        EnergyParts.WriteGrounds(writer, result.WeatherSource, result.Assumed, result.Cautions, style);
    }

    /// <summary>Writes the answer in one sentence.</summary>
    public void WriteShort(YearResult result) =>
        TextFlow.Write(writer, "", EnergyParts.Brings("In a year", result.Energy) + EnergyParts.But(result.Verdict), style.Width, style.Strong);

    private void WriteMonths(EnergyResult energy)
    {
        const int NameWidth = 9;
        double most = energy.Spans.Max(span => span.DeliveredKWh + span.ClippedKWh);
        string[] amounts = [.. energy.Spans.Select(span => Figures.Number(span.DeliveredKWh, 1))];
        int amountWidth = amounts.Max(text => text.Length);
        double scale = (style.Width - NameWidth - amountWidth - 6) / Math.Max(1e-9, most);
        for (int month = 0; month < energy.Spans.Length; month++)
        {
            EnergySpan span = energy.Spans[month];
            string bar = Ladder.Bar(span.DeliveredKWh, span.DeliveredKWh + span.ClippedKWh, scale);
            writer.WriteLine($"  {span.Name.PadRight(NameWidth)}  {amounts[month].PadLeft(amountWidth)}  {bar}".TrimEnd());
        }
    }
}
