using System.Globalization;
using System.Text;
using System.Text.Json;
using Arraywright.Limits;
using Arraywright.Parts;

namespace Arraywright.Files;

/// <summary>Writes a parts list: the body of the JSON, and the shopping list as comma-separated text.</summary>
public static class PartsJson
{
    internal static void Write(Utf8JsonWriter json, PartsList list)
    {
        json.WriteString("rules", list.Rules == RuleSet.Us ? "us" : "iec");
        json.WriteString("currency", list.Plan.Currency);
        json.WriteStartArray("inputs");
        foreach (InputParts input in list.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("input", input.Input);
            DesignJson.WriteWiring(json, input.Wiring);
            json.Figure("irradiance_w_m2", input.Conditions.IrradianceWPerM2);
            json.Figure("cell_c", input.Conditions.CellC);
            json.Figure("voltage_v", input.Operating.VoltageV);
            json.Figure("current_a", input.Operating.CurrentA);
            json.Figure("drop_v", input.DropV);
            json.Figure("drop_percent", input.DropPercent);
            json.Figure("heat_kwh", input.HeatKWh);
            json.WriteStartArray("pieces");
            foreach (Piece piece in input.Pieces)
            {
                WritePiece(json, piece);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteShopping(json, list);
        json.WriteStartArray("alternatives");
        foreach (PartsAlternative other in list.Alternatives)
        {
            json.WriteStartObject();
            json.WriteString("what", other.What);
            json.WriteStartArray("wirings");
            foreach (string wiring in other.Wirings)
            {
                json.WriteStringValue(wiring);
            }

            json.WriteEndArray();
            json.Figure("extra_price", other.ExtraPrice);
            json.Figure("gain_kwh", other.GainKWh);
            json.Figure("gain_percent", other.GainPercent);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The shopping list as comma-separated text (RFC 4180) with a header that names the units.</summary>
    public static string Csv(PartsList list)
    {
        StringBuilder text = new("what,rating,needed,needed_m,owned,owned_m,buy,buy_m,unit_price,price,currency\n");
        foreach (ShoppingLine line in list.Shopping)
        {
            bool isCounted = line.NeededM is null;
            string needed = isCounted ? line.Needed.ToString(CultureInfo.InvariantCulture) : "";
            string owned = isCounted ? line.Owned.ToString(CultureInfo.InvariantCulture) : "";
            string buy = isCounted ? line.Buy.ToString(CultureInfo.InvariantCulture) : "";
            text.Append(CultureInfo.InvariantCulture, $"{Quoted(line.What)},{Quoted(line.Rating)},{needed},{line.NeededM:0.##},{owned},{line.OwnedM:0.##},{buy},{line.BuyM:0.##},{line.UnitPrice:0.##},{line.Price:0.##},{list.Plan.Currency}\n");
        }

        return text.ToString();
    }

    private static string Quoted(string field) =>
        field.AsSpan().ContainsAny(",\"\n") ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : field;

    private static void WriteShopping(Utf8JsonWriter json, PartsList list)
    {
        json.WriteStartArray("shopping");
        foreach (ShoppingLine line in list.Shopping)
        {
            json.WriteStartObject();
            json.WriteString("what", line.What);
            json.WriteString("rating", line.Rating);
            if (line.NeededM is null)
            {
                json.WriteNumber("needed", line.Needed);
                json.WriteNumber("owned", line.Owned);
                json.WriteNumber("buy", line.Buy);
            }
            else
            {
                json.Figure("needed_m", line.NeededM);
                json.Figure("owned_m", line.OwnedM);
                json.Figure("buy_m", line.BuyM);
            }

            json.Figure("unit_price", line.UnitPrice);
            json.Figure("price", line.Price);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePiece(Utf8JsonWriter json, Piece piece)
    {
        json.WriteStartObject();
        json.WriteString("kind", Word(piece.Kind));
        json.WriteString("place", piece.Place.Id);
        json.WriteString("pole", piece.Pole switch { Pole.Plus => "plus", Pole.Minus => "minus", _ => "both" });
        json.WriteString("panel", piece.Panel);
        if (piece.Ways > 0)
        {
            json.WriteNumber("ways", piece.Ways);
            json.WriteStartArray("gathers");
            foreach (int branch in piece.Gathers)
            {
                json.WriteNumberValue(branch);
            }

            json.WriteEndArray();
        }

        json.Figure("design_a", piece.DesignA);
        json.Figure("cold_v", piece.VoltageV);
        json.Figure("needed_a", piece.NeededA);
        json.Figure("rating_a", piece.RatingA);
        json.Figure("rating_v", piece.RatingV);
        json.Figure("margin_percent", piece.MarginPercent);
        json.WriteString("size", piece.Size?.Name);
        json.WriteString("size_substitute", piece.Size?.Substitute?.Name);
        json.Figure("area_mm2", piece.Size?.AreaMm2);
        json.Figure("length_m", piece.LengthM);
        json.WriteNumber("contacts", piece.Contacts);
        json.Figure("ohm", piece.Ohm);
        json.Figure("current_a", piece.CurrentA);
        json.Figure("drop_v", piece.DropV);
        json.Figure("drop_percent", piece.DropPercent);
        json.Figure("heat_kwh", piece.HeatKWh);
        json.Figure("price", piece.Price);
        json.WriteString("working", piece.Working);
        json.WriteString("source", piece.Source);
        json.WriteStartArray("findings");
        foreach (Finding finding in piece.Findings)
        {
            DesignJson.WriteFinding(json, finding);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Word(PieceKind kind) => kind switch
    {
        PieceKind.PanelLead => "panel_lead",
        PieceKind.StringConductor => "string_conductor",
        PieceKind.StringFuse => "string_fuse",
        PieceKind.BranchConnector => "branch_connector",
        PieceKind.Extension => "extension",
        PieceKind.Switch => "switch",
        PieceKind.Run => "run",
        PieceKind.WattMeter => "watt_meter",
        _ => "adapter",
    };
}
