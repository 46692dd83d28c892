using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using TyingClass.Storage.Starts;
using TyingClass.Web.Exchange;
using TyingClass.Web.Identity;
using TyingClass.Web.Network;

namespace TyingClass.Web.Classes;

/// <summary>The steps of setting a class up, by the name they are kept under.</summary>
public static class StartSteps
{
    public const string Begun = "begun";
    public const string Class = "class";
    public const string Room = "room";
    public const string Names = "names";
    public const string Dates = "dates";
    public const string Slips = "slips";
    public const string End = "end";

    /// <summary>In their order, with the address of each.</summary>
    public static ImmutableArray<(string Step, string Title, string Address)> All { get; } =
    [
        (Class, "You and the class", "/class/start#class"),
        (Room, "Open to the room", "/class/start#room"),
        (Names, "Names", "/class/people/names"),
        (Dates, "Dates", "/class/evenings"),
        (Slips, "Slips", "/class/start#slips"),
    ];
}

/// <param name="Waiting">Have an account and have not been here: a slip is all they lack.</param>
/// <param name="Dated">Evenings that have a date.</param>
/// <param name="Evenings">Evenings that lessons name.</param>
/// <param name="Done">Steps that are done, by what is there or because they were passed over.</param>
/// <param name="ListKept">A list of names was begun and not added yet.</param>
public sealed record StartView(
    ClassRoom Room, int People, ImmutableArray<Person> Waiting, int Dated, int Evenings, bool ListKept, ImmutableHashSet<string> Done)
{
    /// <summary>The first that is not done; null when all are.</summary>
    public string? Next => StartSteps.All.Select(s => s.Step).FirstOrDefault(s => !Done.Contains(s));

    /// <summary>Begun and not ended: the steps are shown on the pages they lead to.</summary>
    public bool IsGoing => Done.Contains(StartSteps.Begun) && !Done.Contains(StartSteps.End);
}

/// <summary>What setting a class up reads and writes.</summary>
public sealed record StartStores(ClassStartStore Starts, AccountStore Accounts, EveningStore Evenings, RoomDoor Door);

/// <summary>Leads an instructor through setting up the class that is open. Each step can be left and taken up again: what was done is kept with the
/// class.</summary>
public sealed class StartDesk(ICourseSource course, StartStores store, ClassAccess access, Visitor visitor, AccountSignIn account, PassphraseSlips slips)
{
    public StartView? Open()
    {
        if (access.Current is not { } room || access.Right < ClassRight.Teaches) return null;
        ClassStart start = store.Starts.Of(room.Id);
        ImmutableArray<Person> people = store.Accounts.OfClass(room.Id);
        int dated = store.Evenings.OfClass(room.Id).Count(e => e.StartsLocal is not null);
        int evenings = course.Current.Lessons.Where(l => l.Evening is not null).Select(l => l.Evening).Distinct().Count();
        List<string> there = [];
        if (!people.IsEmpty) there.Add(StartSteps.Names);
        if (dated > 0) there.Add(StartSteps.Dates);
        // However it was opened: on the page, or by the switch.
        if (store.Door.State.IsOpen) there.Add(StartSteps.Room);
        return new StartView(room, people.Length, [.. people.Where(p => !p.HasBeenHere)], dated, evenings, start.Names.Length > 0, [.. start.Done, .. there]);
    }

    /// <summary>Done, or passed over.</summary>
    public void Mark(string step)
    {
        if (access.Current is not { } room || access.Right < ClassRight.Teaches) return;
        store.Starts.MarkDone(room.Id, StartSteps.Begun);
        if (step == StartSteps.End || StartSteps.All.Any(s => s.Step == step)) store.Starts.MarkDone(room.Id, step);
    }

    /// <summary>The name the class sees.</summary>
    /// <returns>What is wrong; null when it is kept.</returns>
    public string? NameInstructor(string? name) => visitor.Person is not { } me ? "You are not signed in any more."
        : string.IsNullOrWhiteSpace(name) ? "Type the name the class knows you by."
        : store.Accounts.Rename(me.Id, name) ? null : "Someone already has that name here. Choose another, or add a letter.";

    /// <summary>New passphrases for everyone who has not been here yet; those on earlier slips stop working.</summary>
    /// <returns>The ticket of the slips; null when nobody waits for one.</returns>
    public string? MakeSlips()
    {
        if (Open() is not { Waiting.IsEmpty: false } view) return null;
        Dictionary<string, (string Passphrase, string Hash)> made = view.Waiting.AsParallel()
            .Select(p => (p.Id, Passphrase: HandedPassphrase.New())).ToDictionary(p => p.Id, p => (p.Passphrase, account.Hash(p.Passphrase)));
        string? ticket = null;
        store.Accounts.HandAgain(view.Room.Id, made.ToDictionary(m => m.Key, m => m.Value.Hash), handed =>
        {
            SlipSheet sheet = new($"Slips of {view.Room.Name}", [.. handed.Select(p => new Slip(p.Label, made[p.Id].Passphrase))]);
            SealedSlips kept = slips.Seal(visitor.Person!.Id, sheet);
            ticket = kept.Ticket;
            return kept;
        });
        Mark(StartSteps.Slips);
        return ticket;
    }

    /// <summary>Of the last slips this instructor made that can still be shown; null when they are gone.</summary>
    public string? SlipsStillHere => visitor.Person is { } me ? slips.Latest(me.Id) : null;
}
