using System.Collections.Immutable;
using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;
using TyingClass.Storage.Instructors;
using TyingClass.Storage.People;
using TyingClass.Storage.Starts;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Identity;

public enum EnterOutcome
{
    Entered,

    /// <summary>Entered with a passphrase someone else made up.</summary>
    MustChoose,
    Refused,
    TooManyTries,
}

/// <summary>What slows down guessing: at passphrases and codes, but not in a browser that has opened the account before.</summary>
public sealed record SignInGuards(Doors Doors, KnownDevices Devices);

/// <summary>What signing in reads and changes.</summary>
public sealed record SignInStores(
    InstructorStore Instructors, AccountStore Accounts, ClassRoomStore Classes, ClassStartStore Starts, PersonStore People, LeftVisits LeftVisits);

/// <summary>Lets people in: with name and passphrase, with a class code, or with an instructor's one-time code.</summary>
public sealed class AccountSignIn(IHttpContextAccessor accessor, SignInStores store, IPasswordHasher<Person> hasher, SignInGuards guards)
{
    /// <summary>Of a student's passphrase.</summary>
    public const int FewestSigns = 8;

    /// <summary>Of a passphrase that opens a whole class.</summary>
    public const int FewestInstructorSigns = 12;

    /// <summary>Of any passphrase: far more than anybody types, and no work for the hash.</summary>
    public const int MostSigns = 128;

    /// <summary>
    /// How often a passphrase is hashed over before it is kept. OWASP ASVS 4.0.3, 2.4.3, asks for 100 000; drafts of the next edition for this many of SHA-512.
    /// </summary>
    public const int Rounds = 120_000;

    /// <summary>Said instead of looking at a code; it tells nobody whether it was right.</summary>
    public const string ManyCodes =
        "Many wrong codes are being tried from this network just now. Wait a moment and send it again: all you typed still stands here.";

    private static readonly TimeSpan SignedInFor = TimeSpan.FromDays(14);

    private const string StampClaim = "stamp";
    private const string VisitClaim = "visit";

    private static string? _nobodysHash;

    private HttpContext Http => accessor.HttpContext ?? throw new InvalidOperationException("Nobody signs in outside a request.");

    /// <summary>No instructor yet: the code from the console makes one.</summary>
    public bool NeedsCode => store.Instructors.Find() is null;

    public string Hash(string passphrase) => hasher.HashPassword(null!, WordPassphrase.Kept(passphrase));

    public async Task<EnterOutcome> EnterAsync(string name, string passphrase)
    {
        Person? person = store.Accounts.FindByName(name);
        if (await guards.Doors.TryNameAsync(AccountStore.NameKey(name), person?.Id) is not { } tried) return EnterOutcome.TooManyTries;
        if (Matching(person, passphrase) is not { } matching) return EnterOutcome.Refused;
        tried.WasRight();
        if (matching.IsWeak) Strengthen(person!, matching.Typed);
        await KeepSignedInAsync(person!);
        return person!.MustChoosePassphrase ? EnterOutcome.MustChoose : EnterOutcome.Entered;
    }

    /// <summary>As it was typed when it was chosen, or, when it is made of words, however it is spaced, hyphened or cased.</summary>
    public bool Matches(Person? person, string passphrase) => Matching(person, passphrase) is not null;

    // What of it was hashed, and whether with fewer rounds than now.
    private (string Typed, bool IsWeak)? Matching(Person? person, string passphrase) => WordPassphrase.Tries(passphrase)
        .Select(t => (Typed: t, Result: hasher.VerifyHashedPassword(person!, person?.PassphraseHash ?? NobodysHash(hasher), t)))
        .Where(t => t.Result != PasswordVerificationResult.Failed && person?.PassphraseHash is not null)
        .Select(t => ((string, bool)?)(t.Typed, t.Result == PasswordVerificationResult.SuccessRehashNeeded)).FirstOrDefault();

    // The only moment at which the passphrase is known.
    private void Strengthen(Person person, string typed)
    {
        try
        {
            store.Accounts.KeepHashAnew(person.Id, person.PassphraseHash!, hasher.HashPassword(person, typed));
        }
        catch (StorageException)
        {
            // The old one opens too; the next sign-in tries again.
        }
    }

    /// <returns>False when the code is wrong, used up or too old.</returns>
    public async Task<bool> ClaimAsync(string code, string? name, string? className, string passphrase)
    {
        if (store.Instructors.Claim(code, name, Hash(passphrase), className) is not { } instructor) return false;
        // A class nobody is in yet is set up step by step; one that has people is only opened again.
        if (store.Classes.OfInstructor(instructor.Id) is [{ } room] && store.Accounts.OfClass(room.Id).IsEmpty)
            store.Starts.MarkDone(room.Id, StartSteps.Begun);
        await KeepSignedInAsync(instructor);
        return true;
    }

    /// <summary>The code would open an instructor's account now. Null when too many codes are being tried from here.</summary>
    public async Task<bool?> CodeOpensAsync(string code)
    {
        if (await guards.Doors.TryCodeAsync() is not { } tried) return null;
        if (!store.Instructors.Opens(code)) return false;
        tried.WasRight();
        return true;
    }

    /// <summary>What keeps someone from joining, in the order of the form; nothing is written. Null when too many codes are being tried from here.</summary>
    public async Task<ImmutableArray<JoinProblem>?> WhatKeepsOutAsync(string code, string? name)
    {
        if (await guards.Doors.TryCodeAsync() is not { } tried) return null;
        ImmutableArray<JoinProblem> problems = store.Accounts.WhatKeepsOut(code, name);
        if (!problems.Contains(JoinProblem.NoSuchClass)) tried.WasRight();
        return problems;
    }

    /// <summary>As <see cref="Matches"/>, for somebody who is signed in and changes the passphrase. Null when too many are being tried.</summary>
    public async Task<bool?> MatchesOwnAsync(Person person, string passphrase)
    {
        if (await guards.Doors.TryOwnAsync(person.Id) is not { } tried) return null;
        if (!Matches(person, passphrase)) return false;
        tried.WasRight();
        return true;
    }

    /// <summary>What is wrong with a passphrase someone chooses; null when it will do.</summary>
    /// <param name="known">Names and codes that others in the class know.</param>
    public static string? Unfit(string? passphrase, int fewest, params IEnumerable<string?> known) => (passphrase ?? "").Length switch
    {
        0 => $"Choose a passphrase of at least {fewest} characters.",
        var length when length < fewest =>
            $"The passphrase needs at least {fewest} characters; this one has {length}. Add to it: it still stands in its field.",
        > MostSigns and var length =>
            $"The passphrase may have {MostSigns} characters; this one has {length}. Take some away: it still stands in its field.",
        _ when GuessedFirst.IsMadeOf(passphrase!, known) =>
            "The others in the class would soon come to this passphrase: its words are those of your name, of the class or of its code. "
            + "Take two or three others.",
        _ when GuessedFirst.Contains(passphrase!) =>
            "Whoever guesses would soon come to this passphrase: it is a single word or a common one, or nearly. "
            + "Take two or three words more, in any order you can remember.",
        _ => null,
    };

    /// <summary>What this browser's guest record holds becomes the student's.</summary>
    public async Task<JoinProblem> JoinAsync(string code, string? name, string passphrase)
    {
        string? guestId = GuestCookie.Read(Http.Request) is { } secret ? store.People.FindGuest(secret)?.Id : null;
        JoinOutcome outcome = store.Accounts.Join(code, name, Hash(passphrase), guestId);
        if (outcome.Person is not { } student) return outcome.Problem;
        GuestCookie.Forget(Http);
        await KeepSignedInAsync(student);
        return JoinProblem.None;
    }

    public async Task ChangePassphraseAsync(Person person, string passphrase)
    {
        if (store.Accounts.SetPassphrase(person.Id, Hash(passphrase), mustChoose: false) is { } changed) await KeepSignedInAsync(changed);
    }

    public async Task LeaveEverywhereAsync(Person person)
    {
        store.Accounts.SignOutEverywhere(person.Id);
        await LeaveAsync();
    }

    /// <summary>Ends this visit, here and for every copy of its cookie.</summary>
    public Task LeaveAsync()
    {
        try
        {
            if (Http.User.FindFirstValue(VisitClaim) is { } visit) store.LeftVisits.Leave(visit, SignedInFor);
        }
        catch (StorageException)
        {
            // A full disk must not keep anyone signed in on a shared machine: this browser at least forgets.
        }

        return Http.SignOutAsync();
    }

    internal static void Configure(CookieAuthenticationOptions options)
    {
        options.Cookie.Name = "tying-sign-in";
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Lax;
        // A phone at the vise is closed between evenings. An age, not a date: a club room's clocks need not agree.
        options.Cookie.MaxAge = SignedInFor;
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.LoginPath = "/sign-in";
        options.ReturnUrlParameter = "next";
        options.ExpireTimeSpan = SignedInFor;
        options.Events.OnValidatePrincipal = RefuseOldStampsAsync;
        // Someone signed in who may not see the page is told so; signing in again would not help.
        options.Events.OnRedirectToAccessDenied = async context =>
        {
            await TypedFields.KeepAsync(context.HttpContext);
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
        };
        // A door would swallow what was typed: a page hands it back first.
        options.Events.OnRedirectToLogin = async context =>
        {
            if (await TypedFields.KeepAsync(context.HttpContext)) context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            else context.Response.Redirect(context.RedirectUri);
        };
    }

    // Checked when nobody has the name, so that the answer takes as long.
    private static string NobodysHash(IPasswordHasher<Person> hasher) =>
        LazyInitializer.EnsureInitialized(ref _nobodysHash, () => hasher.HashPassword(null!, Guid.NewGuid().ToString()));

    private Task KeepSignedInAsync(Person person)
    {
        guards.Devices.Remember(Http, person.Id);
        return Http.SignInAsync(
            new ClaimsPrincipal(new ClaimsIdentity(
                [
                    new Claim(ClaimTypes.NameIdentifier, person.Id),
                    new Claim(ClaimTypes.Role, person.Role.ToString()),
                    new Claim(StampClaim, person.Stamp),
                    new Claim(VisitClaim, LeftVisits.NewVisit()),
                ],
                CookieAuthenticationDefaults.AuthenticationScheme)));
    }

    // A new passphrase, another role, or a person removed, ends every sign-in made before; signing out ends its own, copies and all.
    private static async Task RefuseOldStampsAsync(CookieValidatePrincipalContext context)
    {
        PersonStore people = context.HttpContext.RequestServices.GetRequiredService<PersonStore>();
        string? id = context.Principal?.FindFirstValue(ClaimTypes.NameIdentifier);
        bool known = id is not null && people.Find(id) is { RemovedAt: null } person && person.Stamp == context.Principal?.FindFirstValue(StampClaim);
        // A sign-in from before visits had names has none.
        string? visit = context.Principal?.FindFirstValue(VisitClaim);
        if (known && (visit is null || !context.HttpContext.RequestServices.GetRequiredService<LeftVisits>().HasLeft(visit))) return;
        context.RejectPrincipal();
        await context.HttpContext.SignOutAsync();
    }
}
