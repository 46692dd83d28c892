using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;
using TyingClass.Web.Patterns;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Patterns;

/// <summary>Open to all, so that a fly brought here by someone without an account is not lost; only an account can keep it.</summary>
public sealed class NewModel(PatternDesk desk, PatternSources sources, Visitor visitor) : PageModel, IKeepsTyped
{
    public PatternEditor Editor { get; private set; } = null!;

    public bool MayKeep => visitor.PersonIfReadable is { Role: not Storage.People.Role.Guest };

    /// <param name="recipe">A recipe's text, from the bench or anywhere else.</param>
    /// <param name="exercise">Instead: the visitor's latest attempt at an exercise, or one of them.</param>
    public void OnGet(string? recipe, string? exercise, int? attempt, string? log) =>
        Editor = desk.Blank(recipe ?? sources.Attempt(exercise, attempt) ?? sources.Logged(log));

    public IActionResult OnPost(int expected, string? note)
    {
        AnswerPost post = AnswerPost.Read(Request.Form);
        if (!MayKeep && post.Action == "save")
        {
            Editor = desk.ShowAgain(PatternDesk.NewAddress, 0, post, note ?? "", "Nothing was saved: sign in first. What you typed stands below.");
            return Page();
        }

        PatternResult result = desk.Take(null, post, expected, note ?? "");
        if (result.Kept is { } kept) return LocalRedirect(PatternDesk.AddressOf(kept.Id) + "?saved=1");
        (Editor, Response.StatusCode) = (result.Editor!, result.Status);
        return Page();
    }

    public IActionResult ShowAgain()
    {
        Editor = desk.ShowAgain(PatternDesk.NewAddress, 0, AnswerPost.Read(Request.Form), Request.Form["note"].ToString(), PatternWords.StaleForm);
        return Page();
    }
}
