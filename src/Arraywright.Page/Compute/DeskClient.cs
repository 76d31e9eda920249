using System.Text.Json;
using Microsoft.JSInterop;

namespace Arraywright.Page.Compute;

/// <summary>The page's side of the worker: one question at a time, the rest in a queue, and an end to what nobody waits for any more.</summary>
internal sealed class DeskClient(IJSObjectReference script) : IAsyncDisposable
{
    /// <summary>A question nobody waits for may run so long at least before its worker is ended.</summary>
    private static readonly TimeSpan LeastPatience = TimeSpan.FromSeconds(4);

    /// <summary>And so many times as long as a worker takes to start: on a slow device a new one is no gain sooner.</summary>
    private const double StartsWaited = 1.5;

    private readonly List<Job> _queue = [];
    private DotNetObjectReference<DeskClient>? _self;
    private Job? _running;
    private TimeSpan _patience = LeastPatience;
    private bool _isReady;
    private int _lastId;

    /// <summary>Raised when something begins, goes on or ends.</summary>
    public event Action? Changed;

    /// <summary>How much of the running search is done, 0 to 1.</summary>
    public double Share { get; private set; }

    /// <summary>When the running question began; null while nothing runs that anybody waits for.</summary>
    public DateTime? RunningSince => _running is { IsWanted: true } running ? running.Began : null;

    /// <summary>Starts the worker.</summary>
    public async Task StartAsync()
    {
        _self ??= DotNetObjectReference.Create(this);
        _isReady = false;
        await script.InvokeVoidAsync("startWorker", _self);
    }

    /// <summary>Asks; every reply goes to <paramref name="take"/> as it comes. Ends when all have come, or when <paramref name="stop"/> says so.</summary>
    public async Task AskAsync(Question question, Action<Reply> take, CancellationToken stop)
    {
        Job job = new(++_lastId, JsonSerializer.Serialize(question, DeskJson.Default.Question), take);
        await using CancellationTokenRegistration registration = stop.Register(() => _ = DropAsync(job));
        _queue.Add(job);
        await NextAsync();
        await job.Ended.Task;
    }

    [JSInvokable]
    public async Task OnReady(double tookMs)
    {
        _isReady = true;
        TimeSpan waited = TimeSpan.FromMilliseconds(StartsWaited * tookMs);
        _patience = waited > LeastPatience ? waited : LeastPatience;
        await NextAsync();
    }

    [JSInvokable]
    public void OnReply(int id, byte[] reply)
    {
        if (_running is { IsWanted: true } job && job.Id == id)
        {
            job.Take(JsonSerializer.Deserialize(reply, DeskJson.Default.Reply)!);
        }
    }

    [JSInvokable]
    public void OnProgress(int id, double share)
    {
        if (_running?.Id == id)
        {
            Share = share;
            Changed?.Invoke();
        }
    }

    [JSInvokable]
    public async Task OnDone(int id)
    {
        if (_running?.Id == id)
        {
            Job ended = _running;
            _running = null;
            ended.Ended.TrySetResult();
            await NextAsync();
        }
    }

    /// <summary>A worker that broke (out of memory, say) is replaced; what it was doing is answered with that.</summary>
    [JSInvokable]
    public async Task OnFailed()
    {
        Job? failed = _running;
        _running = null;
        if (failed is { IsWanted: true })
        {
            failed.Take(new Reply { Refusal = "The calculation ended without an answer: this device may be short of memory. The plan is kept." });
        }

        failed?.Ended.TrySetResult();
        await StartAsync();
    }

    public ValueTask DisposeAsync()
    {
        _self?.Dispose();
        return ValueTask.CompletedTask;
    }

    private async Task NextAsync()
    {
        if (_isReady && _running is null && _queue.Count > 0)
        {
            _running = _queue[0];
            _queue.RemoveAt(0);
            _running.Began = DateTime.UtcNow;
            Share = 0;

            // The worker begins before the page draws itself again.
            await script.InvokeVoidAsync("ask", _running.Id, _running.Question);
        }

        Changed?.Invoke();
    }

    private async Task DropAsync(Job job)
    {
        job.IsWanted = false;
        job.Ended.TrySetResult();
        if (_queue.Remove(job) || _running != job)
        {
            return;
        }

        // Between two replies the worker hears that and ends; within a long one it does not.
        await script.InvokeVoidAsync("drop", job.Id);
        Changed?.Invoke();
        TimeSpan left = _patience - (DateTime.UtcNow - job.Began);
        if (left > TimeSpan.Zero)
        {
            await Task.Delay(left);
        }

        if (_running == job)
        {
            _running = null;
            await StartAsync();
        }
    }

    private sealed class Job(int id, string question, Action<Reply> take)
    {
        public int Id { get; } = id;

        public string Question { get; } = question;

        public Action<Reply> Take { get; } = take;

        public TaskCompletionSource Ended { get; } = new();

        public bool IsWanted { get; set; } = true;

        public DateTime Began { get; set; }
    }
}
