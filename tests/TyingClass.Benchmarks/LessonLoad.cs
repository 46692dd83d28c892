using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using TyingClass.Lessons.Courses;
using TyingClass.Web.Hosting;

namespace TyingClass.Benchmarks;

/// <summary>
/// What a lesson page costs beside an endpoint that sends the same bytes and does nothing else: requests a second over loopback and processor time of
/// each, the client's included in both.
/// </summary>
internal static class LessonLoad
{
    private const int Clients = 8;
    private const int Seconds = 5;

    public static async Task<int> RunAsync(int rounds)
    {
        string folder = Directory.CreateTempSubdirectory("lesson-load").FullName;
        WebApplication app = Server.Build(["--data", folder, "--urls", "http://127.0.0.1:0"]);
        await using (app)
        {
            await app.StartAsync();
            Uri root = Address(app);
            Course course = app.Services.GetRequiredService<ICourseSource>().Current;
            foreach (Lesson lesson in course.Lessons)
            {
                using HttpClient client = new() { BaseAddress = root };
                byte[] page = await client.GetByteArrayAsync(new Uri($"/lessons/{lesson.Slug}", UriKind.Relative));
                if (lesson != course.Lessons[0] && lesson != course.Lessons[^1] && page.Length < 200_000) continue;
                await using WebApplication bare = await BareAsync(page);
                for (int round = 0; round < rounds; round++)
                {
                    (double plain, double plainBusy) = await LoadAsync(Address(bare), "/bare");
                    (double full, double busy) = await LoadAsync(root, $"/lessons/{lesson.Slug}");
                    Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                        $"{lesson.Slug,-28} {page.Length / 1024,5} KB  bare {plain,7:0}/s {plainBusy * 1000,6:0} µs  page {full,7:0}/s {busy * 1000,6:0} µs  "
                            + $"1/{plain / full:0.0} by rate, 1/{busy / plainBusy:0.0} by processor time"));
                }
            }

            await app.StopAsync();
        }

        Directory.Delete(folder, recursive: true);
        return 0;
    }

    private static async Task<WebApplication> BareAsync(byte[] page)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        WebApplication bare = builder.Build();
        bare.MapGet("/bare", () => Results.Bytes(page, "text/html; charset=utf-8"));
        await bare.StartAsync();
        return bare;
    }

    private static Uri Address(WebApplication app) =>
        new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    /// <returns>Requests a second, and milliseconds of processor time for each.</returns>
    private static async Task<(double Rate, double Busy)> LoadAsync(Uri root, string address)
    {
        using HttpClient client = new() { BaseAddress = root };
        Uri asked = new(address, UriKind.Relative);
        for (int i = 0; i < 50; i++) await client.GetByteArrayAsync(asked);
        using Process self = Process.GetCurrentProcess();
        TimeSpan before = self.TotalProcessorTime;
        long start = Stopwatch.GetTimestamp();
        int done = 0;
        await Task.WhenAll(Enumerable.Range(0, Clients).Select(_ => Task.Run(async () =>
        {
            byte[] buffer = new byte[1 << 16];
            while (Stopwatch.GetElapsedTime(start).TotalSeconds < Seconds)
            {
                await using Stream stream = await client.GetStreamAsync(asked);
                while (await stream.ReadAsync(buffer) > 0)
                {
                }

                Interlocked.Increment(ref done);
            }
        })));
        double passed = Stopwatch.GetElapsedTime(start).TotalSeconds;
        self.Refresh();
        return (done / passed, (self.TotalProcessorTime - before).TotalMilliseconds / done);
    }
}
