using System.Text.Json;
using Arraywright.Files;

namespace Arraywright.Host.Api;

/// <summary>A question in one line as JSON: <c>{"panels": ["4x 22.9V 6.72A 18.9V 6.35A"], "onto": ["50V 10A 400W"]}</c>.</summary>
internal static class QuickBody
{
    private const string Name = "question";
    private const string Example = "{\"panels\": [\"4x 22.9V 6.72A 18.9V 6.35A\"], \"onto\": [\"50V 10A 400W\"]}";
    private const int MostTexts = 200;
    private const int LongestText = 500;

    /// <summary>The plan that the question stands for, or what is wrong with it.</summary>
    public static PlanReading Read(ReadOnlyMemory<byte> body)
    {
        try
        {
            using JsonDocument json = JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = 4, AllowDuplicateProperties = false });
            return json.RootElement.ValueKind == JsonValueKind.Object ? Read(json.RootElement) : Refused(1, 1, "something else", Example);
        }
        catch (JsonException broken)
        {
            return Refused((int)(broken.LineNumber ?? 0) + 1, (int)(broken.BytePositionInLine ?? 0) + 1, "something that is not JSON", Example);
        }
    }

    private static PlanReading Read(JsonElement question)
    {
        foreach (JsonProperty property in question.EnumerateObject())
        {
            if (property.Name is not ("panels" or "onto"))
            {
                return Refused(1, 1, "a member that is neither \"panels\" nor \"onto\"", Example);
            }
        }

        return Texts(question, "panels") is { } panels && Texts(question, "onto") is { } onto
            ? QuickPlan.Read(panels, onto)
            : Refused(1, 1, "no lists of texts \"panels\" and \"onto\"", Example);
    }

    private static List<string>? Texts(JsonElement question, string name)
    {
        if (!question.TryGetProperty(name, out JsonElement list) || list.ValueKind != JsonValueKind.Array || list.GetArrayLength() > MostTexts)
        {
            return null;
        }

        List<string> texts = [];
        foreach (JsonElement item in list.EnumerateArray())
        {
            if (item.ValueKind != JsonValueKind.String || item.GetString() is not { Length: > 0 and <= LongestText } text)
            {
                return null;
            }

            texts.Add(text);
        }

        return texts;
    }

    private static PlanReading Refused(int line, int column, string found, string expected) =>
        new(null, [new Fault(Name, line, column, found, expected)]);
}
