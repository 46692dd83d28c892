using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

/// <summary>Reading what waits: one answer after another, or all answers to one question.</summary>
[Authorize(ClassPolicies.Mentor)]
public sealed class ReadModel(ReadingDesk desk, AttemptDesk attempts) : PageModel, IKeepsTyped
{
    /// <summary>The question all of whose answers are asked for; null for one answer after another.</summary>
    [BindProperty(Name = "exercise", SupportsGet = true)]
    public string? ExerciseId { get; set; }

    /// <summary>Which answer, of one after another.</summary>
    [BindProperty(Name = "at", SupportsGet = true)]
    public string? At { get; set; }

    public ReadingView View { get; private set; } = null!;

    public JudgeForm Form { get; private set; } = JudgeForm.Blank;

    public string? Done { get; private set; }

    public string? Trouble { get; private set; }

    public IActionResult OnGet(string? done)
    {
        Done = done switch { "accepted" => "Accepted. The student sees it on the exercise.", "returned" => "Returned, with your words.", _ => null };
        return Show();
    }

    public IActionResult OnPost()
    {
        Form = JudgeForm.Read(Request.Form);
        ReadingView before = Open();
        if (attempts.Judge(Form.Judgment) is { } trouble)
        {
            (Trouble, Response.StatusCode) = (trouble, StatusCodes.Status422UnprocessableEntity);
            return Show();
        }

        string done = Form.Judgment.Accept == true ? "accepted" : "returned";
        Form = Form.Rest;
        if (before.IsOne) return RedirectToPage(new { at = before.Next, done });
        if (Form.IsBlank) return RedirectToPage(new { exercise = ExerciseId, done });
        Done = "Kept. What you typed for the others stands below.";
        return Show();
    }

    public IActionResult ShowAgain()
    {
        Form = JudgeForm.Read(Request.Form);
        Trouble = HttpContext.Items.ContainsKey(ArchivedFilter.Refused) ? null
            : "The form had gone stale and nothing was sent. What you typed stands below; send it again.";
        return Show();
    }

    private ReadingView Open() => ExerciseId is { Length: > 0 } id ? desk.AllTo(id) : desk.One(At);

    private IActionResult Show()
    {
        View = Open();
        // Nothing left to read: the list says so.
        return View.Lines.IsEmpty && Trouble is null ? LocalRedirect("/class/waiting" + (Done is null ? "" : "?done=true")) : Page();
    }
}
