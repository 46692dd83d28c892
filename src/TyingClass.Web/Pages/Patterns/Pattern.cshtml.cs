using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Patterns;

public sealed class PatternModel(PatternPages pages, PatternDesk desk) : PageModel, IKeepsTyped
{
    public PatternView View { get; private set; } = null!;

    public string? Done { get; private set; }

    /// <summary>The revision that stood before a mentor's version was taken over, to go back to.</summary>
    public int? Before { get; private set; }

    /// <summary>Typed, not sent: the form had gone stale.</summary>
    public string Question { get; private set; } = "";

    public IActionResult OnGet(string id, int? from, int? saved, int? taken, bool asked, bool withdrawn)
    {
        if (pages.Open(id, from) is not { } view) return NotFound();
        (View, Done) = (view, saved is not null || taken is not null ? $"Revision {view.Pattern.Revision} is saved." : asked ? "Your mentors can see it now."
            : withdrawn ? "Taken back: it waits no longer." : null);
        Before = taken is { } mine && mine > 0 && mine < view.Pattern.Revision ? mine : null;
        return Page();
    }

    public IActionResult OnPost(string id, int expected, string? note)
    {
        if (desk.Own(id) is not { } pattern) return NotFound();
        PatternResult result = desk.Take(pattern, AnswerPost.Read(Request.Form), expected, note ?? "");
        if (result.Kept is { } kept) return LocalRedirect($"{PatternDesk.AddressOf(id)}?saved=1");
        if (result.Editor is null || desk.Own(id) is not { } now) return NotFound();
        (View, Response.StatusCode) = (pages.View(now, result.Editor), result.Status);
        return Page();
    }

    public IActionResult OnPostAsk(string id, string? question) =>
        pages.Ask(id, question) ? LocalRedirect($"{PatternDesk.AddressOf(id)}?asked=true#reviews") : NotFound();

    public IActionResult OnPostWithdraw(string id) => pages.Withdraw(id) ? LocalRedirect($"{PatternDesk.AddressOf(id)}?withdrawn=true#reviews") : NotFound();

    public IActionResult OnPostTrash(string id) => pages.Trash(id) ? LocalRedirect($"/patterns?trashed={id}") : NotFound();

    public IActionResult ShowAgain()
    {
        string id = (string)RouteData.Values["id"]!;
        if (desk.Own(id) is not { } pattern) return NotFound();
        bool isEditor = Request.Form.ContainsKey("mode");
        _ = int.TryParse(Request.Form["expected"], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int expected);
        PatternEditor editor = isEditor
            ? desk.ShowAgain(PatternDesk.AddressOf(id), expected, AnswerPost.Read(Request.Form), Request.Form["note"].ToString(), PatternWords.StaleForm)
            : desk.Open(pattern, null) with { Notice = "The form had gone stale and nothing was done. Press the button again." };
        (View, Question) = (pages.View(pattern, editor), Request.Form["question"].ToString());
        return Page();
    }
}
