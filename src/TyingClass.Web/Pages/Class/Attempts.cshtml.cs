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

    /// <summary>As typed, whatever became of it.</summary>
    public JudgeForm Form { get; private set; } = JudgeForm.Blank;

    public string? Done { get; private set; }

    public IActionResult OnGet(string personId, string exerciseId, string? done)
    {
        Done = Words(done);
        return Show(personId, exerciseId);
    }

    public IActionResult OnPost(string personId, string exerciseId)
    {
        Form = JudgeForm.Read(Request.Form);
        if (desk.Open(personId, exerciseId) is null) return NotFound();
        bool comments = Form.Action == "comment";
        if ((comments ? desk.AddComment(personId, exerciseId, Form.Comment) : desk.Judge(Form.Judgment)) is { } trouble)
            return Refuse(personId, exerciseId, comments ? "comment" : JudgeForm.ReasonField(Form.AttemptId), trouble);
        string what = comments ? "comment" : "judged";
        Form = Form.Rest;
        if (Form.IsBlank) return LocalRedirect($"/class/students/{Uri.EscapeDataString(personId)}/{Uri.EscapeDataString(exerciseId)}?done={what}");
        Done = Words(what);
        return Show(personId, exerciseId);
    }

    public IActionResult ShowAgain()
    {
        Form = JudgeForm.Read(Request.Form);
        return Refuse((string)RouteData.Values["personId"]!, (string)RouteData.Values["exerciseId"]!, "comment",
            "The form had gone stale and nothing was sent. What you typed stands below; send it again.");
    }

    private static string? Words(string? done) => done switch
    {
        "judged" => "Kept. The student sees it on the exercise.",
        "comment" => "Sent. The student sees it on the next visit.",
        _ => null,
    };

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
