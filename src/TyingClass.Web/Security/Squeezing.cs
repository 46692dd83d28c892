using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace TyingClass.Web.Security;

/// <summary>
/// Answers are compressed where their length can tell nothing. An attack of the kind of BREACH needs a secret that stands on a page again and again beside
/// something the attacker chose: form tokens are sealed anew, with other bytes, for every answer, and pages with names, codes or passphrases are sent as
/// they are.
/// </summary>
internal static class Squeezing
{
    public static void Add(IServiceCollection services)
    {
        services.AddResponseCompression(options =>
        {
            options.EnableForHttps = true;
            options.MimeTypes = [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml"];
            options.Providers.Add<BrotliCompressionProvider>();
            options.Providers.Add<GzipCompressionProvider>();
        });
        // The fastest: a page must not come later for being smaller.
        services.Configure<BrotliCompressionProviderOptions>(options => options.Level = CompressionLevel.Fastest);
        services.Configure<GzipCompressionProviderOptions>(options => options.Level = CompressionLevel.Fastest);
    }

    public static void Use(WebApplication app) => app.UseWhen(context => TellsNothing(context.Request.Path), branch => branch.UseResponseCompression());

    private static bool TellsNothing(PathString path) =>
        !SecurityHeaders.IsPrivate(path) && !path.StartsWithSegments("/sign-in") && !path.StartsWithSegments("/join");
}
