using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.RateLimiting;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.SignIn;

[EnableRateLimiting(SignInLimit.Policy)]
public sealed class SignInModel(InstructorSignIn door) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "code", SupportsGet = true)]
    public string? Code { get; set; }

    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    [BindProperty(Name = "passphrase")]
    public string? Passphrase { get; set; }

    [BindProperty(Name = "next", SupportsGet = true)]
    public string? Next { get; set; }

    [BindProperty(Name = "with-code")]
    public bool CodeTyped { get; set; }

    /// <summary>The form that asks for the one-time code.</summary>
    public bool WithCode { get; private set; }

    public void OnGet()
    {
        WithCode = door.NeedsCode || Code is not null;
        Code = null;
    }

    public async Task<IActionResult> OnPostAsync()
    {
        WithCode = CodeTyped || door.NeedsCode;
        if (WithCode && (Passphrase ?? "").Length < InstructorSignIn.FewestSigns)
            ModelState.AddModelError("passphrase", $"The passphrase needs at least {InstructorSignIn.FewestSigns} characters.");
        else if (WithCode && !await door.ClaimAsync(Code ?? "", Name, Passphrase!))
            ModelState.AddModelError("code", "That code is wrong or was used already. Look at the console of the server: the last one printed counts.");
        else if (!WithCode && !await door.EnterAsync(Passphrase ?? ""))
            ModelState.AddModelError("passphrase", "That is not the passphrase.");
        else
            return LocalRedirect(Url.IsLocalUrl(Next) ? Next : "/class");
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    public IActionResult ShowAgain()
    {
        WithCode = CodeTyped || door.NeedsCode;
        ModelState.AddModelError("passphrase", "The form had gone stale and nothing was sent in. Type the passphrase once more.");
        return Page();
    }
}
