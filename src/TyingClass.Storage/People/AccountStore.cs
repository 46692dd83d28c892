using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.People;

public enum JoinProblem
{
    None,
    NoSuchClass,
    NoName,
    NameTaken,
}

/// <param name="Person">Null when there is a problem; then nothing was written.</param>
public sealed record JoinOutcome(Person? Person, JoinProblem Problem);

/// <param name="PassphraseHash">Of a passphrase made up for the person, who chooses another at the first visit.</param>
public sealed record NewPerson(string Name, Role Role, string PassphraseHash);

/// <summary>Why one of a list cannot be added.</summary>
/// <param name="Index">In the list, from 0.</param>
/// <param name="TwinIndex">Of the earlier one in the list that has the same name; null where the name is taken by someone on the server.</param>
public sealed record RefusedPerson(int Index, JoinProblem Problem, int? TwinIndex = null);

/// <param name="Added">In the order of the list; none when anyone was refused.</param>
public sealed record AddedPeople(ImmutableArray<Person> Added, ImmutableArray<RefusedPerson> Refused);

/// <summary>People with a name and passphrase: students, mentors, instructors. The same collection as the guests, so that work never changes hands.</summary>
public sealed class AccountStore
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal AccountStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <returns>False for a name of which nothing can be seen.</returns>
    public static bool CanBeSeen(string name) => PersonStore.CleanName(name) is not null;

    /// <summary>Makes a student of whoever knows the class code.</summary>
    /// <param name="name">Unique on the server, case ignored.</param>
    /// <param name="guestId">The guest record this browser has filled so far: it becomes the account, with all work in it.</param>
    public JoinOutcome Join(string code, string? name, string passphraseHash, string? guestId = null) => _database.Write(db =>
    {
        if (ClassRoomStore.FindByCodeIn(db, code) is not { ArchivedAt: null } room) return new JoinOutcome(null, JoinProblem.NoSuchClass);
        return PersonStore.CleanName(name) is { } clean
            ? Make(db, room.Id, Role.Student, clean, passphraseHash, guestId)
            : new JoinOutcome(null, JoinProblem.NoName);
    });

    /// <summary>Everything that would keep someone from joining, in the order of the form. Who does not know the code is not told which names there
    /// are.</summary>
    public ImmutableArray<JoinProblem> WhatKeepsOut(string code, string? name) => _database.Read(db =>
    {
        bool found = ClassRoomStore.FindByCodeIn(db, code) is { ArchivedAt: null };
        JoinProblem ofName = PersonStore.CleanName(name) is not { } clean ? JoinProblem.NoName
            : found && !NameIsFree(db, clean, exceptPersonId: null) ? JoinProblem.NameTaken : JoinProblem.None;
        return new[] { found ? JoinProblem.None : JoinProblem.NoSuchClass, ofName }.Where(p => p != JoinProblem.None).ToImmutableArray();
    });

    /// <summary>Makes a student or mentor of a class without its code: for whoever runs the class.</summary>
    public JoinOutcome Add(string classId, Role role, string name, string passphraseHash) => _database.Write(db =>
        ClassRoomStore.FindIn(db, classId) is null ? new JoinOutcome(null, JoinProblem.NoSuchClass)
        : PersonStore.CleanName(name) is { } clean ? Make(db, classId, role, clean, passphraseHash, guestId: null)
        : new JoinOutcome(null, JoinProblem.NoName));

    /// <summary>Makes students and mentors of a list, all of them or nobody: one name that is blank, taken or twice in the list refuses it.</summary>
    /// <param name="slips">What is to be handed over to them, kept in the same stroke; null for nothing.</param>
    public AddedPeople AddAll(string classId, IReadOnlyList<NewPerson> people, Func<ImmutableArray<Person>, SealedSlips>? slips = null)
    {
        ArgumentNullException.ThrowIfNull(people);
        return _database.Write(db =>
        {
            ImmutableArray<RefusedPerson> refused = [.. Refusals(db, classId, people)];
            if (!refused.IsEmpty) return new AddedPeople([], refused);
            ImmutableArray<Person> added = [.. people.Select(p => MakeHanded(db, classId, p))];
            if (slips is not null) SlipStore.KeepIn(db, slips(added));
            return new AddedPeople(added, []);
        });
    }

    /// <summary>Gives those who have not been here yet another passphrase to hand over, all at once; anyone else is left as is.</summary>
    /// <param name="hashes">By person.</param>
    /// <param name="slips">What is to be handed over to them, kept in the same stroke.</param>
    /// <returns>Those who have one now.</returns>
    public ImmutableArray<Person> HandAgain(
        string classId, IReadOnlyDictionary<string, string> hashes, Func<ImmutableArray<Person>, SealedSlips> slips)
    {
        ArgumentNullException.ThrowIfNull(hashes);
        ArgumentNullException.ThrowIfNull(slips);
        return _database.Write(db =>
        {
            ImmutableArray<Person> handed =
            [
                .. OfClassIn(db, classId, removed: false).Where(p => !p.HasBeenHere && hashes.ContainsKey(p.Id))
                    .Select(p => Change(db, p.Id, q => q with { PassphraseHash = hashes[q.Id], Stamp = RandomId.New(), MustChoosePassphrase = true })!),
            ];
            SlipStore.KeepIn(db, slips(handed));
            return handed;
        });
    }

    /// <summary>Two names with one key are one name: for comparing names that stand in no store yet.</summary>
    public static string NameKey(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return PersonDocument.NameKey(name);
    }

    /// <summary>Null for a name nobody has, and for one in the trash.</summary>
    public Person? FindByName(string name) => _database.Read(db =>
        FindByNameIn(db, name) is { RemovedAt: null } found ? found : null);

    /// <summary>By anyone on the server, those in the trash too.</summary>
    public bool NameIsTaken(string name) => _database.Read(db => !NameIsFree(db, name, exceptPersonId: null));

    /// <summary>Students and mentors of a class, by name; those in the trash left out.</summary>
    public ImmutableArray<Person> OfClass(string classId) => _database.Read(db => OfClassIn(db, classId, removed: false));

    /// <summary>Those in the trash, by name.</summary>
    public ImmutableArray<Person> RemovedOf(string classId) => _database.Read(db => OfClassIn(db, classId, removed: true));

    /// <returns>False when another account has that name, or it is blank.</returns>
    public bool Rename(string personId, string? name) => _database.Write(db =>
        PersonStore.CleanName(name) is { } clean && NameIsFree(db, clean, personId) && Change(db, personId, p => p with { Name = clean }) is not null);

    /// <summary>Between student and mentor only.</summary>
    /// <returns>Null when there is no such student or mentor.</returns>
    public Person? SetRole(string personId, Role role)
    {
        if (role is not (Role.Student or Role.Mentor)) throw new ArgumentOutOfRangeException(nameof(role), role, "Only students and mentors change places.");
        return _database.Write(db => Change(db, personId, p => p.Role is Role.Student or Role.Mentor ? p with { Role = role, Stamp = RandomId.New() } : null));
    }

    /// <summary>Voids every sign-in made with the old one.</summary>
    /// <param name="mustChoose">It was made up for the person, who is asked to choose another.</param>
    public Person? SetPassphrase(string personId, string hash, bool mustChoose) => _database.Write(db =>
        Change(db, personId, p => p with { PassphraseHash = hash, Stamp = RandomId.New(), MustChoosePassphrase = mustChoose }));

    /// <summary>The same passphrase hashed anew: sign-ins stay.</summary>
    /// <returns>Null when another hash stands there by now.</returns>
    public Person? KeepHashAnew(string personId, string before, string now) => _database.Write(db =>
        Change(db, personId, p => p.PassphraseHash == before ? p with { PassphraseHash = now } : null));

    /// <summary>Voids every sign-in made so far.</summary>
    public Person? SignOutEverywhere(string personId) => _database.Write(db => Change(db, personId, p => p with { Stamp = RandomId.New() }));

    /// <summary>Notes a visit.</summary>
    public Person? Touch(string personId) => _database.Write(db => Change(db, personId, p => p with { LastSeenAt = _time.GetUtcNow() }));

    internal static void Prepare(OpenData db)
    {
        Records people = PersonStore.People(db);
        people.EnsureIndex("nameKey", "$.nameKey");
        people.EnsureIndex("classId", "$.classId");
        // Accounts made before names were keys.
        foreach (BsonDocument old in people.FindAll("role = @0", nameof(Role.Instructor)).Where(d => d["nameKey"].IsNull))
        {
            old["nameKey"] = PersonDocument.NameKey(old["name"].TextOrNull() ?? "Instructor");
            people.Update(old);
        }

        Rekey(people);
    }

    // Keys written before a letter and its mark counted as one. A key that another account has by now stays as it was: both can still sign in.
    private static void Rekey(Records people)
    {
        foreach (BsonDocument old in people.FindAll("nameKey != null").Where(d => d["nameKey"].IsString && d["name"].IsString))
        {
            string key = PersonDocument.NameKey(old["name"].AsString);
            if (key == old["nameKey"].AsString || people.FindFirst("nameKey = @0", key) is not null) continue;
            old["nameKey"] = key;
            people.Update(old);
        }
    }

    private static IEnumerable<RefusedPerson> Refusals(OpenData db, string classId, IReadOnlyList<NewPerson> people)
    {
        bool known = ClassRoomStore.FindIn(db, classId) is not null;
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        for (int i = 0; i < people.Count; i++)
        {
            if (!known) yield return new RefusedPerson(i, JoinProblem.NoSuchClass);
            else if (PersonStore.CleanName(people[i].Name) is not { } name) yield return new RefusedPerson(i, JoinProblem.NoName);
            else if (!seen.TryAdd(PersonDocument.NameKey(name), i))
                yield return new RefusedPerson(i, JoinProblem.NameTaken, seen[PersonDocument.NameKey(name)]);
            else if (!NameIsFree(db, name, exceptPersonId: null)) yield return new RefusedPerson(i, JoinProblem.NameTaken);
        }
    }

    private Person MakeHanded(OpenData db, string classId, NewPerson person)
    {
        if (person.Role is not (Role.Student or Role.Mentor)) throw new ArgumentException("Only students and mentors are added to a class.", nameof(person));
        Person made = Make(db, classId, person.Role, PersonStore.CleanName(person.Name)!, person.PassphraseHash, guestId: null).Person!;
        return Change(db, made.Id, p => p with { MustChoosePassphrase = true })!;
    }

    internal static Person? FindByNameIn(OpenData db, string name)
    {
        string key = PersonDocument.NameKey(name), spelled = PersonDocument.SpelledKey(name);
        BsonDocument? found = spelled == key ? null : PersonStore.People(db).FindFirst("nameKey = @0", spelled);
        found ??= PersonStore.People(db).FindFirst("nameKey = @0", key);
        return found is null ? null : PersonDocument.ToPerson(found);
    }

    internal static bool NameIsFree(OpenData db, string name, string? exceptPersonId) =>
        FindByNameIn(db, name) is not { } taken || taken.Id == exceptPersonId;

    /// <param name="change">Null for a change that does not fit the person.</param>
    internal static Person? Change(OpenData db, string personId, Func<Person, Person?> change)
    {
        if (PersonStore.People(db).FindById(personId) is not { } document) return null;
        if (change(PersonDocument.ToPerson(document)) is not { } changed) return null;
        PersonStore.People(db).Update(PersonDocument.From(changed, document["secretHash"].TextOrNull()));
        return changed;
    }

    private JoinOutcome Make(OpenData db, string classId, Role role, string name, string hash, string? guestId)
    {
        if (!NameIsFree(db, name, exceptPersonId: null)) return new JoinOutcome(null, JoinProblem.NameTaken);
        DateTimeOffset now = _time.GetUtcNow();
        Person? guest = guestId is not null && PersonStore.People(db).FindById(guestId) is { } found ? PersonDocument.ToPerson(found) : null;
        if (guest is not { Role: Role.Guest }) guest = new Person(RandomId.New(), role, null, null, "", now, now);
        Person person =
            guest with { Role = role, Name = name, PassphraseHash = hash, Stamp = RandomId.New(), LastSeenAt = now, ClassId = classId, GuestMark = null };
        PersonStore.People(db).Upsert(PersonDocument.From(person, secretHash: null));
        return new JoinOutcome(person, JoinProblem.None);
    }

    internal static ImmutableArray<Person> OfClassIn(OpenData db, string classId, bool removed) =>
        [.. PersonStore.People(db).FindAll("classId = @0", classId).Select(PersonDocument.ToPerson)
            .Where(p => p.RemovedAt is not null == removed).OrderBy(p => p.Name, StringComparer.OrdinalIgnoreCase)];
}
