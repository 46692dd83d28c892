using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.BenchLog;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.BenchLog;

public sealed class EntryModel(LogPages pages, BenchLogStore store, Visitor visitor) : PageModel, IKeepsTyped
{
    public LogView View { get; private set; } = null!;

    public string? Done { get; private set; }

    public string? Notice { get; private set; }

    public IActionResult OnGet(string id, bool kept, string? photo)
    {
        (Done, Notice) = (kept ? "Kept." : photo == "kept" ? "The photo is kept, without place, time or camera data." : null, PhotoNotice.For(photo));
        return Show(id);
    }

    public IActionResult OnPostMass(string id, int revision) => Taken(id, pages.TakeMass(id, revision));

    public IActionResult OnPostAir(string id, int part, int revision) => Taken(id, pages.TakeAir(id, part, revision));

    public IActionResult OnPostTrash(string id) => store.Trash(id, visitor.Person!.Id) ? LocalRedirect($"/bench-log?trashed={id}") : NotFound();

    public IActionResult ShowAgain()
    {
        Notice = "The form had gone stale and nothing was done. Press the button again.";
        return Show((string)RouteData.Values["id"]!);
    }

    private IActionResult Taken(string id, TakeOverResult? result)
    {
        if (result is null) return NotFound();
        if (result.PatternId is { } patternId)
            return LocalRedirect(
                result.Revision > 1 ? $"/patterns/{patternId}/compare?from={result.Revision - 1}&to={result.Revision}" : $"/patterns/{patternId}?saved=1");
        (Notice, Response.StatusCode) = (result.Said, result.Status);
        return Show(id);
    }

    private IActionResult Show(string id)
    {
        if (pages.Open(id) is not { } view) return NotFound();
        View = view;
        return Page();
    }
}
