using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.Patterns;

public sealed class CompareModel(PatternDesk desk, RevisionPairs pairs, PatternStore store) : PageModel
{
    public Pattern Pattern { get; private set; } = null!;

    /// <summary>Null when one of the two makes no fly.</summary>
    public RevisionPair? Pair { get; private set; }

    public string Note { get; private set; } = "";

    public IActionResult OnGet(string id, int from, int to)
    {
        if (desk.Own(id) is not { } pattern || store.Revision(id, from) is not { } before || store.Revision(id, to) is not { } after) return NotFound();
        (Pattern, Pair, Note) = (pattern, pairs.Of(before, after), after.Note);
        return Page();
    }
}
