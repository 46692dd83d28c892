using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class RemoveModel(PeopleDesk desk) : PageModel, IKeepsTyped
{
    public Person Who { get; private set; } = null!;

    public IActionResult OnGet(string personId) => Show(personId);

    public IActionResult OnPost(string personId, bool sure)
    {
        if (sure) return desk.Remove(personId) ? LocalRedirect("/class/people?done=removed") : NotFound();
        return Refuse(personId, "Nothing was removed. Tick the box first: it says that you have what you need.");
    }

    public IActionResult ShowAgain() =>
        Refuse((string)RouteData.Values["personId"]!, "The form had gone stale and nothing was removed. Press the button again.");

    private IActionResult Refuse(string personId, string text)
    {
        ModelState.AddModelError("sure", text);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show(personId);
    }

    private IActionResult Show(string personId)
    {
        if (desk.Find(personId) is not { } person) return NotFound();
        Who = person;
        return Page();
    }
}
