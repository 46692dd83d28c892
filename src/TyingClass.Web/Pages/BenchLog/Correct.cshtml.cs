using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.BenchLog;

public sealed class CorrectModel(LogDesk desk) : PageModel, IKeepsTyped
{
    public LogForm Form { get; private set; } = null!;

    public IActionResult OnGet(string id) => Show(desk.Open(id));

    public IActionResult OnPost(string id, int expected)
    {
        LogResult result = desk.Correct(id, expected, LogPost.Read(Request.Form));
        if (result.Kept is { } kept) return LocalRedirect($"/bench-log/{kept.Id}?kept=true");
        Response.StatusCode = result.Status;
        return Show(result.Form);
    }

    public IActionResult ShowAgain()
    {
        _ = int.TryParse(Request.Form["expected"], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int expected);
        return Show(desk.ShowAgain((string)RouteData.Values["id"]!, expected, LogPost.Read(Request.Form)));
    }

    private IActionResult Show(LogForm? form)
    {
        if (form is null) return NotFound();
        Form = form;
        return Page();
    }
}
