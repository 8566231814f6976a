using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using Microsoft.Net.Http.Headers;

namespace Hoopwright.Server.Api;

/// <summary>How much one address and one link may ask for. Only the API is limited; the app's files are not.</summary>
internal static class RateLimits
{
    /// <summary>For sharing a new plan.</summary>
    public const string Sharing = "sharing";

    /// <summary>For pages that wait for changes.</summary>
    public const string Waiting = "waiting";

    public static void AddRateLimits(this IServiceCollection services, RateOptions rates) => services.AddRateLimiter(limiter =>
    {
        limiter.GlobalLimiter = PartitionedRateLimiter.CreateChained(
            PartitionedRateLimiter.Create<HttpContext, string>(context => Api(context) is false ? RateLimitPartition.GetNoLimiter("") : Bucket(Address(context), rates.AddressPerSecond)),
            PartitionedRateLimiter.Create<HttpContext, string>(context => Api(context) && Token(context) is { } token ? Bucket(token, rates.LinkPerSecond) : RateLimitPartition.GetNoLimiter("")));
        limiter.AddPolicy(Sharing, context => RateLimitPartition.GetFixedWindowLimiter(Address(context), _ => new FixedWindowRateLimiterOptions { PermitLimit = rates.SharesPerHour, Window = TimeSpan.FromHours(1) }));
        limiter.AddPolicy(Waiting, context => RateLimitPartition.GetConcurrencyLimiter(Token(context) ?? "", _ => new ConcurrencyLimiterOptions { PermitLimit = rates.WaitingPerLink }));
        limiter.OnRejected = async (rejected, _) =>
        {
            TimeSpan wait = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan told) ? told : TimeSpan.FromSeconds(1);
            rejected.HttpContext.Response.Headers[HeaderNames.RetryAfter] = Math.Max(1, Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
            await Problems.TooManyRequests.WriteAsync(rejected.HttpContext);
        };
    });

    // Filled up once a second, and never holds more than ten seconds' worth: a device that was away may catch up quickly.
    private static RateLimitPartition<string> Bucket(string key, int perSecond) => RateLimitPartition.GetTokenBucketLimiter(key, _ => new TokenBucketRateLimiterOptions
    {
        TokensPerPeriod = perSecond,
        TokenLimit = perSecond * 10,
        ReplenishmentPeriod = TimeSpan.FromSeconds(1),
    });

    private static bool Api(HttpContext context) => context.Request.Path.StartsWithSegments("/api");

    // Kept in memory only as a hash, as everywhere.
    private static string? Token(HttpContext context) => LinkAuthentication.TokenOf(context.Request) is { } token ? Convert.ToHexString(Storage.Token.Hash(token)) : null;

    // Whoever has one address of the newer kind has a whole /64 of them.
    private static string Address(HttpContext context)
    {
        IPAddress address = context.Connection.RemoteIpAddress ?? IPAddress.None;
        if (address.IsIPv4MappedToIPv6) address = address.MapToIPv4();
        return address.AddressFamily == AddressFamily.InterNetworkV6 ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8)) : address.ToString();
    }
}
