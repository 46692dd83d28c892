using System.Collections.Immutable;
using System.Text.Json;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

public sealed record GuestLine(Person Person, int Attempts, DateTimeOffset LastAt);

public sealed record PeopleView(ClassRoom Room, ImmutableArray<Person> People, ImmutableArray<GuestLine> Guests, ImmutableArray<Person> Removed);

/// <summary>What an instructor does with the people of the class that is open. Anyone of another class is as good as unknown.</summary>
public sealed class PeopleDesk(ClassStore store, ClassAccess access, Visitor visitor, AccountSignIn account)
{
    public const int MostGuests = 50;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    public PeopleView? Open() => access.Current is { } room
        ? new PeopleView(room, store.Accounts.OfClass(room.Id), Guests(), store.Accounts.RemovedOf(room.Id))
        : null;

    /// <returns>Null for anyone who is no student or mentor of a class the visitor teaches.</returns>
    /// <param name="removed">Also someone in the trash.</param>
    public Person? Find(string personId, bool removed = false) =>
        store.People.Find(personId) is { ClassId: { } classId } person && (removed || person.RemovedAt is null) && access.Teaches(visitor.Person, classId) ? person : null;

    /// <summary>Browsers without an account that sent something in; they belong to no class.</summary>
    public ImmutableArray<GuestLine> Guests() => [.. store.People.Guests()
        .Where(g => g.RemovedAt is null)
        .Select(g => (Guest: g, Standings: store.Attempts.StandingsOf(g.Id)))
        .Where(g => g.Standings.Length > 0)
        .Select(g => new GuestLine(g.Guest, g.Standings.Sum(s => s.Attempts), g.Standings.Max(s => s.LastAt)))
        .OrderByDescending(g => g.LastAt).Take(MostGuests)];

    public bool SetRole(string personId, Role role) => Find(personId) is not null && store.Accounts.SetRole(personId, role) is not null;

    /// <returns>The new passphrase, to be handed over; kept nowhere.</returns>
    public string? ResetPassphrase(string personId)
    {
        if (Find(personId) is null) return null;
        string made = HandedPassphrase.New();
        return store.Accounts.SetPassphrase(personId, account.Hash(made), mustChoose: true) is null ? null : made;
    }

    public int? MoveGuest(string guestId, string personId) => Find(personId) is null ? null : store.Trash.MoveGuestInto(guestId, personId);

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
