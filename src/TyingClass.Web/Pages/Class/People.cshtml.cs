using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class PeopleModel(PeopleDesk desk, TimeProvider time) : PageModel, IKeepsTyped
{
    public PeopleView? View => desk.Open();

    public DateTimeOffset Now => time.GetUtcNow();

    public string? Done { get; private set; }

    public void OnGet(string? done) => Done = done switch
    {
        "removed" => "Removed. Whoever it was stands under “In the trash” below and can be brought back for 30 days.",
        "restored" => "Brought back, with all work.",
        _ => null,
    };

    public IActionResult OnPost(string? id) => id is not null && desk.Restore(id) ? LocalRedirect("/class/people?done=restored") : NotFound();

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("people-title", "The form had gone stale and nothing was done. Press the button again.");
        return Page();
    }
}
