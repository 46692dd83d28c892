using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.BenchLog;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.BenchLog;

public sealed class IndexModel(BenchLogStore store, Visitor visitor, ClassAccess access) : PageModel, IKeepsTyped
{
    public ImmutableArray<LogEntry> Entries { get; private set; } = [];

    public ImmutableArray<LogEntry> Trash { get; private set; } = [];

    public LogEntry? Trashed { get; private set; }

    public bool Stale { get; private set; }

    public bool RunsAClass => visitor.IsMentor || access.Right >= ClassRight.Everything;

    public void OnGet(string? trashed)
    {
        Entries = store.Of(visitor.Person!.Id);
        Trash = store.TrashOf(visitor.Person.Id);
        Trashed = Trash.FirstOrDefault(e => e.Id == trashed);
    }

    public IActionResult OnPostRestore(string id) => store.Restore(id, visitor.Person!.Id) ? LocalRedirect($"/bench-log/{id}") : NotFound();

    public IActionResult ShowAgain()
    {
        OnGet(null);
        Stale = true;
        return Page();
    }
}
