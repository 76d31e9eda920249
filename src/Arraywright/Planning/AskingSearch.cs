using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>The search within the volts alone, as if every maker agreed: beside the one within everything stated, where the two differ, as neither needs the other.</summary>
internal sealed class AskingSearch
{
    private readonly SearchProblem _beyond;
    private readonly CancellationToken _cancellation;
    private readonly bool _differs;
    private readonly Task<SearchOutcome>? _running;

    /// <summary>Begins it, where there are threads.</summary>
    public AskingSearch(SearchProblem within, SearchProblem beyond, CancellationToken cancellation)
    {
        (_beyond, _cancellation, _differs) = (beyond, cancellation, SearchSetup.LimitsBind(within, beyond));
        _running = _differs && Threads.AreMany ? Task.Run(() => Run(progress: null), CancellationToken.None) : null;
    }

    /// <summary>What it found; null where it could find nothing else.</summary>
    /// <param name="isNeeded">Whether it is wanted even where limits leave nothing out.</param>
    /// <param name="progress">Told the share done where it runs only now; may be null.</param>
    public SearchOutcome? Outcome(bool isNeeded, IProgress<double>? progress) =>
        _running is not null ? _running.GetAwaiter().GetResult() : _differs || isNeeded ? Run(progress) : null;

    private SearchOutcome Run(IProgress<double>? progress) => WiringSearch.Run(_beyond, SearchOptions.Default, progress, _cancellation);
}
