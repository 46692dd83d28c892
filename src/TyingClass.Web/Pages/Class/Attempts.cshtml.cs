using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Mentor)]
public sealed class AttemptsModel(AttemptDesk desk) : PageModel, IKeepsTyped
{
    public AttemptDesk Desk => desk;

    public CellView Cell { get; private set; } = null!;

    public TypedJudgment Typed { get; private set; } = new(null, 0, null, null);

    [BindProperty(Name = "comment")]
    public string? Comment { get; set; }

    public string? Done { get; private set; }

    public IActionResult OnGet(string personId, string exerciseId, string? done)
    {
        Done = done switch { "judged" => "Kept. The student sees it on the exercise.", "comment" => "Sent. The student sees it on the next visit.", _ => null };
        return Show(personId, exerciseId);
    }

    public IActionResult OnPost(string personId, string exerciseId, [FromForm(Name = "do")] string? what)
    {
        ReadForm();
        if (desk.Open(personId, exerciseId) is null) return NotFound();
        string? trouble = what == "comment" ? desk.AddComment(personId, exerciseId, Comment) : desk.Judge(Typed);
        if (trouble is null)
            return LocalRedirect(
                $"/class/students/{Uri.EscapeDataString(personId)}/{Uri.EscapeDataString(exerciseId)}?done={(what == "comment" ? "comment" : "judged")}");
        return Refuse(personId, exerciseId, what == "comment" ? "comment" : "reason-" + Typed.AttemptId, trouble);
    }

    public IActionResult ShowAgain()
    {
        ReadForm();
        return Refuse((string)RouteData.Values["personId"]!, (string)RouteData.Values["exerciseId"]!, "comment",
            "The form had gone stale and nothing was sent. What you typed stands below; send it again.");
    }

    private void ReadForm() => Typed = new TypedJudgment(
        Request.Form["attempt"],
        int.TryParse(Request.Form["expected"], System.Globalization.CultureInfo.InvariantCulture, out int expected) ? expected : -1,
        (string?)Request.Form["do"] switch { "accept" => true, "return" => false, _ => null },
        Request.Form["reason"]);

    private IActionResult Refuse(string personId, string exerciseId, string field, string text)
    {
        ModelState.AddModelError(field, text);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show(personId, exerciseId);
    }

    private IActionResult Show(string personId, string exerciseId)
    {
        if (desk.Open(personId, exerciseId) is not { } cell) return NotFound();
        Cell = cell;
        return Page();
    }
}
