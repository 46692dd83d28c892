using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Calendar;
using TyingClass.Web.Editing;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Exercises;

public sealed class ExerciseModel(ExerciseDesk desk, ClassCalendar calendar) : PageModel, IKeepsTyped
{
    /// <summary>Null for an exercise nobody knows.</summary>
    public ExerciseView? View { get; private set; }

    public string Id { get; private set; } = "";

    /// <summary>What was posted to an exercise nobody knows.</summary>
    public Typed? Typed { get; private set; }

    /// <summary>True before it opens for the student's class.</summary>
    public bool IsClosed => View is { } view && calendar.OpensLater(view.Lesson, view.Exercise) is not null;

    /// <summary>What the student's class dates say of it; null when they say nothing.</summary>
    public DateNote? Dates => View is { } view ? calendar.NoteOn(view.Lesson, view.Exercise, view.Attempts) : null;

    public IActionResult OnGet(string id, int? attempt) => Show(id, desk.Open(id, attempt));

    public IActionResult OnPost(string id)
    {
        AnswerPost post = AnswerPost.Read(Request.Form);
        DeskResult result = desk.Take(id, post);
        if (result.Kept is { } kept)
            return post.FromLesson ? Redirect(desk.LessonAddress(id)) : Redirect($"/exercises/{Uri.EscapeDataString(id)}?attempt={kept.Number}#feedback");
        Typed = post.Typed;
        Response.StatusCode = result.Status;
        return Show(id, result.View);
    }

    public IActionResult ShowAgain()
    {
        string id = (string)RouteData.Values["id"]!;
        Typed = AnswerPost.Read(Request.Form).Typed;
        return Show(id, desk.ShowAgain(id, Typed, AnswerDesk.StaleForm));
    }

    private PageResult Show(string id, ExerciseView? view)
    {
        (Id, View) = (id, view);
        if (view is null) Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }
}
