using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.People;
using TyingClass.Web.Tests.Access;
using TyingClass.Web.Tests.Pages;

namespace TyingClass.Web.Tests;

/// <summary>
/// One server with two classes. In the first: the instructor Dipper, the mentor Otter, the students Wren and Heron; Wren has failed first-03,
/// sent in second-03, which waits, asked for a review of a pattern, and written a tub test with a photo in the bench log. In the second: the instructor Plover,
/// the mentor Sedge, the student Teal.
/// </summary>
public sealed class TwoClasses : IDisposable
{
    public const string Passphrase = "four quiet winter trout";

    private readonly Dictionary<string, Browser> _browsers = [];

    private TwoClasses()
    {
    }

    public ClassRoom Room { get; } = new();

    public Storage.Classes.ClassRoom First { get; private set; } = null!;

    public Storage.Classes.ClassRoom Second { get; private set; } = null!;

    public string PatternId { get; private set; } = "";

    public string ReviewId { get; private set; } = "";

    public string LogEntryId { get; private set; } = "";

    public Person Wren => Person("Wren");

    public Person Heron => Person("Heron");

    public Person Otter => Person("Otter");

    public static async Task<TwoClasses> OpenAsync()
    {
        TwoClasses two = new();
        string hash = two.Room.Services.GetRequiredService<IPasswordHasher<Person>>().HashPassword(null!, Passphrase);
        two.First = two.Class("Dipper", hash, two.Room.Store.Instructors.NewCode(), "Otter", "Wren", "Heron");
        two.Second = two.Class("Plover", hash, two.Room.Store.Instructors.Invite(), "Sedge", "Teal");
        Browser wren = await two.AsAsync("Wren");
        await Answers.FailRepairAsync(wren);
        await (await ExercisePage.OpenAsync(wren, "second-03")).Answer("Because the eyes hang low.").SubmitAsync();
        two.AddWrensOwn();
        return two;
    }

    public Person Person(string name) => Room.Store.Accounts.FindByName(name)!;

    /// <summary>A browser signed in under that name, the same for each call; "nobody" for one that is not.</summary>
    public async Task<Browser> AsAsync(string name)
    {
        if (_browsers.TryGetValue(name, out Browser? known)) return known;
        Browser browser = Room.NewBrowser();
        if (name != "nobody") await (await SignInPage.OpenAsync(browser)).EnterAsync(Passphrase, name);
        return _browsers[name] = browser;
    }

    public Attempt AttemptOf(Person person, string exerciseId) => Room.Store.Attempts.Of(person.Id, exerciseId)[^1];

    /// <summary>A row's address with the ids of these two classes in it. Where it is about a guest, there must be one.</summary>
    internal string AddressOf(RouteRow row) =>
        row.Address.Replace("{wren}", Wren.Id, StringComparison.Ordinal).Replace("{pattern}", PatternId, StringComparison.Ordinal)
            .Replace("{review}", ReviewId, StringComparison.Ordinal).Replace("{log}", LogEntryId, StringComparison.Ordinal)
            .Replace("{guest}", Room.Store.People.Guests().FirstOrDefault()?.Id, StringComparison.Ordinal);

    public void Dispose() => Room.Dispose();

    private void AddWrensOwn()
    {
        string recipe = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Course", "recipes", "slate-minnow.fly.yaml"));
        PatternId = Room.Store.Patterns.Create(Wren.Id, "Slate Minnow", recipe).Id;
        ReviewId = Room.Store.Reviews.Ask(PatternId, Wren.Id, First.Id, "Too heavy?")!.Id;
        LogEntryId = Room.Store.BenchLog.Add(
            Wren.Id, First.Id, new TiedFly("Slate Minnow", recipe, FlySource.Text, null, 0), new Seen { MassKg = 0.0012 },
            new Foreseen(0.2, "point up", 0.0011, 0.2, "engine"), "heavier than said").Id;
        Room.Store.BenchLog.SetPhoto(LogEntryId, Wren.Id, [0xFF, 0xD8, 0xFF, 0xD9]);
    }

    private Storage.Classes.ClassRoom Class(string instructor, string hash, string code, string mentor, params string[] students)
    {
        Person teacher = Room.Store.Instructors.Claim(code, instructor, hash, $"Class of {instructor}")!;
        Storage.Classes.ClassRoom room = Room.Store.Classes.OfInstructor(teacher.Id)[0];
        Room.Store.Accounts.Add(room.Id, Role.Mentor, mentor, hash);
        foreach (string student in students) Room.Store.Accounts.Add(room.Id, Role.Student, student, hash);
        Room.Clock.Advance(TimeSpan.FromSeconds(1));
        return room;
    }
}
