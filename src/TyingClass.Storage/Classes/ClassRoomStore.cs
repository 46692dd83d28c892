using System.Collections.Immutable;
using LiteDB;
using TyingClass.Recipes.Supplies;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Classes;

/// <summary>The classes on this server; none knows of another.</summary>
public sealed class ClassRoomStore
{
    public const int MostNameLength = 60;

    private readonly Database _database;
    private readonly TimeProvider _time;
    private Seen? _all;

    internal ClassRoomStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <param name="name">Blank for <see cref="ClassRoom.DefaultName"/>.</param>
    /// <param name="timeZoneId">IANA; null for the server's own.</param>
    public ClassRoom Create(string instructorId, string? name = null, string? timeZoneId = null) =>
        _database.Write(db => CreateIn(db, _time, instructorId, name, timeZoneId));

    public ClassRoom? Find(string classId) => _database.Read(db => FindIn(db, classId));

    /// <summary>Oldest first.</summary>
    public ImmutableArray<ClassRoom> OfInstructor(string instructorId) => _database.Read(db => OfInstructorIn(db, instructorId));

    /// <summary>All on the server, oldest first. Remembered until anything is written: every page that a guest opens asks.</summary>
    public ImmutableArray<ClassRoom> All()
    {
        // Before the reading: what is written meanwhile is then not taken for seen.
        long now = _database.Writes.Now;
        if (_all is { } known && known.At == now) return known.Rooms;
        Seen all = new(now, _database.Read(db =>
            Rooms(db).FindAll().Select(ClassRoomDocument.ToRoom).OrderBy(r => r.CreatedAt).ThenBy(r => r.Id, StringComparer.Ordinal).ToImmutableArray()));
        _all = all;
        return all.Rooms;
    }

    /// <summary>Whoever already joined stays; the old code lets nobody in any more.</summary>
    /// <returns>Null when there is no such class.</returns>
    public ClassRoom? RenewCode(string classId) => _database.Write(db =>
        FindIn(db, classId) is { } room ? Keep(db, room with { Code = NewCode(db) }) : null);

    /// <summary>Gives the class another name, zone, or both.</summary>
    /// <param name="expectedVersion">Of the class as it was read by whoever edits it.</param>
    /// <param name="timeZoneId">IANA; null leaves it.</param>
    /// <returns>Null when there is no such class.</returns>
    public EditOutcome<ClassRoom>? Rename(string classId, string? name, int expectedVersion, string? timeZoneId = null) => _database.Write(db =>
    {
        if (FindIn(db, classId) is not { } room) return null;
        if (room.Version != expectedVersion) return new EditOutcome<ClassRoom>(false, room);
        ClassRoom changed = room with { Name = CleanText.Line(name, MostNameLength) ?? room.Name, TimeZoneId = timeZoneId ?? room.TimeZoneId };
        return new EditOutcome<ClassRoom>(true, Keep(db, changed));
    });

    /// <summary>Puts a class out of the way, or takes it back. Nothing in it changes.</summary>
    /// <returns>Null when there is no such class.</returns>
    public ClassRoom? SetArchived(string classId, bool archived) =>
        ChangeQuietly(classId, r => r with { ArchivedAt = archived ? r.ArchivedAt ?? _time.GetUtcNow() : null });

    /// <summary>What the packets of the class hold.</summary>
    public ClassRoom? KeepPackets(string classId, Packets packets) => ChangeQuietly(classId, r => r with { Packets = packets });

    /// <summary>How the dates of its evenings are worked out.</summary>
    public ClassRoom? KeepRhythm(string classId, EveningRhythm rhythm) => ChangeQuietly(classId, r => r with { Rhythm = rhythm });

    /// <summary>Lets someone run part of a class, or takes it back when nothing is left to run.</summary>
    /// <returns>Null when there is no such class, or the person is no student or mentor of it.</returns>
    public ClassRoom? SetDeputy(string classId, Deputy deputy)
    {
        ArgumentNullException.ThrowIfNull(deputy);
        return _database.Write(db =>
        {
            if (FindIn(db, classId) is not { } room || PersonStore.FindIn(db, deputy.PersonId) is not { RemovedAt: null } person || person.ClassId != classId)
                return null;
            ImmutableArray<Deputy> others = [.. room.Deputies.Where(d => d.PersonId != deputy.PersonId)];
            ClassRoom changed = room with { Deputies = deputy.MayNothing ? others : others.Add(deputy) };
            Rooms(db).Update(ClassRoomDocument.From(changed));
            return changed;
        });
    }

    /// <summary>Makes a class like another one, for the next winter: see <see cref="ClassCopy"/>.</summary>
    /// <param name="days">How much later everything is; at the same time on the wall.</param>
    /// <returns>Null when there is no such class.</returns>
    public ClassRoom? Copy(string classId, string instructorId, string? name, int days) => _database.Write(db =>
        FindIn(db, classId) is { } room ? new ClassCopy(db, _time, room).Run(instructorId, name, days) : null);

    /// <summary>Removes a class that nobody ever joined.</summary>
    /// <returns>False when there is none such, or someone is in it, the trash included.</returns>
    public bool RemoveIfEmpty(string classId) => _database.Write(db =>
        PersonStore.People(db).FindFirst("classId = @0", classId) is null && Rooms(db).Delete(classId));

    internal static void Prepare(OpenData db)
    {
        Rooms(db).EnsureIndex("codeKey", "$.codeKey", unique: true);
        Rooms(db).EnsureIndex("instructorIds", "$.instructorIds[*]");
    }

    internal static ClassRoom CreateIn(OpenData db, TimeProvider time, string instructorId, string? name, string? timeZoneId)
    {
        ClassRoom room = new(
            RandomId.New(), FreeName(db, instructorId, CleanText.Line(name, MostNameLength) ?? ClassRoom.DefaultName), [instructorId],
            NewCode(db), timeZoneId ?? IanaId(time.LocalTimeZone), time.GetUtcNow(), Version: 1);
        Rooms(db).Insert(ClassRoomDocument.From(room));
        return room;
    }

    internal static ClassRoom? FindIn(OpenData db, string classId) =>
        Rooms(db).FindById(classId) is { } found ? ClassRoomDocument.ToRoom(found) : null;

    /// <param name="code">However it is spaced, hyphened or cased; a code that was renewed opens nothing.</param>
    internal static ClassRoom? FindByCodeIn(OpenData db, string code) =>
        ClassCode.Key(code) is { Length: > 0 } key && Rooms(db).FindFirst("codeKey = @0", key) is { } found ? ClassRoomDocument.ToRoom(found) : null;

    internal static ImmutableArray<ClassRoom> OfInstructorIn(OpenData db, string instructorId) =>
        [.. Rooms(db).FindAll("$.instructorIds[*] ANY = @0", instructorId).Select(ClassRoomDocument.ToRoom).OrderBy(r => r.CreatedAt).ThenBy(r => r.Id,
        StringComparer.Ordinal)];

    // Two classes of one name could not be told apart in a list.
    private static string FreeName(OpenData db, string instructorId, string name)
    {
        HashSet<string> taken = [.. OfInstructorIn(db, instructorId).Select(r => r.Name)];
        return NumberedName.FirstFree(name, MostNameLength, free => !taken.Contains(free));
    }

    internal static void Overwrite(OpenData db, ClassRoom room) => Rooms(db).Update(ClassRoomDocument.From(room));

    /// <summary>Takes someone who is gone for good off every class's list of deputies.</summary>
    internal static void DropDeputy(OpenData db, string personId)
    {
        foreach (ClassRoom room in Rooms(db).FindAll().ToList().Select(ClassRoomDocument.ToRoom).Where(r => r.DeputyOf(personId) is not null))
            Overwrite(db, room with { Deputies = [.. room.Deputies.Where(d => d.PersonId != personId)] });
    }

    // Nobody's open form of name and zone goes stale by it.
    private ClassRoom? ChangeQuietly(string classId, Func<ClassRoom, ClassRoom> change) => _database.Write(db =>
    {
        if (FindIn(db, classId) is not { } room) return null;
        ClassRoom changed = change(room);
        Overwrite(db, changed);
        return changed;
    });

    private static ClassRoom Keep(OpenData db, ClassRoom room)
    {
        ClassRoom kept = room with { Version = room.Version + 1 };
        Rooms(db).Update(ClassRoomDocument.From(kept));
        return kept;
    }

    private static string NewCode(OpenData db)
    {
        while (true)
        {
            string code = ClassCode.New();
            if (Rooms(db).FindFirst("codeKey = @0", ClassCode.Key(code)) is null) return code;
        }
    }

    private static string IanaId(TimeZoneInfo zone) =>
        zone.HasIanaId ? zone.Id : TimeZoneInfo.TryConvertWindowsIdToIanaId(zone.Id, out string? iana) ? iana : "UTC";

    private static Records Rooms(OpenData db) => db.Records("classes");

    private sealed record Seen(long At, ImmutableArray<ClassRoom> Rooms);
}
