using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Reviews;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Reviews;

public sealed class ReviewModel(ReviewDesk desk) : PageModel, IKeepsTyped
{
    public ReviewView View { get; private set; } = null!;

    public string? Notice { get; private set; }

    /// <summary>A comment typed and not taken.</summary>
    public string Text { get; private set; } = "";

    public string About { get; private set; } = "whole";

    /// <summary>Words for a decision typed and not taken.</summary>
    public string Words { get; private set; } = "";

    public IActionResult OnGet(string id, int? against) => Show(id, against);

    public IActionResult OnPostComment(string id, string? about, string? text)
    {
        if (desk.Comment(id, about, text)) return LocalRedirect($"/reviews/{id}#said");
        (Text, About, Notice) = (text ?? "", about ?? "whole", "Write something first, then send it.");
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show(id, null);
    }

    public IActionResult OnPostReturn(string id, int version, string? words) => Decide(id, desk.Decide(id, version, signOff: false, words), words);

    public IActionResult OnPostSignOff(string id, int version, string? words) => Decide(id, desk.Decide(id, version, signOff: true, words), words);

    public IActionResult OnPostReopen(string id, int version) => Decide(id, desk.Reopen(id, version), null);

    public IActionResult ShowAgain()
    {
        IFormCollection form = Request.Form;
        (Text, About, Words) = (form["text"].ToString(), form["about"].ToString(), form["words"].ToString());
        Notice = "The form had gone stale and nothing was sent. What you typed stands below: send it again.";
        return Show((string)RouteData.Values["id"]!, null);
    }

    private IActionResult Decide(string id, EditOutcome<Review>? outcome, string? words)
    {
        if (outcome is null) return NotFound();
        if (outcome.Saved) return LocalRedirect($"/reviews/{id}#decision");
        Words = words ?? "";
        Response.StatusCode = StatusCodes.Status409Conflict;
        Notice = outcome.Current.State == ReviewState.Waiting
            ? "The student moved this on to another revision while you were reading. Nothing was decided: look at it as it is now. What you wrote stands below."
            : $"This was {ReviewThreads.StateWord(outcome.Current.State)} by someone else while you were reading, or has moved on since. Nothing was "
            + "changed. What you wrote stands below: you can still send it as a comment.";
        return Show(id, null);
    }

    private IActionResult Show(string id, int? against)
    {
        if (desk.Open(id, against) is not { } view) return NotFound();
        View = view;
        return Page();
    }
}
