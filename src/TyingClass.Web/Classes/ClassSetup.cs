using TyingClass.Storage.Classes;
using TyingClass.Storage.Instructors;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <summary>What an instructor does with a class itself; everything is about the one that is open.</summary>
public sealed class ClassSetup(IHttpContextAccessor accessor, ClassRoomStore classRoomStore, InstructorStore instructorStore, ClassAccess access,
    Visitor visitor)
{
    /// <returns>Null when it was kept; else what to tell whoever typed it.</returns>
    public string? Rename(string? name, string? zone, int expectedVersion)
    {
        if (access.Current is not { } room) return "There is no class to name yet. Make one below.";
        if (string.IsNullOrWhiteSpace(name)) return "A class needs a name.";
        if (zone is not null && !TimeZoneInfo.TryFindSystemTimeZoneById(zone, out _))
            return $"This server knows no time zone “{zone}”. Choose one from the list.";
        if (access.ClassesOf(visitor.Person).Any(c => c.Id != room.Id && string.Equals(c.Name, name.Trim(), StringComparison.OrdinalIgnoreCase)))
            return $"You have another class called “{name.Trim()}”. Add a year or a day to one of them.";
        return classRoomStore.Rename(room.Id, name, expectedVersion, zone) switch
        {
            { Saved: false, Current: var now } =>
                $"The class was changed while you were writing: it is called “{now.Name}” now, in {now.TimeZoneId}. Yours was not kept, but it stands in "
                    + "the form: send it again if you still mean it.",
            _ => null,
        };
    }

    public void RenewCode()
    {
        if (access.Current is { } room) classRoomStore.RenewCode(room.Id);
    }

    public string Invite() => instructorStore.Invite();

    public void Create(string? name) => Remember(classRoomStore.Create(visitor.Person!.Id, name));

    /// <summary>Does nothing with a class that is someone else's.</summary>
    public void Open(string classId)
    {
        if (access.Teaches(visitor.Person, classId) && classRoomStore.Find(classId) is { } room) Remember(room);
    }

    /// <summary>Puts a class of the visitor's out of the way, or takes it back and opens it.</summary>
    public void Archive(string classId, bool archived)
    {
        if (!access.Teaches(visitor.Person, classId) || classRoomStore.SetArchived(classId, archived) is not { } room) return;
        if (!archived) Remember(room);
        else if (accessor.HttpContext!.Request.Cookies[ClassAccess.Cookie] == classId) accessor.HttpContext.Response.Cookies.Delete(ClassAccess.Cookie);
    }

    /// <summary>Makes a class like one of the visitor's, so many days later, and opens it.</summary>
    /// <returns>Null for a class that is someone else's.</returns>
    public ClassRoom? Copy(string classId, string? name, int days)
    {
        if (!access.Teaches(visitor.Person, classId) || classRoomStore.Copy(classId, visitor.Person!.Id, name, days) is not { } made) return null;
        Remember(made);
        return made;
    }

    private void Remember(ClassRoom room) => accessor.HttpContext!.Response.Cookies.Append(ClassAccess.Cookie, room.Id, new CookieOptions
    {
        HttpOnly = true,
        IsEssential = true,
        SameSite = SameSiteMode.Lax,
        Secure = accessor.HttpContext.Request.IsHttps,
        MaxAge = TimeSpan.FromDays(400),
    });
}
