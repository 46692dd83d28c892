using System.Collections.Immutable;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <summary>Whose class and whose work someone may see. Every page that shows another person's work asks here.</summary>
public sealed class ClassAccess(IHttpContextAccessor accessor, ClassRoomStore classRoomStore, PersonStore personStore, Visitor visitor)
{
    /// <summary>Remembers which of several classes an instructor has open; says nothing by itself.</summary>
    public const string Cookie = "tying-class";

    /// <summary>Those an instructor teaches, oldest first; the one a student or mentor belongs to; none for a guest.</summary>
    public ImmutableArray<ClassRoom> ClassesOf(Person? person) => person switch
    {
        { Role: Role.Instructor } => classRoomStore.OfInstructor(person.Id),
        { ClassId: { } id } when classRoomStore.Find(id) is { } room => [room],
        _ => [],
    };

    /// <summary>The visitor's class: their own, or the one an instructor has open. Null for a guest.</summary>
    public ClassRoom? Current
    {
        get
        {
            ImmutableArray<ClassRoom> mine = ClassesOf(visitor.Person);
            string? chosen = accessor.HttpContext?.Request.Cookies[Cookie];
            return mine.FirstOrDefault(c => c.Id == chosen) ?? mine.FirstOrDefault(c => c.ArchivedAt is null) ?? mine.FirstOrDefault();
        }
    }

    /// <summary>What the visitor may run of the class that is open; nothing where the store cannot be read: this frames every page.</summary>
    public ClassRight Right
    {
        get
        {
            try
            {
                return Current is { } room ? RightIn(visitor.Person, room) : visitor.IsInstructor ? ClassRight.Teaches : ClassRight.None;
            }
            catch (StorageException)
            {
                return ClassRight.None;
            }
        }
    }

    public static ClassRight RightIn(Person? viewer, ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        if (viewer is not { RemovedAt: null }) return ClassRight.None;
        if (viewer.Role == Role.Instructor) return room.IsTaughtBy(viewer.Id) ? ClassRight.Teaches : ClassRight.None;
        if (viewer.ClassId != room.Id || room.DeputyOf(viewer.Id) is not { } deputy) return ClassRight.None;
        return deputy.Everything ? ClassRight.Everything : ClassRight.Evenings;
    }

    /// <summary>One evening of the class that is open.</summary>
    public bool MayRunEvening(int number) =>
        Right >= ClassRight.Everything || (visitor.Person is { } me && Current?.DeputyOf(me.Id)?.MayRun(number) == true && Right == ClassRight.Evenings);

    /// <summary>
    /// Everyone their own; mentor, instructor and deputy of everything that of the students of their class; the last two also that of mentors
    /// there. Guests belong to no class: only where there is no other class does its instructor see their work.
    /// </summary>
    public bool MaySeeWorkOf(Person? viewer, string ownerPersonId)
    {
        if (viewer is not { Role: not Role.Guest, RemovedAt: null }) return viewer is { RemovedAt: null } && viewer.Id == ownerPersonId;
        if (viewer.Id == ownerPersonId) return true;
        if (personStore.Find(ownerPersonId) is not { RemovedAt: null } owner) return false;
        return owner.Role switch
        {
            Role.Guest => SeesGuests(viewer),
            Role.Student => owner.ClassId is { } id && MentorsOrRuns(viewer, id),
            Role.Mentor => owner.ClassId is { } id && Runs(viewer, id),
            _ => false,
        };
    }

    /// <summary>With several classes nobody does: a guest's work is found by the guest's mark alone.</summary>
    public bool SeesGuests(Person? viewer) =>
        viewer is { Role: Role.Instructor, RemovedAt: null } && classRoomStore.All() is [{ } only] && only.IsTaughtBy(viewer.Id);

    /// <summary>Instructor and deputy of everything may overrule any grade; a mentor decides only what no engine can: explanations and tub tests. Nobody their
    /// own.</summary>
    public bool MayJudge(Person? viewer, Attempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        if (viewer is null || viewer.Id == attempt.PersonId || !MaySeeWorkOf(viewer, attempt.PersonId)) return false;
        return viewer.Role == Role.Instructor || attempt.AwaitsReview || (viewer.ClassId is { } id && Runs(viewer, id));
    }

    /// <summary>Mentor of that class, or whoever runs all of it.</summary>
    public bool MentorsOrRuns(Person? viewer, string classId) =>
        (viewer is { Role: Role.Mentor, RemovedAt: null } && viewer.ClassId == classId) || Runs(viewer, classId);

    /// <summary>Instructor or deputy of everything.</summary>
    public bool Runs(Person? viewer, string classId) =>
        viewer is not null && classRoomStore.Find(classId) is { } room && RightIn(viewer, room) >= ClassRight.Everything;

    public bool Teaches(Person? viewer, string classId) =>
        viewer is { Role: Role.Instructor, RemovedAt: null } && classRoomStore.Find(classId)?.IsTaughtBy(viewer.Id) == true;
}
