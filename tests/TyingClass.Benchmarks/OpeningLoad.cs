using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Lessons.Courses;
using TyingClass.Web.Hosting;

namespace TyingClass.Benchmarks;

/// <summary>What the first opening of every lesson and every exercise costs after a start, and the second: processor time and wall time, as a guest.</summary>
internal static class OpeningLoad
{
    private const double Ceiling = 200;

    /// <param name="rest">Whether to wait first until the server has done what it does by itself after its start.</param>
    public static async Task<int> RunAsync(bool rest)
    {
        string folder = Directory.CreateTempSubdirectory("opening-load").FullName;
        WebApplication app = Server.Build(["--data", folder, "--urls", "http://127.0.0.1:0"]);
        await using (app)
        {
            await app.StartAsync();
            if (rest)
            {
                double busy = await RestAsync();
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"At rest after {busy:0.0} s of processor time"));
            }

            Course course = app.Services.GetRequiredService<ICourseSource>().Current;
            Uri root = new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
            using HttpClient client = new() { BaseAddress = root };
            string[] veryFirst = [$"/lessons/{course.Lessons[0].Slug}", $"/exercises/{course.Exercises.First().Id}"];
            await TimeAsync(client, "the very first lesson, then the very first exercise", veryFirst);
            await TimeAsync(client, "lessons", [.. course.Lessons.Skip(1).Select(l => $"/lessons/{l.Slug}")]);
            await TimeAsync(client, "exercises", [.. course.Exercises.Skip(1).Select(e => $"/exercises/{e.Id}")]);
            using Process self = Process.GetCurrentProcess();
            Console.WriteLine($"{self.WorkingSet64 >> 20} MB in memory");
            await app.StopAsync();
        }

        Directory.Delete(folder, recursive: true);
        return 0;
    }

    /// <summary>Waits until the process does nothing by itself. A busy machine may give it nothing for a second or two.</summary>
    public static async Task<double> RestAsync()
    {
        using Process self = Process.GetCurrentProcess();
        for (int quiet = 0, i = 0; quiet < 8 && i < 300; i++)
        {
            self.Refresh();
            TimeSpan before = self.TotalProcessorTime;
            await Task.Delay(TimeSpan.FromSeconds(1));
            self.Refresh();
            quiet = self.TotalProcessorTime - before < TimeSpan.FromMilliseconds(30) ? quiet + 1 : 0;
        }

        return self.TotalProcessorTime.TotalSeconds;
    }

    private static async Task TimeAsync(HttpClient client, string what, string[] addresses)
    {
        List<(string Address, double Busy, double Wall)> first = [];
        List<double> again = [];
        foreach (string address in addresses)
        {
            (double busy, double wall) = await OpenAsync(client, address);
            first.Add((address, busy, wall));
            again.Add((await OpenAsync(client, address)).Busy);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{what}: {addresses.Length}, first opening: median {Middle(first.Select(f => f.Busy)):0} ms, longest {first.Max(f => f.Busy):0} ms, "
                + $"over {Ceiling:0} ms {first.Count(f => f.Busy > Ceiling)}; again: median {Middle(again):0} ms, longest {again.Max():0} ms"));
        foreach ((string address, double busy, double wall) in first.OrderByDescending(f => f.Busy).Take(6))
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"    {address,-50} processor {busy,5:0} ms  wall {wall,5:0} ms"));
    }

    private static async Task<(double Busy, double Wall)> OpenAsync(HttpClient client, string address)
    {
        using Process self = Process.GetCurrentProcess();
        TimeSpan before = self.TotalProcessorTime;
        long start = Stopwatch.GetTimestamp();
        await client.GetByteArrayAsync(new Uri(address, UriKind.Relative));
        double wall = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        self.Refresh();
        return ((self.TotalProcessorTime - before).TotalMilliseconds, wall);
    }

    private static double Middle(IEnumerable<double> all)
    {
        double[] sorted = [.. all.Order()];
        return sorted[sorted.Length / 2];
    }
}
