using System.Collections.Immutable;
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
            ClassStore store = app.Services.GetRequiredService<ClassStore>();
            Course course = app.Services.GetRequiredService<ICourseSource>().Current;
            ClassRoom room = store.Classes.All()[0];
            if (store.Reviews.Queue(room.Id).IsEmpty) new WorkSeed(store, course).Fill(room);
            await app.StartAsync();
            // A server that has just started draws and reads ahead for some seconds: what that costs belongs to no page.
            await OpeningLoad.RestAsync();
            Uri server = new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
            int attempts = store.Attempts.StandingsOf(store.Accounts.OfClass(room.Id).Select(p => p.Id)).Sum(s => s.Attempts);
            Console.WriteLine(
                $"{Students} students, {course.Exercises.Count()} exercises, {attempts} attempts, {store.Reviews.Queue(room.Id).Length} patterns wait");
            ImmutableArray<Person> people = store.Accounts.OfClass(room.Id);
            foreach ((string name, string[] addresses) in new[]
            {
                ("Dipper", [.. OfInstructor(store, course, room, people)]),
                (people.First(p => p.Role == Role.Mentor).Label, [.. OfMentor(store, course, room, people)]),
                (people.First(p => p.Role == Role.Student).Label, OfStudent(store, course, people)),
            })
            {
                Console.WriteLine(name);
                using HttpClient client = new(new HttpClientHandler { UseCookies = true }) { BaseAddress = server };
                await SignInAsync(client, name);
                foreach (string address in addresses) await TimeAsync(client, address);
            }

            await app.StopAsync();
        }

        return 0;
    }

    private static IEnumerable<string> OfInstructor(ClassStore store, Course course, ClassRoom room, ImmutableArray<Person> people)
    {
        (string student, string exercise) = (people.First(p => p.Role == Role.Student).Id, course.Exercises.First(e => e.Kind.Word == "repair").Id);
        string explained = course.Exercises.First(e => e.Kind.Word == "explain").Id;
        return
        [
            "/", "/class", "/class/register", "/class/register?evening=all", "/class/register?evening=2", "/class/register?stuck=true",
            "/class/stuck", "/class/waiting", "/class/read", $"/class/read?exercise={explained}", "/class/students", $"/class/students/{student}",
            $"/class/students/{student}/{exercise}", $"/class/exercises/{exercise}", $"/class/show/{exercise}", "/class/people", "/class/evenings",
            "/class/evenings/2", "/class/evenings/2/handout", "/class/evenings/2/wall/1", "/class/tonight", "/class/dates", "/class/files",
            "/class/files?handler=Register", .. OfTable(store, room), "/pattern-book", "/pattern-book/cards", "/pattern-book/booklet",
            "/pattern-book/labels", "/bench-log/class",
        ];
    }

    private static IEnumerable<string> OfMentor(ClassStore store, Course course, ClassRoom room, ImmutableArray<Person> people)
    {
        string student = people.First(p => p.Role == Role.Student).Id;
        return ["/", "/class/students", $"/class/students/{student}", "/class/read", .. OfTable(store, room), $"/lessons/{course.Lessons[0].Slug}"];
    }

    // One that waits and one that was judged, each with the page its tyer sees.
    private static IEnumerable<string> OfTable(ClassStore store, ClassRoom room)
    {
        yield return "/reviews";
        yield return $"/reviews/{store.Reviews.Queue(room.Id)[0].Id}";
        yield return $"/reviews/{store.Reviews.Decided(room.Id, 1)[0].Id}";
    }

    private static string[] OfStudent(ClassStore store, Course course, ImmutableArray<Person> people)
    {
        string pattern = store.Patterns.Of(people.First(p => p.Role == Role.Student).Id)[0].Id;
        return
        [
            "/", $"/lessons/{course.Lessons[0].Slug}", $"/exercises/{course.Exercises.First(e => e.Kind.Word == "repair").Id}", "/reached", "/practice",
            "/patterns", $"/patterns/{pattern}", $"/patterns/{pattern}/card", "/bench-log", "/comments", "/tonight", "/pattern-book",
        ];
    }

    private static void Fill(IServiceProvider services, int students, int? attemptsEach)
    {
        ClassStore store = services.GetRequiredService<ClassStore>();
        string hash = services.GetRequiredService<IPasswordHasher<Person>>().HashPassword(null!, Passphrase);
        Person instructor = store.Instructors.Claim(store.Instructors.NewCode(), "Dipper", hash, "Winter class")!;
        ClassRoom room = store.Classes.OfInstructor(instructor.Id)[0];
        new ClassSeed(store, services.GetRequiredService<ICourseSource>().Current, TimeProvider.System).Fill(room, students, hash, attemptsEach);
    }

    private static async Task SignInAsync(HttpClient client, string name)
    {
        string page = await client.GetStringAsync(new Uri("/sign-in", UriKind.Relative));
        const string Mark = "name=\"__RequestVerificationToken\" type=\"hidden\" value=\"";
        int from = page.IndexOf(Mark, StringComparison.Ordinal) + Mark.Length;
        using FormUrlEncodedContent form = new(new Dictionary<string, string>
        {
            ["name"] = name,
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
