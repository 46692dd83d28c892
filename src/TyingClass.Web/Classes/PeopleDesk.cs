using System.Collections.Immutable;
using System.Text.Json;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <param name="Person">A browser without an account.</param>
public sealed record GuestLine(Person Person, int Attempts, DateTimeOffset LastAt);

/// <param name="Guests">Null where there are several classes, and nobody sees them.</param>
public sealed record PeopleView(ClassRoom Room, ImmutableArray<Person> People, ImmutableArray<GuestLine>? Guests, ImmutableArray<Person> Removed);

/// <summary>What the desk reads and changes of people and their work.</summary>
public sealed record PeopleStores(
    AccountStore Accounts, PersonStore People, AttemptStore Attempts, ClassRoomStore Classes, GuestMoves GuestMoves, Trash Trash, CommentStore Comments);

/// <summary>What an instructor does with the people of the class that is open. Anyone of another class is as good as unknown.</summary>
public sealed class PeopleDesk(PeopleStores store, ClassAccess access, Visitor visitor, AccountSignIn account)
{
    public const int MostGuests = 50;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    public PeopleView? Open() => access.Current is { } room
        ? new PeopleView(room, store.Accounts.OfClass(room.Id), access.SeesGuests(visitor.Person) ? Guests() : null, store.Accounts.RemovedOf(room.Id))
        : null;

    /// <returns>Null for anyone who is no student or mentor of a class the visitor teaches.</returns>
    /// <param name="removed">Also someone in the trash.</param>
    public Person? Find(string personId, bool removed = false) =>
        store.People.Find(personId) is { ClassId: { } classId } person && (removed || person.RemovedAt is null) && access.Teaches(visitor.Person, classId)
        ? person : null;

    /// <summary>Browsers without an account that sent something in; none where this visitor may not see them.</summary>
    public ImmutableArray<GuestLine> Guests() => !access.SeesGuests(visitor.Person) ? [] : [.. store.People.Guests()
        .Where(g => g.RemovedAt is null)
        .Select(g => (Guest: g, Standings: store.Attempts.StandingsOf(g.Id)))
        .Where(g => g.Standings.Length > 0)
        .Select(g => new GuestLine(g.Guest, g.Standings.Sum(s => s.Attempts), g.Standings.Max(s => s.LastAt)))
        .OrderByDescending(g => g.LastAt).Take(MostGuests)];

    public bool SetRole(string personId, Role role) => Find(personId) is not null && store.Accounts.SetRole(personId, role) is not null;

    /// <summary>Null for someone who is no deputy.</summary>
    public Deputy? DeputyOf(Person person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return person.ClassId is { } classId ? store.Classes.Find(classId)?.DeputyOf(person.Id) : null;
    }

    public bool SetDeputy(Deputy deputy)
    {
        ArgumentNullException.ThrowIfNull(deputy);
        return Find(deputy.PersonId)?.ClassId is { } classId && store.Classes.SetDeputy(classId, deputy) is not null;
    }

    /// <returns>The new passphrase, to be handed over; kept nowhere.</returns>
    public string? ResetPassphrase(string personId)
    {
        if (Find(personId) is null) return null;
        string made = HandedPassphrase.New();
        return store.Accounts.SetPassphrase(personId, account.Hash(made), mustChoose: true) is null ? null : made;
    }

    /// <summary>One from the list, for whoever may see it.</summary>
    public GuestMove? MoveGuest(string guestId, string personId) =>
        access.SeesGuests(visitor.Person) && Find(personId) is not null ? store.GuestMoves.MoveInto(guestId, personId) : null;

    /// <returns>False for work that was not moved to someone of the visitor's, or too long ago.</returns>
    public bool UndoMove(string moveId, string personId) =>
        Find(personId) is not null && store.GuestMoves.Find(moveId)?.ToPersonId == personId && store.GuestMoves.Undo(moveId);

    /// <summary>What was moved into this account and can go back.</summary>
    public ImmutableArray<GuestMove> MovedInto(string personId) => Find(personId) is null ? [] : store.GuestMoves.Into(personId);

    public bool Remove(string personId) => Find(personId) is not null && store.Trash.Remove(personId) is not null;

    public bool Restore(string personId) => Find(personId, removed: true) is not null && store.Trash.Restore(personId) is not null;

    /// <summary>Everything one person sent in and was told, as JSON with the words of the pages.</summary>
    public byte[] WorkOf(Person person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                name = person.Label,
                role = person.Role.ToString(),
                joinedAt = person.CreatedAt,
                attempts = store.Attempts.AllOf(person.Id).Select(Plain),
                comments = store.Comments.To(person.Id).Select(c => new { c.ByName, c.At, c.ExerciseId, c.Text }),
            },
            Json);
    }

    private static object Plain(Attempt attempt) => new
    {
        attempt.ExerciseId,
        attempt.Number,
        attempt.At,
        answer = attempt.AnswerText,
        attempt.Passed,
        attempt.AwaitsReview,
        attempt.EngineVersion,
        attempt.Judgments,
        attempt.Feedback,
        attempt.Observations,
    };
}
