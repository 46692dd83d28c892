using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Exchange;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Files;

public sealed class IndexModel(FilesDesk desk) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "file")]
    public IFormFile? Upload { get; set; }

    public FilesDesk Desk => desk;

    public ImmutableArray<string> Problems { get; private set; } = [];

    public void OnGet()
    {
    }

    public async Task<IActionResult> OnPostImportAsync()
    {
        if (Upload is not { Length: > 0 } file) return After(new FilesOutcome(null, ["Choose the file of a class first: it ends in .json."]));
        await using Stream json = file.OpenReadStream();
        return After(await desk.ImportAsync(json, HttpContext.RequestAborted));
    }

    public IActionResult OnGetRegister() => desk.RegisterFile() is { } file ? File(file.Bytes, "text/csv; charset=utf-8", file.Name) : NotFound();

    public async Task<IActionResult> OnGetClassAsync() =>
        await desk.ClassFileAsync(HttpContext.RequestAborted) is { } file ? File(file.File, "application/json", file.Name) : NotFound();

    public IActionResult OnPostBackup()
    {
        if (!desk.MayBackUp) return Forbid();
        (string name, FileStream file, _) = desk.Backup();
        return File(file, "application/zip", name);
    }

    public IActionResult ShowAgain() => After(new FilesOutcome(null, ["The form had gone stale and nothing was done. Choose the file and send it once more."]));

    private IActionResult After(FilesOutcome outcome)
    {
        if (outcome.Ticket is { } ticket) return RedirectToPage("/Files/Slips", new { ticket });
        Problems = outcome.Problems;
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
