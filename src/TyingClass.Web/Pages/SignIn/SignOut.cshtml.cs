using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.SignIn;

public sealed class SignOutModel(AccountSignIn account) : PageModel, IKeepsTyped
{
    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        await account.LeaveAsync();
        return LocalRedirect("/");
    }

    public IActionResult ShowAgain() => Page();
}
