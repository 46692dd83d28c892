using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Phrases;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Phrases;

/// <summary>What one often writes to students, one phrase a line.</summary>
[Authorize(ClassPolicies.Mentor)]
public sealed class IndexModel(PhraseStore store, Visitor visitor) : PageModel, IKeepsTyped
{
    public string Typed { get; private set; } = "";

    public bool Kept { get; private set; }

    public string? Notice { get; private set; }

    public void OnGet(bool kept) => (Typed, Kept) = (string.Join('\n', store.Of(visitor.Person!.Id)), kept);

    public IActionResult OnPost(string? phrases)
    {
        ImmutableArray<string> lines = [.. (phrases ?? "").ReplaceLineEndings("\n").Split('\n').Where(l => !string.IsNullOrWhiteSpace(l))];
        if (lines.Length > PhraseStore.MostPhrases || lines.Any(l => l.Trim().Length > PhraseStore.MostLength))
        {
            Typed = phrases!;
            Notice = $"At most {PhraseStore.MostPhrases} phrases of {PhraseStore.MostLength} characters each. Nothing was kept yet: "
                + "shorten the list and keep it again.";
            Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
            return Page();
        }

        store.Keep(visitor.Person!.Id, lines);
        return RedirectToPage(new { kept = true });
    }

    public IActionResult ShowAgain()
    {
        (Typed, Notice) = (Request.Form["phrases"].ToString(), "The form had gone stale and nothing was kept. What you typed stands below: keep it once more.");
        return Page();
    }
}
