using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Account;

[Authorize(ClassPolicies.Student)]
public sealed class IndexModel(AccountSignIn account, Visitor visitor, ClassAccess access, GuestStores guests, AccountStore accounts) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    [BindProperty(Name = "current")]
    public string? Current { get; set; }

    [BindProperty(Name = "chosen")]
    public string? Chosen { get; set; }

    public Person Me => visitor.Person!;

    public string ClassNames => string.Join(", ", access.ClassesOf(Me).Select(c => c.Name));

    public bool Joined { get; private set; }

    public string? Done { get; private set; }

    public int FewestSigns => Me.Role == Role.Instructor ? AccountSignIn.FewestInstructorSigns : AccountSignIn.FewestSigns;

    /// <summary>Attempts of the guest this browser was before.</summary>
    public int GuestAttempts => Guest is { } guest ? guests.Attempts.StandingsOf(guest.Id).Sum(s => s.Attempts) : 0;

    private Person? Guest => GuestCookie.Read(Request) is { } secret ? guests.People.FindGuest(secret) : null;

    /// <summary>Shown while they are typed.</summary>
    public ShownField Shown => ShownField.Of(Request);

    public void OnGet(bool joined, string? done)
    {
        (Name, Joined) = (Me.Name, joined);
        Done = done switch
        {
            "name" => "Your name is changed.",
            "passphrase" => "Your passphrase is changed.",
            "bring" => "They are in your account now. Was it not your work? Your instructor can undo it for 30 days.",
            _ => null
        };
    }

    public async Task<IActionResult> OnPostAsync([FromForm(Name = "do")] string? what) => what switch
    {
        "rename" => Rename(),
        "passphrase" => await ChangeAsync(),
        "bring" => Bring(),
        "leave" => await LeaveAsync(),
        _ when ShownField.WasAsked(Request) => ShowFields(),
        _ => LocalRedirect("/account"),
    };

    public string? KeptCurrent => ShownField.Again(HttpContext, Current, isChosenNow: false);

    public string? KeptChosen => ShownField.Again(HttpContext, Chosen, isChosenNow: true);

    public IActionResult ShowAgain() => Refuse("name", "The form had gone stale and nothing was changed. Send it again.");

    private IActionResult Rename() => string.IsNullOrWhiteSpace(Name) ? Refuse("name", "Type a name the class will know you by.")
        : accounts.Rename(Me.Id, Name) ? LocalRedirect("/account?done=name")
        : Refuse("name", "Someone already has that name here. Choose another, or add a letter.");

    private async Task<IActionResult> ChangeAsync()
    {
        Name = Me.Name;
        if (await account.MatchesOwnAsync(Me, Current ?? "") is not true and var wrong)
        {
            ModelState.AddModelError("current", wrong is null
                ? "Many tries at your passphrase are waiting already. Wait a moment, then send it again." : "That is not the passphrase you have now.");
        }

        IEnumerable<string?> known = access.ClassesOf(Me).SelectMany(c => (string[])[c.Name, c.Code]).Append(Me.Name);
        if (AccountSignIn.Unfit(Chosen, FewestSigns, known) is { } unfit) ModelState.AddModelError("chosen", unfit);
        if (!ModelState.IsValid) return Refuse();
        await account.ChangePassphraseAsync(Me, Chosen!);
        return LocalRedirect("/account?done=passphrase");
    }

    private LocalRedirectResult Bring()
    {
        if (Guest is { } guest && guests.GuestMoves.MoveInto(guest.Id, Me.Id) is not null) GuestCookie.Forget(HttpContext);
        return LocalRedirect("/account?done=bring");
    }

    private async Task<IActionResult> LeaveAsync()
    {
        await account.LeaveEverywhereAsync(Me);
        return LocalRedirect("/sign-in");
    }

    private PageResult ShowFields()
    {
        Name ??= Me.Name;
        return Page();
    }

    private PageResult Refuse(string field, string text)
    {
        ModelState.AddModelError(field, text);
        return Refuse();
    }

    private PageResult Refuse()
    {
        Name ??= Me.Name;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
