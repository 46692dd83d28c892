using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.SignIn;

public sealed class JoinModel(AccountSignIn account, Visitor visitor, AttemptStore store) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "code", SupportsGet = true)]
    public string? Code { get; set; }

    /// <summary>The code as the address brought it: typed by hand it is nobody else's business.</summary>
    public string? CodeInAddress => Request.Query["code"] is [{ Length: > 0 and <= 60 } code] ? code : null;

    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    [BindProperty(Name = "passphrase")]
    public string? Passphrase { get; set; }

    public string? AlreadyIn => visitor.HasAccount ? visitor.Person!.Label : null;

    /// <summary>Of the guest this browser has been so far.</summary>
    public int Attempts => visitor.Person is { } guest ? store.StandingsOf(guest.Id).Sum(s => s.Attempts) : 0;

    /// <summary>Shown while it is typed.</summary>
    public ShownField Shown => ShownField.Of(Request);

    public string? Kept => ShownField.Again(HttpContext, Passphrase, isChosenNow: true);

    public void OnGet() => Name = visitor.Person?.Name;

    public async Task<IActionResult> OnPostAsync()
    {
        if (visitor.HasAccount) return LocalRedirect("/join");
        if (ShownField.WasAsked(Request)) return Page();
        if (await account.WhatKeepsOutAsync(Code ?? "", Name) is { } problems)
            foreach (JoinProblem problem in problems) Explain(problem);
        else
            ModelState.AddModelError("code", AccountSignIn.ManyCodes);
        if (AccountSignIn.Unfit(Passphrase, AccountSignIn.FewestSigns, Name, Code) is { } unfit) ModelState.AddModelError("passphrase", unfit);
        if (ModelState.IsValid)
        {
            JoinProblem late = await account.JoinAsync(Code ?? "", Name, Passphrase!);
            if (late == JoinProblem.None) return LocalRedirect("/account?joined=true");
            Explain(late);
        }

        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("passphrase", "The form had gone stale and nothing was sent in. Type the passphrase once more.");
        return Page();
    }

    private void Explain(JoinProblem problem)
    {
        (string field, string text) = problem switch
        {
            JoinProblem.NoSuchClass when string.IsNullOrWhiteSpace(Code) => ("code", "Type the three words your instructor reads out."),
            JoinProblem.NoSuchClass =>
                ("code", "No class has that code. Check the three words; if they are right, the code was renewed: ask your instructor for the new one."),
            JoinProblem.NameTaken => ("name", "Someone already has that name here. Choose another, or add a letter. If it is you, sign in instead."),
            _ => ("name", "Type a name the class will know you by. Any will do."),
        };
        ModelState.AddModelError(field, text);
    }
}
