using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Web.Bench;
using TyingClass.Web.Hosting;

namespace TyingClass.Benchmarks;

/// <summary>
/// What the server holds after many flies of as many parts as a recipe may have were opened at the bench, no two alike, by four browsers at once.
/// </summary>
internal static class MemoryLoad
{
    private const int Browsers = 4;
    private const int MostParts = 40;

    public static async Task<int> RunAsync(int flies)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("tyingclass-memory");
        await using WebApplication app = Server.Build(["--data", data.FullName, "--urls", "http://127.0.0.1:0"]);
        await app.StartAsync();
        Uri root = new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single());
        using HttpClient client = new() { BaseAddress = root };
        await client.GetStringAsync(new Uri("/bench", UriKind.Relative));
        Say(0);
        int refused = 0;
        for (int done = 0; done < flies; done += 100)
        {
            await Parallel.ForAsync(done, Math.Min(done + 100, flies), new ParallelOptions { MaxDegreeOfParallelism = Browsers }, async (i, cancel) =>
            {
                BenchAddress address = new(Packed.Pack(Recipe(i)), null, null, null, null, null);
                using HttpResponseMessage answer = await client.GetAsync(new Uri(address.ToString(), UriKind.Relative), cancel);
                string html = await answer.Content.ReadAsStringAsync(cancel);
                if (!html.Contains("bench-side-title", StringComparison.Ordinal)) Interlocked.Increment(ref refused);
            });
            Say(Math.Min(done + 100, flies));
        }

        Console.WriteLine(Line($"{refused} without a drawing"));
        await app.StopAsync();
        data.Delete(recursive: true);
        return 0;
    }

    private static string Recipe(int i) => Line($"recipe: Fly {i}\nintent: point down\nhook: {{shank: 20 mm, wire: 1 mm, gape: 8 mm}}\nparts:\n")
        + string.Concat(Enumerable.Range(0, MostParts).Select(k => k % 2 == 0
            ? Line($"  - {{part: hackle, at: {0.1 + 0.02 * k:0.00} x shank}}\n")
            : Line($"  - {{part: legs, at: {0.1 + 0.02 * k:0.00} x shank, mass: {1 + i % 7} mg}}\n")));

    private static void Say(int done)
    {
        using Process self = Process.GetCurrentProcess();
        Console.WriteLine(Line($"{done,5} flies: working set {self.WorkingSet64 >> 20} MB, at most {self.PeakWorkingSet64 >> 20} MB, ")
            + Line($"managed {GC.GetTotalMemory(false) >> 20} MB"));
    }

    private static string Line(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
}
