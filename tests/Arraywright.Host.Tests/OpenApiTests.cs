using System.Text.Json;
using Json.Schema;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using Microsoft.OpenApi.Reader;

namespace Arraywright.Host.Tests;

/// <summary>The description is a valid one, and describes what is there.</summary>
public sealed class OpenApiTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private readonly RunningHost _host = shared.Host;

    [Fact]
    public async Task It_is_read_without_a_fault()
    {
        (OpenApiDocument? document, OpenApiDiagnostic? diagnostic) = OpenApiDocument.Parse(await DocumentAsync(), "json");
        Assert.Empty(diagnostic!.Errors);
        Assert.Empty(diagnostic.Warnings);
        Assert.Equal(OpenApiSpecVersion.OpenApi3_1, diagnostic.SpecificationVersion);
        Assert.True(document!.Paths.Count >= 10);
    }

    [Fact]
    public async Task It_has_every_route_and_no_other()
    {
        string[] routes =
        [
            .. _host.App.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
                .SelectMany(endpoint => (endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? []).Select(method => $"{method} {endpoint.RoutePattern.RawText}"))
                .Where(route => !route.Contains("**", StringComparison.Ordinal) && (route.StartsWith("POST ", StringComparison.Ordinal) || !IsQuestion(route)))
                .Order(StringComparer.Ordinal),
        ];
        using JsonDocument document = JsonDocument.Parse(await DocumentAsync());
        string[] described =
        [
            .. document.RootElement.GetProperty("paths").EnumerateObject()
                .SelectMany(path => path.Value.EnumerateObject().Select(operation => $"{operation.Name.ToUpperInvariant()} {path.Name}"))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(routes, described);
    }

    [Theory]
    [InlineData("plan", "")]
    [InlineData("check", "")]
    [InlineData("curve", "")]
    [InlineData("day", "?date=06-21")]
    [InlineData("year", "")]
    [InlineData("grow", "?most=1")]
    [InlineData("tilt", "")]
    [InlineData("parts", "")]
    [InlineData("ask", "")]
    public async Task An_answer_is_as_described_and_every_member_is(string verb, string query)
    {
        using HttpResponseMessage answer = await _host.AskAsync(verb + query, Answers.Plan("lambing-shed"));
        JsonElement json = await Answers.JsonAsync(answer);
        using JsonDocument document = JsonDocument.Parse(await DocumentAsync());
        JsonElement schema = document.RootElement.GetProperty("components").GetProperty("schemas").GetProperty(char.ToUpperInvariant(verb[0]) + verb[1..] + "Answer");
        Assert.True(JsonSchema.FromText(schema.GetRawText()).Evaluate(json).IsValid);
        Assert.Equal(
            schema.GetProperty("properties").EnumerateObject().Select(member => member.Name).Order(StringComparer.Ordinal),
            json.EnumerateObject().Select(member => member.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_problem_is_as_described()
    {
        using HttpResponseMessage answer = await _host.AskAsync("check", "plan: 1\npanels: 3\n");
        using JsonDocument document = JsonDocument.Parse(await DocumentAsync());
        string schema = document.RootElement.GetProperty("components").GetProperty("schemas").GetProperty("Problem").GetRawText();
        Assert.True(JsonSchema.FromText(schema).Evaluate(await Answers.ProblemAsync(answer)).IsValid);
    }

    private static bool IsQuestion(string route) => Api.QuestionTable.All.Any(question => route.EndsWith($" /api/{question.Verb}", StringComparison.Ordinal));

    private async Task<string> DocumentAsync()
    {
        using HttpResponseMessage answer = await _host.GetAsync("api/openapi.json");
        Assert.Equal("application/json", answer.Content.Headers.ContentType?.MediaType);
        return await Answers.TextAsync(answer);
    }
}
