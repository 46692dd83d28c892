using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Exercises;

public sealed class ExerciseModel(ExerciseDesk desk) : PageModel, IKeepsTyped
{
    /// <summary>Null for an exercise nobody knows.</summary>
    public ExerciseView? View { get; private set; }

    public string Id { get; private set; } = "";

    /// <summary>What was posted to an exercise nobody knows.</summary>
    public Typed? Typed { get; private set; }

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
