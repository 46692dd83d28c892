using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.SignIn;

public sealed class SignOutModel(InstructorSignIn door) : PageModel, IKeepsTyped
{
    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostAsync()
    {
        await door.LeaveAsync();
        return LocalRedirect("/");
    }

    public IActionResult ShowAgain() => Page();
}
