using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Hosting;

namespace TyingClass.Benchmarks;

/// <summary>How long the class pages take with a large class: the real server over a real socket, asked from the same machine.</summary>
internal static class ClassLoad
{
    public const string Passphrase = "four quiet winter trout";

    private const int Students = 200;
    private const int AttemptsEach = 8;
    private const int Times = 30;

    /// <summary>Fills a folder, for measuring and for looking at pages.</summary>
    public static void Seed(string folder, int students, int? attemptsEach)
    {
        WebApplication app = Server.Build(["--data", folder, "--urls", "http://127.0.0.1:0"]);
        try
        {
            Fill(app.Services, students, attemptsEach);
        }
        finally
        {
            ((IDisposable)app).Dispose();
        }
    }

    public static async Task<int> MeasureAsync(string folder)
    {
        bool fresh = !Directory.Exists(folder);
        WebApplication app = Server.Build(["--data", folder, "--urls", "http://127.0.0.1:0"]);
        await using (app)
        {
            if (fresh) Fill(app.Services, Students, AttemptsEach);
            await app.StartAsync();
            using HttpClient client = new(new HttpClientHandler { UseCookies = true })
            {
                BaseAddress =
                new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First())
            };
            await SignInAsync(client);
            ClassStore store = app.Services.GetRequiredService<ClassStore>();
            Person student = store.Accounts.OfClass(store.Classes.All()[0].Id)[0];
            Course course = app.Services.GetRequiredService<ICourseSource>().Current;
            string exercise = course.Exercises.First(e => e.Kind.Word == "repair").Id;
            Console.WriteLine($"{Students} students, {course.Exercises.Count()} exercises");
            foreach (string address in new[] { "/class", "/class/register?evening=all", "/class/register?evening=2", "/class/register?stuck=true",
                "/class/stuck", "/class/waiting", "/class/students", "/class/read", "/class/evenings/2", "/reviews", "/",
                $"/class/exercises/{exercise}", $"/class/students/{student.Id}", $"/class/students/{student.Id}/{exercise}", "/class/people" })
                await TimeAsync(client, address);
            await app.StopAsync();
        }

        return 0;
    }

    private static void Fill(IServiceProvider services, int students, int? attemptsEach)
    {
        ClassStore store = services.GetRequiredService<ClassStore>();
        string hash = services.GetRequiredService<IPasswordHasher<Person>>().HashPassword(null!, Passphrase);
        Person instructor = store.Instructors.Claim(store.Instructors.NewCode(), "Dipper", hash, "Winter class")!;
        ClassRoom room = store.Classes.OfInstructor(instructor.Id)[0];
        new ClassSeed(store, services.GetRequiredService<ICourseSource>().Current, TimeProvider.System).Fill(room, students, hash, attemptsEach);
    }

    private static async Task SignInAsync(HttpClient client)
    {
        string page = await client.GetStringAsync(new Uri("/sign-in", UriKind.Relative));
        const string Mark = "name=\"__RequestVerificationToken\" type=\"hidden\" value=\"";
        int from = page.IndexOf(Mark, StringComparison.Ordinal) + Mark.Length;
        using FormUrlEncodedContent form = new(new Dictionary<string, string>
        {
            ["name"] = "Dipper",
            ["passphrase"] = Passphrase,
            ["__RequestVerificationToken"] = page[from..page.IndexOf('"', from)],
        });
        using HttpResponseMessage response = await client.PostAsync(new Uri("/sign-in", UriKind.Relative), form);
        response.EnsureSuccessStatusCode();
    }

    private static async Task TimeAsync(HttpClient client, string address)
    {
        List<double> all = [];
        int bytes = 0;
        using Process self = Process.GetCurrentProcess();
        TimeSpan busyBefore = self.TotalProcessorTime;
        double firstBusy = 0;
        for (int i = 0; i < Times; i++)
        {
            long start = Stopwatch.GetTimestamp();
            bytes = (await client.GetByteArrayAsync(new Uri(address, UriKind.Relative))).Length;
            all.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            if (i > 0) continue;
            self.Refresh();
            firstBusy = (self.TotalProcessorTime - busyBefore).TotalMilliseconds;
        }

        self.Refresh();
        double busy = (self.TotalProcessorTime - busyBefore).TotalMilliseconds / Times;
        double first = all[0];
        all.Sort();
        Console.WriteLine(
            string.Create(CultureInfo.InvariantCulture,
                $"{address,-60} first {first,6:0} ms (processor {firstBusy,5:0})  median {all[Times / 2],6:0} ms  worst but one {all[Times - 2],6:0} ms  "
                    + $"processor {busy,6:0} ms  {bytes / 1024,6} KB"));
    }
}
