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

    /// <summary>Where the word just given can be changed; null where there is none.</summary>
    public string? Again { get; private set; }

    public IActionResult OnGet(string? done, string? last)
    {
        Again = ReadingDesk.AddressOf(last);
        Done = done switch { "accepted" => "Accepted. The student sees it on the exercise.", "returned" => "Returned, with your words.", _ => null };
        return Show(last);
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
        string? last = before.Lines.FirstOrDefault(l => l.Attempt.Id == Form.Judgment.AttemptId)?.Key;
        Form = Form.Rest;
        if (before.IsOne) return RedirectToPage(new { at = before.Next, done, last });
        if (Form.IsBlank) return RedirectToPage(new { exercise = ExerciseId, done, last });
        (Done, Again) = ("Kept. What you typed for the others stands below.", ReadingDesk.AddressOf(last));
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

    private IActionResult Show(string? last = null)
    {
        View = Open();
        // Nothing left to read: the list says so.
        if (!View.Lines.IsEmpty || Trouble is not null) return Page();
        return LocalRedirect("/class/waiting" + (Done is null ? "" : $"?done=true&last={Uri.EscapeDataString(last ?? "")}"));
    }
}
