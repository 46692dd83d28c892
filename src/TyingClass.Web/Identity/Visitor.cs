using System.Security.Claims;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Web.Identity;

/// <summary>Who is asking: someone signed in, a guest known by a cookie, or nobody yet.</summary>
public sealed class Visitor(IHttpContextAccessor accessor, PersonStore personStore, AccountStore accountStore, TimeProvider time)
{
    // A visit is a matter of minutes: no write for every page.
    private static readonly TimeSpan VisitLength = TimeSpan.FromMinutes(5);

    private bool _looked;
    private Person? _person;

    private HttpContext Http => accessor.HttpContext ?? throw new InvalidOperationException("There is no visitor outside a request.");

    /// <summary>Null for a browser that has left no work here.</summary>
    public Person? Person
    {
        get
        {
            if (_looked) return _person;
            string? id = Http.User.FindFirstValue(ClaimTypes.NameIdentifier);
            _person = id is not null ? personStore.Find(id) : GuestCookie.Read(Http.Request) is { } secret ? personStore.FindGuest(secret) : null;
            _looked = true;
            NoteVisit();
            return _person;
        }
    }

    /// <summary>As <see cref="Person"/>, and null when the store cannot be read: for what frames every page, the page about that trouble too.</summary>
    public Person? PersonIfReadable
    {
        get
        {
            try
            {
                return Person;
            }
            catch (StorageException)
            {
                return null;
            }
        }
    }

    public bool IsInstructor => PersonIfReadable?.Role == Role.Instructor;

    public bool IsMentor => PersonIfReadable?.Role == Role.Mentor;

    /// <summary>Has a name and passphrase here.</summary>
    public bool HasAccount => PersonIfReadable is { Role: not Role.Guest };

    /// <summary>A record is begun only when there is something to keep in it: reading leaves no trace.</summary>
    public Person PersonOrNewGuest(string? name = null)
    {
        if (Person is { } known) return known;
        (Person guest, string secret) = personStore.AddGuest(name);
        GuestCookie.Write(Http, secret);
        (_person, _looked) = (guest, true);
        return guest;
    }

    private void NoteVisit()
    {
        if (_person is null || time.GetUtcNow() - _person.LastSeenAt < VisitLength) return;
        try
        {
            _person = accountStore.Touch(_person.Id) ?? _person;
        }
        catch (StorageException)
        {
            // A full disk must not keep anyone from reading.
        }
    }
}
