using System.Text;
using System.Threading.RateLimiting;
using Arraywright.Energy;
using Arraywright.Files;
using Arraywright.Files.Asking;

namespace Arraywright.Host.Api;

/// <summary>The way of a question from its request to its answer.</summary>
internal sealed class Answering(HostSettings settings, Lanes lanes, AnswerCache cache, SunMemory memory, IHostApplicationLifetime life)
{
    /// <summary>Answers one request.</summary>
    public async Task AnswerAsync(HttpContext context, Question question)
    {
        QueryValues query = new(context.Request.Query, question.Options, memory);
        if (query.Faults.Count > 0)
        {
            await Problem.WrongOptions(context, query.Faults);
        }
        else if (!PlanBody.HasType(context.Request, question.BodyTypes))
        {
            await Problem.WrongType(context, question.BodyTypes);
        }
        else
        {
            ReadOnlyMemory<byte> body = await PlanBody.ReadAllAsync(context.Request);
            string key = AnswerCache.Key(question, query, body);
            await (cache.Find(key) is { } known ? WriteAsync(context, question, known) : InTurnAsync(context, question, query, body, key));
        }
    }

    private async Task InTurnAsync(HttpContext context, Question question, QueryValues query, ReadOnlyMemory<byte> body, string key)
    {
        using CancellationTokenSource patience = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
        patience.CancelAfter(TimeSpan.FromSeconds(settings.LimitS));
        RateLimitLease? lease = null;
        try
        {
            lease = await lanes.EnterAsync(question, patience.Token);
        }
        catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
        {
            // It waited as long as it might have been computed for.
        }

        using (lease)
        {
            if (lease is not { IsAcquired: true })
            {
                await Problem.Busy(context);
            }
            else if (cache.Find(key) is { } known)
            {
                await WriteAsync(context, question, known);
            }
            else
            {
                await ComputeAsync(context, question, query, body, key);
            }
        }
    }

    private async Task ComputeAsync(HttpContext context, Question question, QueryValues query, ReadOnlyMemory<byte> body, string key)
    {
        using CancellationTokenSource limit = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
        limit.CancelAfter(TimeSpan.FromSeconds(settings.LimitS));
        using CancellationTokenRegistration stopping = life.ApplicationStopping.Register(() => limit.CancelAfter(ArraywrightHost.Drain));
        PlanReading reading = question.Read(body);
        if (reading.Plan is not { } plan)
        {
            await Problem.WrongPlan(context, reading.Faults);
            return;
        }

        Asked<string>? asked = await Task.Run(() => Ask(question, plan, query, limit.Token), CancellationToken.None);
        context.RequestAborted.ThrowIfCancellationRequested();
        if (asked is null || (limit.IsCancellationRequested && !question.GivesBestSoFar))
        {
            await Problem.TookTooLong(context, settings.LimitS);
        }
        else if (asked.Value.Refusal is { } refusal)
        {
            await Problem.Refused(context, refusal);
        }
        else
        {
            byte[] answer = Encoding.UTF8.GetBytes(asked.Value.Result!);
            if (!limit.IsCancellationRequested)
            {
                cache.Keep(key, answer);
            }

            await WriteAsync(context, question, answer);
        }
    }

    /// <summary>Null where nothing was found in the time.</summary>
    private static Asked<string>? Ask(Question question, Plan plan, QueryValues query, CancellationToken stop)
    {
        try
        {
            return question.Ask(plan, query, stop);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            return null;
        }
    }

    private static Task WriteAsync(HttpContext context, Question question, byte[] answer)
    {
        context.Response.ContentType = $"{question.AnswerType}; charset=utf-8";
        context.Response.ContentLength = answer.Length;
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.Body.WriteAsync(answer, context.RequestAborted).AsTask();
    }
}
