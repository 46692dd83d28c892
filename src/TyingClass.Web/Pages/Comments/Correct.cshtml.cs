using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Comments;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Comments;

/// <summary>A word to a student, put right by whoever wrote it.</summary>
[Authorize(ClassPolicies.Mentor)]
public sealed class CorrectModel(CommentStore store, ClassAccess access, Visitor visitor) : PageModel, IKeepsTyped
{
    public Comment Comment { get; private set; } = null!;

    public string Typed { get; private set; } = "";

    public string? Notice { get; private set; }

    public string BackTo => $"/class/students/{Uri.EscapeDataString(Comment.PersonId)}"
        + (Comment.ExerciseId is { } exercise ? $"/{Uri.EscapeDataString(exercise)}" : "");

    public IActionResult OnGet(string id)
    {
        if (!Open(id)) return NotFound();
        Typed = Comment.Text;
        return Page();
    }

    public IActionResult OnPost(string id, string? text)
    {
        if (!Open(id)) return NotFound();
        if (store.Correct(id, visitor.Person!.Id, text)) return LocalRedirect(BackTo);
        (Typed, Notice, Response.StatusCode) = (text ?? "", "Nothing was changed: write what it should say.", StatusCodes.Status422UnprocessableEntity);
        return Page();
    }

    public IActionResult ShowAgain()
    {
        if (!Open((string)RouteData.Values["id"]!)) return NotFound();
        (Typed, Notice) = (Request.Form["text"].ToString(), "The form had gone stale and nothing was changed. What you typed stands below: keep it once more.");
        return Page();
    }

    private bool Open(string id)
    {
        if (store.Find(id) is not { } comment || comment.ByPersonId != visitor.Person?.Id || !access.MaySeeWorkOf(visitor.Person, comment.PersonId))
            return false;
        Comment = comment;
        return true;
    }
}
