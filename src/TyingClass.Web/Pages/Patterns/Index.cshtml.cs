using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Patterns;

public sealed class IndexModel(PatternStore store, Visitor visitor) : PageModel, IKeepsTyped
{
    public ImmutableArray<Pattern> Patterns { get; private set; } = [];

    public ImmutableArray<Pattern> Trash { get; private set; } = [];

    /// <summary>Just put into the trash: offered back at once.</summary>
    public Pattern? Trashed { get; private set; }

    public bool Stale { get; private set; }

    public void OnGet(string? trashed)
    {
        Patterns = store.Of(visitor.Person!.Id);
        Trash = store.TrashOf(visitor.Person.Id);
        Trashed = Trash.FirstOrDefault(p => p.Id == trashed);
    }

    public IActionResult OnPostRestore(string id) =>
        store.Restore(id, visitor.Person!.Id) ? LocalRedirect(Web.Patterns.PatternDesk.AddressOf(id)) : NotFound();

    public IActionResult ShowAgain()
    {
        OnGet(null);
        Stale = true;
        return Page();
    }
}
