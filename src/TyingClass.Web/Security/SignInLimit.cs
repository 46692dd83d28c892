using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace TyingClass.Web.Security;

/// <summary>Slows down guessing: so many tries a minute from one address.</summary>
internal static class SignInLimit
{
    public const string Policy = "sign-in";

    // A whole class may come in from one address.
    public const int TriesAMinute = 40;

    public static void Configure(RateLimiterOptions options)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.AddPolicy(Policy, context => HttpMethods.IsPost(context.Request.Method)
            ? RateLimitPartition.GetFixedWindowLimiter(
                $"trying from {context.Connection.RemoteIpAddress}",
                _ => new FixedWindowRateLimiterOptions { PermitLimit = TriesAMinute, Window = TimeSpan.FromMinutes(1) })
            : RateLimitPartition.GetNoLimiter("reading"));
    }
}
