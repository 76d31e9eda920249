using System.Collections.Immutable;
using Arraywright.Files;
using Arraywright.Files.Asking;

namespace Arraywright.Host.Api;

/// <summary>A question that may be put over HTTP: <c>POST /api/VERB</c>.</summary>
/// <param name="Verb">The verb of the command that it is.</param>
/// <param name="Summary">What it does, one sentence.</param>
/// <param name="Options">What it takes in the address.</param>
/// <param name="Ask">Puts it; the answer is text, the same as the command prints.</param>
internal sealed record Question(string Verb, string Summary, ImmutableArray<QueryOption> Options, Func<Plan, QueryValues, CancellationToken, Asked<string>> Ask)
{
    /// <summary>Whether it may compute for seconds, so that it must not keep quick ones waiting.</summary>
    public bool IsLong { get; init; }

    /// <summary>Whether an answer that was cut short is one: the best so far, marked as such.</summary>
    public bool GivesBestSoFar { get; init; }

    /// <summary>How its body is read.</summary>
    public Func<ReadOnlyMemory<byte>, PlanReading> Read { get; init; } = PlanBody.Read;

    /// <summary>Types that its body may have.</summary>
    public ImmutableArray<string> BodyTypes { get; init; } = PlanBody.Types;

    /// <summary>Type of the answer.</summary>
    public string AnswerType { get; init; } = "application/json";

    /// <summary>Members of the answer beside those of every answer; see <see cref="AnswerMembers"/>.</summary>
    public ImmutableArray<AnswerMember> Members { get; init; } = [];
}
