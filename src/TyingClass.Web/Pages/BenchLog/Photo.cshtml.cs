using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Photos;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.BenchLog;

/// <summary>The photo itself, and its coming and going. Shown to those who may see the entry, and to nobody else.</summary>
public sealed class PhotoModel(LogPages pages) : PageModel, IKeepsTyped
{
    public string EntryId { get; private set; } = "";

    public string Error { get; private set; } = "";

    public IActionResult OnGet(string id)
    {
        if (pages.Photo(id) is not { } jpeg) return NotFound();
        // Kept by the browser, but asked for again each time: whoever signed out must not see it.
        Response.Headers.CacheControl = "private, no-cache";
        return File(jpeg, "image/jpeg");
    }

    public async Task<IActionResult> OnPostAsync(string id, IFormFile? photo)
    {
        if (pages.Find(id) is null) return NotFound();
        if (photo?.Length > PhotoReader.MostBytes) return LocalRedirect($"/bench-log/{id}?photo={PhotoNotice.TooBig}#photo-title");
        using MemoryStream sent = new();
        if (photo is not null) await photo.CopyToAsync(sent, HttpContext.RequestAborted);
        if (pages.SetPhoto(id, sent.ToArray(), out string error)) return LocalRedirect($"/bench-log/{id}?photo=kept#photo-title");
        if (error.Length == 0) return NotFound();
        (EntryId, Error, Response.StatusCode) = (id, error, StatusCodes.Status422UnprocessableEntity);
        return Page();
    }

    public IActionResult OnPostRemove(string id) => pages.SetPhoto(id, null, out _) ? LocalRedirect($"/bench-log/{id}#photo-title") : NotFound();

    public IActionResult ShowAgain() => LocalRedirect($"/bench-log/{RouteData.Values["id"]}?photo={PhotoNotice.Stale}#photo-title");
}
