using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Arraywright.Files.Keys;
using Arraywright.Files.Text;
using Arraywright.Files.Yaml;
using CsCheck;
using Json.Schema;

namespace Arraywright.Files.Tests;

public sealed class PlanSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(PlanSchema.Text);

    public static TheoryData<string> Good => [.. Repository.Examples.Select(File.ReadAllText), StarterPlan.Text, Plans.Full.Replace("hay-davies", "hay davies", StringComparison.Ordinal), Plans.Small];

    [Theory]
    [MemberData(nameof(Good))]
    public void A_good_plan_fits_the_schema(string text) => Assert.True(Fits(text));

    [Fact]
    public void Whatever_the_reader_takes_the_schema_takes() => PlanTexts.Any.Sample(
        text => Assert.True(Fits(text.Replace("Flat-on_ground", "flat on ground", StringComparison.Ordinal).Replace("hay-davies", "hay davies", StringComparison.Ordinal).Replace("Crystalline_Silicon", "crystalline silicon", StringComparison.Ordinal))),
        iter: 100);

    [Theory]
    [InlineData("voc:", "vco:")]
    [InlineData("22.9 V", "22,9 V")]
    [InlineData("22.9 V", "22.9")]
    [InlineData("22.9 V", "22.9 A")]
    [InlineData("count: 4", "count: 0")]
    [InlineData("count: 4", "count: four")]
    [InlineData("name: a", "name: a b")]
    [InlineData("10 A", "{ evidence: maker }")]
    [InlineData("10 A", "{ value: 10 W }")]
    [InlineData("10 A", "{ value: 10 A, evidence: friend }")]
    [InlineData("inputs:", "goal: fast\ninputs:")]
    [InlineData("inputs:", "cable: { size: 10 ft }\ninputs:")]
    [InlineData("inputs:", "place: { latitude: 54, longitude: 0, horizon: [[90 deg, 12 deg]] }\ninputs:")]
    [InlineData("inputs:", "place: { latitude: 54, longitude: 0, horizon: [{ azimuth: 90 deg }] }\ninputs:")]
    [InlineData("inputs:", "place: { latitude: 54, longitude: 0, albedo: [20 %, 30 %] }\ninputs:")]
    [InlineData("inputs:", "mount: { soiling: 3 }\ninputs:")]
    [InlineData("inputs:", "sky: cloudy\ninputs:")]
    [InlineData("    max_voltage: 60 V\n", "")]
    public void A_bad_plan_does_not_fit_the_schema(string from, string to) => Assert.False(Fits(Plans.Changed(from, to)));

    [Fact]
    public void The_schema_describes_every_key()
    {
        foreach (PlanSection section in RootKeys.All)
        {
            foreach (PlanKey key in section.Keys)
            {
                Assert.Contains($"\"{key.Name}\": {{", PlanSchema.Text, StringComparison.Ordinal);
                Assert.EndsWith(".", key.About, StringComparison.Ordinal);
                Assert.True(key.Required != (key.Otherwise is not null), $"{key.Name} is either required or says what happens without it");
            }
        }
    }

    [Fact]
    public void The_words_of_a_choice_stand_in_the_order_of_their_enumeration()
    {
        AssertOrder<Goal>(RootKeys.Goal);
        AssertOrder<MountKind>(MountKeys.Kind);
        AssertOrder<Sky.SkyModel>(RootKeys.Sky);
        AssertOrder<Gear.EvidenceKind>(LimitKeys.Evidence);
        AssertOrder<Gear.Technology>(PanelKeys.Technology);
    }

    private static void AssertOrder<T>(ChoiceKey key)
        where T : struct, Enum =>
        Assert.Equal(Enum.GetNames<T>().Select(name => name.ToLowerInvariant()), key.Options.Select(option => option.Replace(" ", "", StringComparison.Ordinal)));

    private static bool Fits(string text)
    {
        FaultList faults = new("plan.yaml");
        JsonNode? json = ToJson(new YamlTreeReader(text, faults).Read()!);
        Assert.Equal(0, faults.Count);
        return Schema.Evaluate(JsonSerializer.SerializeToElement(json)).IsValid;
    }

    /// <summary>As an editor sees it: plain whole and decimal numbers are numbers, all else is text.</summary>
    private static JsonNode? ToJson(YamlNode node) => node switch
    {
        YamlMapping mapping => new JsonObject(mapping.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, ToJson(entry.Value)))),
        YamlSequence sequence => new JsonArray([.. sequence.Items.Select(ToJson)]),
        YamlScalar { IsNothing: true } => null,
        YamlScalar scalar when long.TryParse(scalar.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long whole) => whole,
        YamlScalar scalar when double.TryParse(scalar.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) => number,
        YamlScalar scalar => scalar.Text,
        _ => null,
    };
}
