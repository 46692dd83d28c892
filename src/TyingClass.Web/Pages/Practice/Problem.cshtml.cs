using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Practice;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Practice;

public sealed class ProblemModel(PracticeDesk desk) : PageModel, IKeepsTyped
{
    /// <summary>Null for a concept nobody practices.</summary>
    public PracticeView? View { get; private set; }

    /// <summary>What was posted to a problem that is no longer there.</summary>
    public Typed? Typed { get; private set; }

    /// <summary>An address without seed and level is turned into one that can be passed on.</summary>
    public IActionResult OnGet(string concept, int? seed, int? level)
    {
        if (Key(concept, seed, level) is { } key) return Show(desk.Open(key));
        return desk.NextFor(concept) is { } next ? Redirect(next.Address) : Show(null);
    }

    public IActionResult OnPost(string concept, int? seed, int? level)
    {
        AnswerPost post = AnswerPost.Read(Request.Form);
        Typed = post.Typed;
        if (Key(concept, seed, level) is not { } key) return Show(null);
        (DeskResult result, PracticeView? view) = desk.Take(key, post);
        if (result.Kept is not null) return Redirect($"{key.Address}#feedback");
        Response.StatusCode = result.Status;
        return Show(view);
    }

    public IActionResult ShowAgain()
    {
        Typed = AnswerPost.Read(Request.Form).Typed;
        string concept = (string)RouteData.Values["concept"]!;
        bool known = int.TryParse(Request.Query["seed"], out int seed) & int.TryParse(Request.Query["level"], out int level);
        return Show(known && Key(concept, seed, level) is { } key ? desk.ShowAgain(key, Typed) : null);
    }

    private static ProblemKey? Key(string concept, int? seed, int? level) =>
        seed is >= 1 && level is >= 0 and <= 100 ? new ProblemKey(concept, seed.Value, level.Value) : null;

    private PageResult Show(PracticeView? view)
    {
        View = view;
        if (view is null) Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }
}
