using Arraywright.Electrical;
using Arraywright.Search;

namespace Arraywright.Planning;

/// <summary>The search within the volts alone, as if every maker agreed: beside the one within everything stated, where the two differ, as neither needs the other.</summary>
internal sealed class AskingSearch : IDisposable
{
    /// <summary>Where something may be connected without asking, only the best of these is shown beside it.</summary>
    private static readonly SearchOptions OnlyBest = SearchOptions.Default with { Show = 1 };

    private readonly SearchProblem _beyond;
    private readonly CancellationTokenSource _cancellation;
    private readonly bool _differs;
    private readonly SearchOptions _options;
    private readonly Task<SearchOutcome>? _running;

    /// <summary>Begins it, where there are threads.</summary>
    public AskingSearch(SearchProblem within, SearchProblem beyond, CancellationToken cancellation)
    {
        (_beyond, _cancellation, _differs) = (beyond, CancellationTokenSource.CreateLinkedTokenSource(cancellation), SearchSetup.LimitsBind(within, beyond));
        _options = _differs && TakesAnyPanel(within) ? OnlyBest : SearchOptions.Default;
        _running = _differs && Threads.AreMany ? Task.Run(() => Run(_options, progress: null), CancellationToken.None) : null;
    }

    /// <summary>What it found; null where it could find nothing else.</summary>
    /// <param name="isAll">Whether it is the whole answer, since nothing may be connected without asking.</param>
    /// <param name="progress">Told the share done where it runs only now; may be null.</param>
    public SearchOutcome? Outcome(bool isAll, IProgress<double>? progress) =>
        isAll && (_running is null || _options == OnlyBest) ? Run(SearchOptions.Default, progress)
        : _running is not null ? _running.GetAwaiter().GetResult()
        : _differs ? Run(OnlyBest, progress)
        : null;

    /// <summary>Ends it where nobody waits for it any more.</summary>
    public void Dispose()
    {
        _cancellation.Cancel();
        _running?.GetAwaiter().GetResult();
        _cancellation.Dispose();
    }

    /// <summary>Whether some panel may be connected by itself: then a search within everything stated finds something.</summary>
    private static bool TakesAnyPanel(SearchProblem within) => within.Accept is not { } accept || within.Stocks.Any(stock =>
        Enumerable.Range(0, within.Inputs.Length).Any(at => accept([.. within.Inputs.Select((_, i) => i == at ? new Wiring.Single(stock.Name) : (Wiring?)null)])));

    private SearchOutcome Run(SearchOptions options, IProgress<double>? progress) => WiringSearch.Run(_beyond, options, progress, _cancellation.Token);
}
