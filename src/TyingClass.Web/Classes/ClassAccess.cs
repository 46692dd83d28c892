using System.Collections.Immutable;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <summary>Whose class and whose work someone may see. Every page that shows another person's work asks here.</summary>
public sealed class ClassAccess(IHttpContextAccessor accessor, ClassStore store, Visitor visitor)
{
    /// <summary>Remembers which of several classes an instructor has open; says nothing by itself.</summary>
    public const string Cookie = "tying-class";

    /// <summary>Those an instructor teaches, oldest first; the one a student or mentor belongs to; none for a guest.</summary>
    public ImmutableArray<ClassRoom> ClassesOf(Person? person) => person switch
    {
        { Role: Role.Instructor } => store.Classes.OfInstructor(person.Id),
        { ClassId: { } id } when store.Classes.Find(id) is { } room => [room],
        _ => [],
    };

    /// <summary>The visitor's class: their own, or the one an instructor has open. Null for a guest.</summary>
    public ClassRoom? Current
    {
        get
        {
            ImmutableArray<ClassRoom> mine = ClassesOf(visitor.Person);
            string? chosen = accessor.HttpContext?.Request.Cookies[Cookie];
            return mine.FirstOrDefault(c => c.Id == chosen) ?? mine.FirstOrDefault();
        }
    }

    /// <summary>
    /// Everyone their own; mentor and instructor that of the students of their class; an instructor also that of mentors there. Guests
    /// belong to no class: only where there is no other class does its instructor see their work.
    /// </summary>
    public bool MaySeeWorkOf(Person? viewer, string ownerPersonId)
    {
        if (viewer is null || viewer.RemovedAt is not null) return false;
        if (viewer.Id == ownerPersonId) return true;
        if (viewer.Role is not (Role.Mentor or Role.Instructor) || store.People.Find(ownerPersonId) is not { RemovedAt: null } owner) return false;
        return owner.Role switch
        {
            Role.Guest => SeesGuests(viewer),
            Role.Student => owner.ClassId is { } id && MentorsOrTeaches(viewer, id),
            Role.Mentor => owner.ClassId is { } id && Teaches(viewer, id),
            _ => false,
        };
    }

    /// <summary>With several classes nobody does: a guest's work is found by the guest's mark alone.</summary>
    public bool SeesGuests(Person? viewer) =>
        viewer is { Role: Role.Instructor, RemovedAt: null } && store.Classes.All() is [{ } only] && only.IsTaughtBy(viewer.Id);

    /// <summary>An instructor may overrule any grade; a mentor decides only what no engine can: explanations and tub tests. Nobody their own.</summary>
    public bool MayJudge(Person? viewer, Attempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        return viewer is not null && viewer.Id != attempt.PersonId
            && (viewer.Role == Role.Instructor || (viewer.Role == Role.Mentor && attempt.AwaitsReview))
            && MaySeeWorkOf(viewer, attempt.PersonId);
    }

    /// <summary>Mentor or instructor of that class.</summary>
    public bool MentorsOrTeaches(Person? viewer, string classId) =>
        viewer is { Role: Role.Mentor, RemovedAt: null } ? viewer.ClassId == classId : Teaches(viewer, classId);

    public bool Teaches(Person? viewer, string classId) =>
        viewer is { Role: Role.Instructor, RemovedAt: null } && store.Classes.Find(classId)?.IsTaughtBy(viewer.Id) == true;
}
