using System.Threading.RateLimiting;

namespace Arraywright.Host.Api;

/// <summary>How many questions are computed at once: as many as there are processors, of long ones and of quick ones each, so that a year never keeps a check waiting.</summary>
internal sealed class Lanes(HostSettings settings) : IDisposable
{
    private readonly ConcurrencyLimiter _quick = Lane(settings.MostWaiting);
    private readonly ConcurrencyLimiter _long = Lane(settings.MostWaiting);

    /// <summary>Waits for a turn; not acquired when too many wait already.</summary>
    public ValueTask<RateLimitLease> EnterAsync(Question question, CancellationToken stop) => (question.IsLong ? _long : _quick).AcquireAsync(1, stop);

    /// <inheritdoc/>
    public void Dispose()
    {
        _quick.Dispose();
        _long.Dispose();
    }

    private static ConcurrencyLimiter Lane(int mostWaiting) => new(new ConcurrencyLimiterOptions { PermitLimit = Environment.ProcessorCount, QueueLimit = mostWaiting, QueueProcessingOrder = QueueProcessingOrder.OldestFirst });
}
