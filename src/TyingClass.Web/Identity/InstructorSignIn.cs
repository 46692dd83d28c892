using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using TyingClass.Storage;
using TyingClass.Storage.People;

namespace TyingClass.Web.Identity;

/// <summary>Signs the instructor in: the first time with the one-time code, later with the passphrase chosen then.</summary>
public sealed class InstructorSignIn(IHttpContextAccessor accessor, ClassStore store, IPasswordHasher<Person> hasher)
{
    public const int FewestSigns = 12;

    private const string StampClaim = "stamp";

    private HttpContext Http => accessor.HttpContext ?? throw new InvalidOperationException("Nobody signs in outside a request.");

    public bool NeedsCode => store.Instructors.Find() is null;

    /// <returns>False when the code is wrong or used up.</returns>
    public async Task<bool> ClaimAsync(string code, string? name, string passphrase)
    {
        if (store.Instructors.Claim(code, name, hasher.HashPassword(null!, passphrase)) is not { } instructor) return false;
        await SignInAsync(instructor);
        return true;
    }

    /// <returns>False when the passphrase is wrong or there is no instructor yet.</returns>
    public async Task<bool> EnterAsync(string passphrase)
    {
        if (store.Instructors.Find() is not { PassphraseHash: { } hash } instructor) return false;
        if (hasher.VerifyHashedPassword(instructor, hash, passphrase) == PasswordVerificationResult.Failed) return false;
        await SignInAsync(instructor);
        return true;
    }

    public Task LeaveAsync() => Http.SignOutAsync();

    internal static void Configure(CookieAuthenticationOptions options)
    {
        options.Cookie.Name = "tying-sign-in";
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.LoginPath = options.AccessDeniedPath = "/sign-in";
        options.ReturnUrlParameter = "next";
        options.ExpireTimeSpan = TimeSpan.FromDays(14);
        options.Events.OnValidatePrincipal = RefuseOldStampsAsync;
    }

    private Task SignInAsync(Person person) => Http.SignInAsync(new ClaimsPrincipal(new ClaimsIdentity(
        [
            new Claim(ClaimTypes.NameIdentifier, person.Id),
            new Claim(ClaimTypes.Role, person.Role.ToString()),
            new Claim(StampClaim, person.Stamp),
        ],
        CookieAuthenticationDefaults.AuthenticationScheme)));

    // A new passphrase, or a person removed, ends every sign-in made before.
    private static async Task RefuseOldStampsAsync(CookieValidatePrincipalContext context)
    {
        ClassStore store = context.HttpContext.RequestServices.GetRequiredService<ClassStore>();
        string? id = context.Principal?.FindFirstValue(ClaimTypes.NameIdentifier);
        if (id is not null && store.People.Find(id)?.Stamp == context.Principal?.FindFirstValue(StampClaim)) return;
        context.RejectPrincipal();
        await context.HttpContext.SignOutAsync();
    }
}
