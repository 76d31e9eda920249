using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Arraywright.Files.Keys;
using Arraywright.Files.Quantities;

namespace Arraywright.Files;

/// <summary>The plan file's JSON Schema (2020-12), for the completion of an editor. It is written from the very table that the reader reads by.</summary>
public static class PlanSchema
{
    /// <summary>The schema as JSON text.</summary>
    public static string Text { get; } = Write();

    private static string Write()
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Arraywright plan");
            WriteSection(json, RootKeys.Section, null);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteSection(Utf8JsonWriter json, PlanSection section, LimitKey? limit)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (PlanKey key in section.Keys)
        {
            json.WriteStartObject(key.Name);
            json.WriteString("description", key.Otherwise is null ? key.About : $"{key.About} Left out: {key.Otherwise}.");
            WriteValue(json, key is LimitValueKey && limit is not null ? new QuantityKey(key.Name, limit.Quantity, limit.Example, key.About) : key);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        WriteNames(json, "required", section.Keys.Where(static key => key.Required).Select(static key => key.Name));
        json.WriteBoolean("additionalProperties", false);
    }

    private static void WriteValue(Utf8JsonWriter json, PlanKey key)
    {
        switch (key)
        {
            case NameKey:
                json.WriteString("type", "string");
                json.WriteString("pattern", @"^[\p{L}\p{Nd}]([\p{L}\p{Nd}-]*[\p{L}\p{Nd}])?$");
                json.WriteNumber("maxLength", Caps.NameLength);
                WriteExample(json, key);
                break;
            case ChoiceKey choice:
                WriteNames(json, "enum", choice.Options);
                break;
            case CountKey count:
                json.WriteString("type", "integer");
                json.WriteNumber("minimum", count.Min);
                json.WriteNumber("maximum", count.Max);
                break;
            case QuantityKey quantity:
                WriteQuantity(json, quantity.Quantity);
                WriteExample(json, key);
                break;
            case RangeKey range:
                json.WriteString("type", "string");
                json.WriteString("pattern", $"^{QuantityPattern.Number} *(\\.\\.|-) *{QuantityPattern.Number} *{QuantityPattern.Units(range.Quantity)}$");
                WriteExample(json, key);
                break;
            case LimitKey limit:
                WriteEither(json, () => WriteQuantity(json, limit.Quantity), () => WriteSection(json, LimitKeys.Section, limit));
                WriteExample(json, key);
                break;
            case HourKey:
                json.WriteString("pattern", "^([01]?[0-9]|2[0-4])(:[0-5][0-9])?( *h)?$");
                json.WriteStartArray("type");
                json.WriteStringValue("string");
                json.WriteStringValue("integer");
                json.WriteEndArray();
                WriteExample(json, key);
                break;
            case SharesKey:
                json.WriteString("type", "array");
                json.WriteNumber("minItems", 1);
                json.WriteNumber("maxItems", SharesKey.Most);
                json.WriteStartObject("items");
                WriteQuantity(json, QuantityKinds.Share);
                json.WriteEndObject();
                break;
            case ShadeKey:
                WriteEither(json, () => WriteQuantity(json, QuantityKinds.Share), () => WriteList(json, ShadeHoursKeys.Section, 24), () => WriteSection(json, ShadeGroupsKeys.Section, null));
                WriteExample(json, key);
                break;
            case SectionKey section:
                WriteSection(json, section.Section, null);
                break;
            case ListKey list:
                WriteList(json, list.Section, list.Most);
                break;
            default:
                json.WriteString("type", "string");
                json.WriteNumber("minLength", 1);
                WriteExample(json, key);
                break;
        }
    }

    private static void WriteQuantity(Utf8JsonWriter json, Quantity quantity)
    {
        if (!quantity.MayBeBare)
        {
            json.WriteString("type", "string");
            json.WriteString("pattern", QuantityPattern.Of(quantity));
            return;
        }

        json.WriteStartArray("type");
        json.WriteStringValue("number");
        json.WriteStringValue("string");
        json.WriteEndArray();
        json.WriteNumber("minimum", quantity.Min);
        json.WriteNumber("maximum", quantity.Max);
        json.WriteString("pattern", QuantityPattern.Of(quantity));
    }

    private static void WriteList(Utf8JsonWriter json, PlanSection section, int most)
    {
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 1);
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        WriteSection(json, section, null);
        json.WriteEndObject();
    }

    private static void WriteEither(Utf8JsonWriter json, params Action[] forms)
    {
        json.WriteStartArray("anyOf");
        foreach (Action write in forms)
        {
            json.WriteStartObject();
            write();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteExample(Utf8JsonWriter json, PlanKey key) => WriteNames(json, "examples", [key.Example]);

    private static void WriteNames(Utf8JsonWriter json, string property, IEnumerable<string> names)
    {
        json.WriteStartArray(property);
        foreach (string name in names)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
    }
}
