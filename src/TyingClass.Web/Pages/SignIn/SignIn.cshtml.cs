using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.SignIn;

public sealed class SignInModel(AccountSignIn account) : PageModel, IKeepsTyped
{
    private const string WrongCode =
        "That code is wrong or was used already. The last one the server printed counts; one from another instructor is good for two weeks.";

    [BindProperty(Name = "code", SupportsGet = true)]
    public string? Code { get; set; }

    /// <summary>A slip's code for the phone brings it along; the passphrase never stands in an address.</summary>
    [BindProperty(Name = "name", SupportsGet = true)]
    public string? Name { get; set; }

    [BindProperty(Name = "class-name")]
    public string? ClassName { get; set; }

    [BindProperty(Name = "passphrase")]
    public string? Passphrase { get; set; }

    [BindProperty(Name = "next", SupportsGet = true)]
    public string? Next { get; set; }

    [BindProperty(Name = "with-code")]
    public bool CodeTyped { get; set; }

    /// <summary>The form that asks for the one-time code.</summary>
    public bool WithCode { get; private set; }

    /// <summary>Shown while it is typed.</summary>
    public ShownField Shown => ShownField.Of(Request);

    public string? Kept => ShownField.Again(HttpContext, Passphrase, isChosenNow: WithCode);

    /// <summary>Led here from a page that only an account has; null when they came by themselves.</summary>
    public string? Wanted => Room switch
    {
        "patterns" => "Patterns of your own are kept with an account.",
        "pattern-book" => "The pattern book belongs to a class.",
        "bench-log" => "The bench log is kept with an account.",
        null or "" => null,
        _ => "That page belongs to an account.",
    };

    /// <summary>A tub test can be made and written down on paper without an account.</summary>
    public bool WantsToLog => Room == "bench-log";

    public bool WantsToTie => Room == "patterns";

    private string? Room => Next?.Split('?')[0].Trim('/').Split('/')[0];

    /// <summary>Nobody has opened a class here yet, so nobody has an account.</summary>
    public bool NobodyYet => account.NeedsCode;

    public void OnGet()
    {
        WithCode = Code is not null;
        Code = null;
    }

    public async Task<IActionResult> OnPostAsync()
    {
        WithCode = CodeTyped;
        if (ShownField.WasAsked(Request)) return Page();
        string? target = WithCode ? await ClaimAsync() : await EnterAsync();
        if (target is not null) return LocalRedirect(Url.IsLocalUrl(Next) ? Next : target);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    public IActionResult ShowAgain()
    {
        WithCode = CodeTyped;
        ModelState.AddModelError("passphrase", "The form had gone stale and nothing was sent in. Type the passphrase once more.");
        return Page();
    }

    private async Task<string?> ClaimAsync()
    {
        if (string.IsNullOrWhiteSpace(Code)) ModelState.AddModelError("code", "Type the one-time code: three groups of four letters and digits.");
        else if (await account.CodeOpensAsync(Code) is not true and var wrong)
            ModelState.AddModelError("code", wrong is null ? AccountSignIn.ManyCodes : WrongCode);
        if (AccountSignIn.Unfit(Passphrase, AccountSignIn.FewestInstructorSigns, Name, ClassName) is { } unfit) ModelState.AddModelError("passphrase", unfit);
        if (!ModelState.IsValid) return null;
        if (await account.ClaimAsync(Code!, Name, ClassName, Passphrase!)) return "/welcome?claimed=true";
        // Somebody else used it up meanwhile.
        ModelState.AddModelError("code", WrongCode);
        return null;
    }

    private async Task<string?> EnterAsync()
    {
        if (string.IsNullOrWhiteSpace(Name)) ModelState.AddModelError("name", "Type the name the class knows you by.");
        if (string.IsNullOrEmpty(Passphrase)) ModelState.AddModelError("passphrase", "Type your passphrase.");
        if (!ModelState.IsValid) return null;
        switch (await account.EnterAsync(Name!, Passphrase!))
        {
            case EnterOutcome.Entered:
                return "/welcome";
            case EnterOutcome.MustChoose:
                Next = null;
                return "/account?choose=true#current";
            case EnterOutcome.TooManyTries:
                ModelState.AddModelError("name", "Many tries with this name are waiting already. Wait a moment, then send it again.");
                return null;
            default:
                ModelState.AddModelError("passphrase",
                    "Name and passphrase do not belong together. Check both. "
                    + "In a passphrase made of words, capitals, spaces and hyphens make no difference; in any other, every sign counts.");
                return null;
        }
    }
}
