using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Pages.SignIn;

/// <summary>Leads on to where someone works: the role is known only once the sign-in cookie came back.</summary>
public sealed class WelcomeModel(Visitor visitor, ClassAccess access, StartDesk start) : PageModel
{
    /// <param name="claimed">With a one-time code: a class nobody is in yet is set up step by step.</param>
    public IActionResult OnGet(bool claimed) => LocalRedirect(
        claimed && start.Open() is { IsGoing: true, People: 0 } ? "/class/start"
        : access.Right >= ClassRight.Everything ? "/class"
        : visitor.IsMentor ? "/class/waiting" : "/");
}
