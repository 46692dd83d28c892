using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Pages.SignIn;

/// <summary>Leads on to where someone works: the role is known only once the sign-in cookie came back.</summary>
public sealed class WelcomeModel(Visitor visitor, ClassAccess access) : PageModel
{
    public IActionResult OnGet() => LocalRedirect(access.Right >= ClassRight.Everything ? "/class" : visitor.IsMentor ? "/class/waiting" : "/");
}
