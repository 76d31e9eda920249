using System.Globalization;
using Arraywright.Growing;

namespace Arraywright.Presentation.Terminal;

/// <summary>How panels should face, as text.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class TiltScreen(TextWriter writer, TerminalStyle style)
{
    /// <summary>A loss below this is nothing to build anew for.</summary>
    private const double Hardly = 0.005;

    private static readonly string[] Winds = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>Writes everything.</summary>
    public void Write(TiltResult result)
    {
        TextFlow.Write(writer, "", result.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        WriteShort(result);
        EnergyParts.WriteWirings(writer, result.Design, style);
        EnergyParts.Heading(writer, "The best way to face", style);
        WriteSpans(result);
        if (result.Spans[0].Best is { } best)
        {
            EnergyParts.Heading(writer, $"The year by tilt, facing {Direction(best.AzimuthDeg)}", style);
            WriteByTilt(result);
            EnergyParts.Heading(writer, "Two tilts a year", style);
            TextFlow.Write(writer, "  ", TwoSentence(result, best), style.Width);
        }

        EnergyParts.WriteGrounds(writer, result.WeatherSource, result.Assumed, result.Cautions, style);
    }

    /// <summary>Writes the answer in one sentence.</summary>
    public void WriteShort(TiltResult result) => TextFlow.Write(writer, "", Answer(result), style.Width, style.Strong);

    /// <summary>The answer in one sentence.</summary>
    internal static string Answer(TiltResult result) => $"{Answer(result.Spans[0])}{EnergyParts.But(result.Verdict)}";

    private static string Answer(BestFacing year)
    {
        if (year.Best is not { } best)
        {
            return "How the panels face makes no difference: this wiring brings the same either way.";
        }

        string own = $"at {Degrees(year.Own.TiltDeg)} facing {Direction(year.Own.AzimuthDeg)}, as planned,";
        return year.LossShare < Hardly
            ? $"The panels face well for the year: {own} they bring {Figures.Energy(year.Own.DeliveredKWh)}, and {Degrees(best.TiltDeg)} facing {Direction(best.AzimuthDeg)} would bring {Figures.Energy(best.DeliveredKWh)}."
            : $"Best for the year is {Degrees(best.TiltDeg)} facing {Direction(best.AzimuthDeg)}, {Figures.Energy(best.DeliveredKWh)}; {own} it is {Figures.Energy(year.Own.DeliveredKWh)}, {Figures.Percent(100 * year.LossShare)} less.";
    }

    private void WriteSpans(TiltResult result)
    {
        TextTable table = new(false, true, true, true, true, true, true);
        table.Add(["for", "tilt", "facing", "kWh", "as planned", "less", "tilt alone*"]);
        foreach (BestFacing span in result.Spans)
        {
            table.Add(
                span.Best is { } best
                    ?
                    [
                        span.Span,
                        Degrees(best.TiltDeg),
                        Degrees(best.AzimuthDeg),
                        Figures.Number(best.DeliveredKWh, 1),
                        Figures.Number(span.Own.DeliveredKWh, 1),
                        Figures.Percent(100 * span.LossShare),
                        span.BestTilt is { } alone ? $"{Degrees(alone.TiltDeg)}" : "–",
                    ]
                    : [span.Span, "any", "–", Figures.Number(span.Own.DeliveredKWh, 1), Figures.Number(span.Own.DeliveredKWh, 1), "–", "–"],
                text => style.Strong(text));
        }

        table.Write(writer, 2, style.Width, wrapped: 0);
        TextFlow.Write(writer, "  ", "* the best tilt where the direction has to stay as planned.", style.Width);
        if (KeepsItsOwn(result) is { } keeps)
        {
            TextFlow.Write(writer, "  ", keeps, style.Width);
        }
    }

    /// <summary>What does not turn with the others; null where everything does.</summary>
    internal static string? KeepsItsOwn(TiltResult result) => result.Fixed.Length switch
    {
        0 => null,
        1 => $"{result.Fixed[0]} has a facing of its own in the plan and keeps it.",
        _ => $"{string.Join(", ", result.Fixed)} have facings of their own in the plan and keep them.",
    };

    /// <summary>How exact the tilt must be; null where no range is known.</summary>
    internal static string? NearlySentence(TiltResult result) => result.NearlyBest is { } nearly
        ? $"Anything from {Degrees(Math.Ceiling(nearly.LeastDeg))} to {Degrees(Math.Floor(nearly.MostDeg))} stays within 1 % of the best."
        : null;

    private void WriteByTilt(TiltResult result)
    {
        string[] amounts = [.. result.ByTilt.Select(facing => Figures.Energy(facing.DeliveredKWh))];
        int amountWidth = amounts.Max(text => text.Length);
        double most = result.ByTilt.Max(facing => facing.DeliveredKWh);
        double scale = (style.Width - amountWidth - 10) / Math.Max(1e-9, most);
        for (int i = 0; i < amounts.Length; i++)
        {
            string bar = Ladder.Bar(result.ByTilt[i].DeliveredKWh, result.ByTilt[i].DeliveredKWh, scale);
            writer.WriteLine($"  {Degrees(result.ByTilt[i].TiltDeg),4}  {amounts[i].PadLeft(amountWidth)}  {bar}".TrimEnd());
        }

        if (NearlySentence(result) is { } nearly)
        {
            TextFlow.Write(writer, "  ", nearly, style.Width);
        }
    }

    /// <summary>What a second tilt in the year adds.</summary>
    internal static string TwoSentence(TiltResult result, Facing best)
    {
        if (result.Two is not { } two)
        {
            return "A second tilt in the year adds nothing.";
        }

        double moreKWh = two.DeliveredKWh - best.DeliveredKWh;
        string off = two.TwoWeeksOffShare < 0.0005 ? "next to nothing" : $"at most {Figures.Percent(100 * two.TwoWeeksOffShare)}";
        return $"{Degrees(two.FlatDeg)} from {Day(two.FlatFrom)}, {Degrees(two.SteepDeg)} from {Day(two.SteepFrom)}: {Figures.Energy(two.DeliveredKWh)}, {Figures.Energy(moreKWh)} ({Figures.Percent(100 * moreKWh / best.DeliveredKWh)}) more than the best single tilt. Two weeks early or late cost {off}.";
    }

    private static string Day(DateOnly date) => date.ToString("MMMM d", CultureInfo.InvariantCulture);

    /// <summary>An angle.</summary>
    internal static string Degrees(double deg) => $"{Figures.Number(deg, deg == Math.Round(deg) ? 0 : 1)}°";

    /// <summary>A direction in degrees and by its wind.</summary>
    internal static string Direction(double azimuthDeg) => $"{Degrees(azimuthDeg)} ({Winds[(int)Math.Round(azimuthDeg / 45) % 8]})";
}
