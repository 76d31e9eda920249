using System.Collections.Immutable;
using Arraywright.Parts.Connecting;
using Arraywright.Planning;

namespace Arraywright.Presentation.Report;

/// <summary>Everything that a report is about.</summary>
public sealed record ReportSubject
{
    /// <summary>The answer; its first design is the one reported.</summary>
    public required PlanResult Result { get; init; }

    /// <summary>The year of that design; null where there is no weather to run it through.</summary>
    public required YearResult? Year { get; init; }

    /// <summary>The curve of each connected input.</summary>
    public required ImmutableArray<CurveResult> Curves { get; init; }

    /// <summary>What meters show at each part of each input's array, in plan order.</summary>
    public required ImmutableArray<ArrayReading?> Readings { get; init; }

    /// <summary>How it is connected.</summary>
    public required ConnectionOrder Order { get; init; }

    /// <summary>The program and its version.</summary>
    public required string Program { get; init; }

    /// <summary>The date to print on it; null for none.</summary>
    public required DateOnly? Date { get; init; }

    /// <summary>The design reported.</summary>
    public Design Design => Result.Designs[0];
}
