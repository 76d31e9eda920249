using Arraywright.Files;

namespace Arraywright.Host.Api;

/// <summary>The routes under <c>/api</c>.</summary>
internal static class ApiRoutes
{
    /// <summary>Maps each question, and what describes them.</summary>
    public static void Map(WebApplication app)
    {
        Answering answering = app.Services.GetRequiredService<Answering>();
        foreach (Question question in QuestionTable.All)
        {
            app.MapPost($"/api/{question.Verb}", (RequestDelegate)(context => answering.AnswerAsync(context, question)));
            app.MapMethods($"/api/{question.Verb}", ["GET", "HEAD", "PUT", "DELETE", "PATCH"], (RequestDelegate)Problem.WrongMethod);
        }

        app.MapGet("/api/openapi.json", () => TypedResults.Text(OpenApiDocument.Text, "application/json"));
        app.MapGet("/api/schema", () => TypedResults.Text(PlanSchema.Text, "application/schema+json"));
        app.Map("/api/{**rest}", (RequestDelegate)Problem.NoSuchQuestion);
    }
}
