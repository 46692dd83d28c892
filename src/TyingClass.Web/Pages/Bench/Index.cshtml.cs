using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Bench;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Bench;

public sealed class IndexModel(BenchDesk desk, BenchRun run) : PageModel, IKeepsTyped
{
    public BenchView View { get; private set; } = null!;

    public void OnGet(BenchAddress address) => View = desk.Open(address);

    public IActionResult OnPost()
    {
        BenchPost post = BenchPost.Read(Request.Form);
        if (post.Action == BenchRun.Action)
            return run.Of(desk.Take(post)) is { } svg ? Content(svg, "image/svg+xml") : StatusCode(StatusCodes.Status204NoContent);
        View = desk.Take(post);
        if (post.AsksDoubt) return Partial("_RetrieveDoubt", View);
        if (post.IsLive)
        {
            PartialViewResult live = Partial("_Live", View);
            live.ViewData["DoubtLater"] = true;
            return live;
        }

        return BenchDesk.Onward(View) is { } onward ? Redirect(onward) : Page();
    }

    public IActionResult ShowAgain()
    {
        View = desk.Take(BenchPost.Read(Request.Form), BenchDesk.StaleForm);
        return Page();
    }
}
