using Arraywright.Presentation.Terminal;

namespace Arraywright.Cli;

/// <summary>A bar on standard error for work that takes longer than a second; it wipes itself away.</summary>
/// <param name="error">Where it is drawn.</param>
/// <param name="shown">False where nobody would see it move: no terminal, or asked to be quiet.</param>
/// <param name="clock">The clock.</param>
internal sealed class ProgressBar(TextWriter error, bool shown, TimeProvider clock) : IProgress<double>, IDisposable
{
    private const int Cells = 40;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(100);

    private readonly Lock _lock = new();
    private readonly long _start = clock.GetTimestamp();
    private TimeSpan? _lastDrawn;

    /// <summary>Time since the work began.</summary>
    public TimeSpan Elapsed => clock.GetElapsedTime(_start);

    /// <inheritdoc/>
    public void Report(double value)
    {
        if (!shown || Elapsed < Patience)
        {
            return;
        }

        lock (_lock)
        {
            TimeSpan now = Elapsed;
            if (_lastDrawn is { } last && now - last < Between)
            {
                return;
            }

            _lastDrawn = now;
            double fraction = double.IsNaN(value) ? 0 : Math.Clamp(value, 0, 1);
            int full = (int)(fraction * Cells);
            error.Write($"\r  working [{new string('#', full)}{new string('.', Cells - full)}] {Figures.Number(fraction * 100, 0),3} %");
            error.Flush();
        }
    }

    /// <summary>Wipes the bar.</summary>
    public void Dispose()
    {
        lock (_lock)
        {
            if (_lastDrawn is not null)
            {
                error.Write($"\r{new string(' ', Cells + 18)}\r");
                error.Flush();
            }
        }
    }
}
