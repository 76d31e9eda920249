using Arraywright.Limits;
using Arraywright.Parts;

namespace Arraywright.Presentation.Terminal;

/// <summary>A parts list as text: what to buy, what each piece must bear and why, what is in doubt, other ways.</summary>
/// <param name="writer">Where the text goes.</param>
/// <param name="style">Width and colour.</param>
public sealed class PartsScreen(TextWriter writer, TerminalStyle style)
{
    /// <summary>Writes everything.</summary>
    public void Write(PartsList list)
    {
        TextFlow.Write(writer, "", list.Plan.Name, style.Width, style.Faint);
        writer.WriteLine();
        WriteShort(list);
        EnergyParts.Heading(writer, "The wiring", style);
        EnergyParts.WriteWirings(writer, list.Design, style);
        WriteShopping(list);
        foreach (InputParts input in list.Inputs.Where(input => input.Wiring is not null))
        {
            WriteInput(input, list.Inputs.Length > 1);
        }

        WriteAlternatives(list);
        EnergyParts.Heading(writer, "What was assumed", style);
        AssumedList.Write(writer, list.Assumed, style);
        EnergyParts.Heading(writer, "Before you touch a lead", style);
        foreach (string caution in list.Cautions)
        {
            TextFlow.Write(writer, "  · ", caution, style.Width);
        }
    }

    /// <summary>Writes the answer in one sentence.</summary>
    public void WriteShort(PartsList list) =>
        TextFlow.Write(writer, "", Sentence(list), style.Width, text => style.ForLevel(list.Verdict, text));

    /// <summary>The answer in one sentence, its first word the verdict.</summary>
    public static string Sentence(PartsList list) => $"{VerdictSentence.Word(list.Verdict)}: {Answer(list)}";

    private static string Answer(PartsList list)
    {
        if (list.Verdict == Level.Go)
        {
            return list.Shopping.All(line => line is { Buy: 0 } and not { BuyM: > 0 }) ? "every part is at hand and strong enough." : "every part on the list is strong enough for this wiring.";
        }

        // Of what is against it, the piece that is furthest from bearing what it must, unless more than the parts is against it.
        Finding? weakest = list.Pieces.SelectMany(piece => piece.Findings).Where(finding => finding.Level == list.Verdict).MinBy(finding => finding.MarginPercent ?? double.MinValue);
        if (list.Design.Verdict == list.Verdict && (weakest is null || !IsOfParts(list.Design)))
        {
            return list.Verdict == Level.Stop ? "do not build this wiring; `arraywright check` or `plan` tells why." : "the wiring itself has open questions; `arraywright ask` writes them to the maker.";
        }

        return weakest is null
            ? $"a label looks odd and must be read again: {list.Plan.Doubts[0].Panel}, \"{list.Plan.Doubts[0].Field}\"."
            : $"{(list.Verdict == Level.Stop ? "do not build it like this." : "settle this before you buy.")} {weakest.Title}: {VerdictSentence.Compared(weakest)}.";
    }

    /// <summary>Whether all that is against a design is the rating stated of a part.</summary>
    private static bool IsOfParts(Design design) =>
        design.Assignments.SelectMany(assignment => assignment.Findings).Where(finding => finding.Level == design.Verdict).All(finding => finding.Rule == "stated_parts");

    private void WriteShopping(PartsList list)
    {
        string rules = $"by the rules {(list.Rules == RuleSet.Us ? "of the NEC (us)" : "of the IEC (iec)")}";
        EnergyParts.Heading(writer, $"To buy, {rules}", style);
        TextTable table = new(true, false, false, true);
        foreach (ShoppingLine line in list.Shopping)
        {
            string owned = line.Owned > 0 ? $"; {line.Owned} at hand" : line.OwnedM > 0 ? $"; {Metres(line.OwnedM.Value)} at hand" : "";
            table.Add([line.BuyM is { } metres ? Metres(metres) : $"{line.Buy} ×", $"{line.What}{owned}", line.Rating, line.Price is { } price ? GrowthTable.Money(price, list.Plan) : ""], style.Strong);
        }

        if (list.Shopping.Length == 0)
        {
            TextFlow.Write(writer, "  ", NothingToBuy(list), style.Width);
        }

        table.Write(writer, 2, style.Width, wrapped: 1);
        if (list.Shopping.Any(line => line.Price is not null))
        {
            int unpriced = list.Shopping.Count(line => line is { Price: null } and ({ Buy: > 0 } or { BuyM: > 0 }));
            TextFlow.Write(writer, "  ", $"Together {GrowthTable.Money(list.Shopping.Sum(line => line.Price ?? 0), list.Plan)}{(unpriced > 0 ? $"; {Figures.Count(unpriced, "line")} without a price not counted" : "")}.", style.Width);
        }
    }

    /// <summary>What stands in place of a list that is empty.</summary>
    internal static string NothingToBuy(PartsList list) => list.Pieces.Any()
        ? "Nothing: this wiring must not be built as it is. What each of its pieces would have to bear stands below."
        : "Nothing: no panel is connected.";

    private void WriteInput(InputParts input, bool isNamed)
    {
        EnergyParts.Heading(writer, isNamed ? $"What each piece must bear on {input.Input}" : "What each piece must bear", style);
        TextTable table = new(true, false, true, true, true, true);
        table.Add(["", "", "must carry", "rating", "drops", "heat a year"]);
        foreach (IGrouping<string, Piece> alike in input.Pieces.GroupBy(Likeness))
        {
            Piece piece = alike.First();
            table.Add(
                [
                    $"{alike.Count()} ×",
                    Named(piece),
                    Figures.Of(piece.NeededA, "A"),
                    Rating(piece),
                    piece.Ohm > 0 ? $"{Figures.Number(alike.Average(one => one.DropV), 3)} V" : "–",
                    HeatOfEach(alike),
                ],
                style.Strong);
            table.AddNote($"{piece.Working} [{piece.Source}]", 1);
        }

        table.Write(writer, 2, style.Width, wrapped: 1);
        TextFlow.Write(writer, "  ", "Drop and heat in a row are those of one piece.", style.Width);
        string heat = input.HeatKWh is { } heatKWh ? $", {Figures.Energy(heatKWh)} a year" : "";
        TextFlow.Write(writer, "  ", $"From the panels to the unit {Figures.Number(input.DropV, 2)} V are lost, {Figures.Percent(input.DropPercent)} of {Figures.Of(input.Operating.VoltageV, "V")}, at {Figures.Of(input.Conditions.IrradianceWPerM2, "W/m²")}{heat}.", style.Width);
        EnergyParts.Heading(writer, isNamed ? $"What the rules say of the parts on {input.Input}" : "What the rules say of the parts", style);
        FindingsTable.Write(writer, [.. input.Pieces.SelectMany(piece => piece.Findings).Distinct()], style);
    }

    private void WriteAlternatives(PartsList list)
    {
        if (list.Alternatives.Length == 0)
        {
            return;
        }

        EnergyParts.Heading(writer, "Other ways", style);
        foreach (PartsAlternative other in list.Alternatives)
        {
            TextFlow.Write(writer, "  · ", OtherWay(list, other), style.Width);
        }
    }

    /// <summary>Another way and what it costs and brings.</summary>
    internal static string OtherWay(PartsList list, PartsAlternative other)
    {
        string energy = other.GainKWh is { } kWh
            ? $"{(kWh < 0 ? "" : "+")}{Figures.Energy(kWh)} a year ({(other.GainPercent < 0 ? "" : "+")}{Figures.Number(other.GainPercent, 2)} %)"
            : $"{(other.GainPercent < 0 ? "" : "+")}{Figures.Number(other.GainPercent, 2)} % of the watts";
        string price = other.ExtraPrice is { } extra ? $", {(extra < 0 ? $"{GrowthTable.Money(-extra, list.Plan)} less" : $"{GrowthTable.Money(extra, list.Plan)} more")}" : "";
        string wirings = string.Join("; ", other.Wirings.Select((wiring, i) => wiring.Length == 0 ? "" : $"{list.Inputs[i].Input}: {wiring}").Where(text => text.Length > 0));
        return $"{char.ToUpperInvariant(other.What[0])}{other.What[1..]}: {energy}{price}.{(wirings.Length > 0 ? $" {wirings}." : "")}";
    }

    /// <summary>Pieces that differ in nothing one buys or reads are one row.</summary>
    internal static string Likeness(Piece piece) =>
        string.Join('|', piece.Kind, piece.Ways, piece.Size?.Name, piece.LengthM, piece.NeededA.ToString("F6"), piece.RatingA, piece.Working);

    /// <summary>A piece as one would ask for it, with its length and size.</summary>
    internal static string Named(Piece piece) => piece.Kind switch
    {
        PieceKind.BranchConnector => $"branch connector, {PieceWords.IntoOne(piece.Ways)}",
        PieceKind.PanelLead => $"panel lead, {piece.Size!.BothNames}",
        _ when piece is { Size: { } size, LengthM: { } lengthM } => $"{PieceWords.Name(piece.Kind)}, {Metres(lengthM)} of {size.BothNames}",
        _ => PieceWords.Name(piece.Kind),
    };

    /// <summary>What a conductor carries, never rounded up; of what is bought by its rating, the rating to look for.</summary>
    internal static string Rating(Piece piece) => piece is { Size: not null, RatingA: { } carriesA } ? Figures.Stated(Math.Floor((carriesA * 10) + 1e-9) / 10, "A") : PieceWords.Amps(piece);

    /// <summary>What one of a row of pieces turns into heat in a year, as its drop is that of one.</summary>
    internal static string HeatOfEach(IGrouping<string, Piece> alike) =>
        alike.First() is { Ohm: > 0, HeatKWh: not null } ? Figures.Energy(alike.Average(one => one.HeatKWh!.Value)) : "–";

    /// <summary>A length: feet leave figures that nobody measures.</summary>
    internal static string Metres(double m) => Figures.Stated(Figures.Three(m), "m");
}
