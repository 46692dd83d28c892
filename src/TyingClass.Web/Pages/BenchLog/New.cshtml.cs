using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.BenchLog;

public sealed class NewModel(LogDesk desk) : PageModel, IKeepsTyped
{
    public LogForm Form { get; private set; } = null!;

    public void OnGet(string? pattern, string? exercise, string? recipe) => Form = desk.Blank(pattern, exercise, recipe);

    public IActionResult OnPost()
    {
        LogResult result = desk.Add(LogPost.Read(Request.Form));
        if (result.Kept is { } kept) return LocalRedirect($"/bench-log/{kept.Id}?kept=true");
        (Form, Response.StatusCode) = (result.Form!, result.Status);
        return Page();
    }

    public IActionResult ShowAgain()
    {
        Form = desk.ShowAgain(null, 0, LogPost.Read(Request.Form))!;
        return Page();
    }
}
