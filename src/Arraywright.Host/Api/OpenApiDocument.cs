using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Arraywright.Files;

namespace Arraywright.Host.Api;

/// <summary>The OpenAPI description (3.1) of the interface, written from the table that the routes come from.</summary>
internal static class OpenApiDocument
{
    private const string Json = "application/json";
    private static readonly JsonWriterOptions Readable = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly (string Status, string Words)[] Problems =
    [
        ("400", "an option is wrong"),
        ("408", "the body came too slowly"),
        ("413", "the body is over 1 MiB"),
        ("415", "the body has another type"),
        ("422", "the plan has faults, all listed with their places, or lacks what the question needs"),
        ("429", "this client asks too fast; Retry-After says when to come again"),
        ("503", "too many ask at once, or the time ran out before anything whole came"),
    ];

    /// <summary>The document.</summary>
    public static string Text { get; } = Write();

    private static string Write()
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Readable))
        {
            json.WriteStartObject();
            json.WriteString("openapi", "3.1.0");
            WriteInfo(json);
            json.WriteStartObject("paths");
            foreach (Question question in QuestionTable.All)
            {
                WriteQuestion(json, question);
            }

            WriteGet(json, "/api/schema", "schema", "The JSON Schema of plans.", "application/schema+json");
            WriteGet(json, "/api/openapi.json", "openapi", "This document.", Json);
            WriteGet(json, "/health", "health", "Says ok while the host answers.", "text/plain");
            json.WriteEndObject();
            WriteComponents(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteInfo(Utf8JsonWriter json)
    {
        json.WriteStartObject("info");
        json.WriteString("title", "Arraywright");
        json.WriteString("version", Assembly.GetExecutingAssembly().GetName().Version?.ToString(3));
        json.WriteString("description", "Finds and proves the best wiring of a mixed pile of solar panels on direct-current charging inputs. Each question takes a plan and answers what the command of the same name prints with --json. Figures help to plan; follow the manuals, the local code, and have work that needs a licence done by somebody who has one.");
        json.WriteEndObject();
    }

    private static void WriteQuestion(Utf8JsonWriter json, Question question)
    {
        json.WriteStartObject($"/api/{question.Verb}");
        json.WriteStartObject("post");
        json.WriteString("operationId", question.Verb);
        json.WriteString("summary", question.Summary);
        WriteParameters(json, question.Options);
        json.WriteStartObject("requestBody");
        json.WriteBoolean("required", true);
        json.WriteStartObject("content");
        foreach (string type in question.BodyTypes)
        {
            WriteContent(json, type, question.BodyTypes.Length == 1 ? "#/components/schemas/QuickQuestion" : "#/components/schemas/Plan");
        }

        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartObject("responses");
        json.WriteStartObject("200");
        json.WriteString("description", "the answer");
        json.WriteStartObject("content");
        WriteContent(json, question.AnswerType, question.Members.IsEmpty ? null : $"#/components/schemas/{AnswerName(question)}");
        json.WriteEndObject();
        json.WriteEndObject();
        foreach ((string status, string words) in Problems)
        {
            json.WriteStartObject(status);
            json.WriteString("description", words);
            json.WriteStartObject("content");
            WriteContent(json, "application/problem+json", "#/components/schemas/Problem");
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteParameters(Utf8JsonWriter json, ImmutableArray<QueryOption> options)
    {
        json.WriteStartArray("parameters");
        foreach (QueryOption option in options)
        {
            json.WriteStartObject();
            json.WriteString("name", option.Name);
            json.WriteString("in", "query");
            json.WriteBoolean("required", option.IsRequired);
            json.WriteString("description", option.About);
            json.WriteStartObject("schema");
            json.WriteString("type", option.JsonType);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteGet(Utf8JsonWriter json, string path, string name, string summary, string type)
    {
        json.WriteStartObject(path);
        json.WriteStartObject("get");
        json.WriteString("operationId", name);
        json.WriteString("summary", summary);
        json.WriteStartObject("responses");
        json.WriteStartObject("200");
        json.WriteString("description", "as it says");
        json.WriteStartObject("content");
        WriteContent(json, type, null);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteContent(Utf8JsonWriter json, string type, string? reference)
    {
        json.WriteStartObject(type);
        json.WriteStartObject("schema");
        json.WriteString(reference is null ? "type" : "$ref", reference ?? (type.Contains("json", StringComparison.Ordinal) ? "object" : "string"));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteComponents(Utf8JsonWriter json)
    {
        json.WriteStartObject("components");
        json.WriteStartObject("schemas");
        json.WritePropertyName("Plan");
        json.WriteRawValue(PlanSchema.Text);
        json.WritePropertyName("QuickQuestion");
        json.WriteRawValue("""{"type":"object","properties":{"panels":{"type":"array","items":{"type":"string"},"minItems":1,"description":"a count and a label each, such as 4x 22.9V 6.72A 18.9V 6.35A"},"onto":{"type":"array","items":{"type":"string"},"minItems":1,"description":"an input each, such as 50V 10A 400W"}},"required":["panels","onto"],"additionalProperties":false}""");
        json.WritePropertyName("Problem");
        json.WriteRawValue("""{"type":"object","description":"RFC 9457","properties":{"type":{"type":"string"},"title":{"type":"string"},"status":{"type":"integer"},"detail":{"type":"string"},"faults":{"type":"array","items":{"type":"object","properties":{"file":{"type":"string"},"line":{"type":"integer"},"column":{"type":"integer"},"found":{"type":"string"},"expected":{"type":"string"},"hint":{"type":["string","null"]}},"required":["file","line","column","found","expected","hint"]}}},"required":["type","title","status","detail"]}""");
        foreach (Question question in QuestionTable.All.Where(question => !question.Members.IsEmpty).DistinctBy(AnswerName))
        {
            WriteAnswer(json, question);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>Members may be added to an answer, so that others than those here are no fault.</summary>
    private static void WriteAnswer(Utf8JsonWriter json, Question question)
    {
        ImmutableArray<AnswerMember> members = [.. AnswerMembers.OfAll, .. question.Members];
        json.WriteStartObject(AnswerName(question));
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (AnswerMember member in members)
        {
            json.WriteStartObject(member.Name);
            json.WriteString("description", member.About);
            WriteType(json, member.JsonType);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("required");
        foreach (AnswerMember member in members)
        {
            json.WriteStringValue(member.Name);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteType(Utf8JsonWriter json, string type)
    {
        if (!type.EndsWith('?'))
        {
            json.WriteString("type", type);
            return;
        }

        json.WriteStartArray("type");
        json.WriteStringValue(type[..^1]);
        json.WriteStringValue("null");
        json.WriteEndArray();
    }

    /// <summary>A quick question is answered as a plan is.</summary>
    private static string AnswerName(Question question) =>
        question.Members == AnswerMembers.Plan ? "PlanAnswer" : char.ToUpperInvariant(question.Verb[0]) + question.Verb[1..] + "Answer";
}
