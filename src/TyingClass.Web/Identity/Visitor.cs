using System.Security.Claims;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Web.Identity;

/// <summary>Who is asking: someone signed in, a guest known by a cookie, or nobody yet.</summary>
public sealed class Visitor(IHttpContextAccessor accessor, ClassStore store)
{
    private bool looked;
    private Person? person;

    private HttpContext Http => accessor.HttpContext ?? throw new InvalidOperationException("There is no visitor outside a request.");

    /// <summary>Null for a browser that has left no work here.</summary>
    public Person? Person
    {
        get
        {
            if (looked) return person;
            string? id = Http.User.FindFirstValue(ClaimTypes.NameIdentifier);
            person = id is not null ? store.People.Find(id) : GuestCookie.Read(Http.Request) is { } secret ? store.People.FindGuest(secret) : null;
            looked = true;
            return person;
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

    /// <summary>A record is begun only when there is something to keep in it: reading leaves no trace.</summary>
    public Person PersonOrNewGuest(string? name = null)
    {
        if (Person is { } known) return known;
        (Person guest, string secret) = store.People.AddGuest(name);
        GuestCookie.Write(Http, secret);
        (person, looked) = (guest, true);
        return guest;
    }
}
