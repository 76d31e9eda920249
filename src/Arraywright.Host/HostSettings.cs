using System.Net;

namespace Arraywright.Host;

/// <summary>How the host is to serve.</summary>
public sealed record HostSettings
{
    /// <summary>Address to listen on.</summary>
    public IPAddress Listen { get; init; } = IPAddress.Loopback;

    /// <summary>Port; 0 takes any free one.</summary>
    public int Port { get; init; } = 8080;

    /// <summary>Path under which everything is served, such as <c>/arraywright</c>; empty for the root.</summary>
    public string BasePath { get; init; } = "";

    /// <summary>Folder of the published page; null for <c>page</c> beside the program.</summary>
    public string? PageFolder { get; init; }

    /// <summary>Names that requests may be for, beside those of this machine; empty lets any name pass where others than this machine are listened to.</summary>
    public IReadOnlyList<string> Names { get; init; } = [];

    /// <summary>Origins whose pages may ask; empty for none but our own.</summary>
    public IReadOnlyList<string> Origins { get; init; } = [];

    /// <summary>Whether a proxy on this machine says who asks, and by what scheme and name.</summary>
    public bool IsBehindProxy { get; init; }

    /// <summary>Questions a second of one client, this machine excepted.</summary>
    public int RatePerS { get; init; } = 10;

    /// <summary>Longest time that one question is computed for, s.</summary>
    public double LimitS { get; init; } = 20;

    /// <summary>Questions that wait for their turn at most, of long ones and of quick ones each; the next is told to come again.</summary>
    internal int MostWaiting { get; init; } = 2000;

    /// <summary>Whether only this machine is listened to.</summary>
    internal bool IsLoopback => IPAddress.IsLoopback(Listen);
}
