using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Mentor)]
public sealed class StudentModel(StudentDesk desk, AttemptDesk attempts, TimeProvider time) : PageModel, IKeepsTyped
{
    public StudentView View { get; private set; } = null!;

    public DateTimeOffset Now => time.GetUtcNow();

    [BindProperty(Name = "comment")]
    public string? Comment { get; set; }

    public bool Sent { get; private set; }

    public IActionResult OnGet(string personId, bool sent)
    {
        Sent = sent;
        return Show(personId);
    }

    public IActionResult OnPost(string personId)
    {
        if (desk.Open(personId) is null) return NotFound();
        Comment = TickedPhrases.With(Request.Form, "comment");
        if (attempts.AddComment(personId, exerciseId: null, Comment) is not { } trouble)
            return LocalRedirect($"/class/students/{Uri.EscapeDataString(personId)}?sent=true");
        ModelState.AddModelError("comment", trouble);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show(personId);
    }

    public IActionResult ShowAgain()
    {
        Comment = TickedPhrases.With(Request.Form, "comment");
        ModelState.AddModelError("comment", "The form had gone stale and nothing was sent. What you typed stands below; send it again.");
        return Show((string)RouteData.Values["personId"]!);
    }

    private IActionResult Show(string personId)
    {
        if (desk.Open(personId) is not { } view) return NotFound();
        View = view;
        return Page();
    }
}
