using System.Globalization;
using System.Net;
using System.Threading.RateLimiting;
using Arraywright.Host.Api;
using Microsoft.AspNetCore.RateLimiting;

namespace Arraywright.Host;

/// <summary>How fast one client may ask; this machine itself may ask as fast as it can.</summary>
internal static class ClientRate
{
    private const int BurstS = 4;

    /// <summary>Sets the limiter up.</summary>
    public static void Configure(RateLimiterOptions limiter, HostSettings settings)
    {
        limiter.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context => Partition(context, settings));
        limiter.OnRejected = (rejected, _) => new ValueTask(Problem.TooFast(rejected.HttpContext, rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan after) ? after : TimeSpan.FromSeconds(1)));
    }

    /// <summary>Who asks: an address, or, of the sixth version, the network that one household or one server has.</summary>
    internal static string Client(IPAddress? address)
    {
        if (address is null || IPAddress.IsLoopback(address))
        {
            return "";
        }

        IPAddress plain = address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;
        byte[] bytes = plain.GetAddressBytes();
        return bytes.Length == 4 ? plain.ToString() : Convert.ToHexString(bytes, 0, 8);
    }

    private static RateLimitPartition<string> Partition(HttpContext context, HostSettings settings) =>
        context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal) && Client(context.Connection.RemoteIpAddress) is { Length: > 0 } client
            ? RateLimitPartition.GetTokenBucketLimiter(client, _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = settings.RatePerS * BurstS,
                TokensPerPeriod = settings.RatePerS,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                QueueLimit = 0,
            })
            : RateLimitPartition.GetNoLimiter("");

    /// <summary>Whole seconds, at least one, as the header has them.</summary>
    internal static string Seconds(TimeSpan time) => Math.Max(1, (int)Math.Ceiling(time.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
}
