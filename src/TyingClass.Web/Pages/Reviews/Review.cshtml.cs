using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Bench;
using TyingClass.Web.Reviews;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Reviews;

public sealed class ReviewModel(ReviewDesk desk, ReviewTable table, BenchDesk bench) : PageModel, IKeepsTyped
{
    public ReviewView View { get; private set; } = null!;

    public string? Notice { get; private set; }

    /// <summary>The mentor's own version was held back and may be sent all the same.</summary>
    public bool MayAllTheSame { get; private set; }

    /// <summary>The mentor's own version was sent: where it is held back, its field is open.</summary>
    public bool SendsMine { get; private set; }

    public string? Done { get; private set; }

    /// <summary>As typed, whatever became of it.</summary>
    public ReviewForm Form { get; private set; } = ReviewForm.Blank;

    /// <summary>The mentor's own version as it stands in its field.</summary>
    public string Mine => Form.Mine.Length > 0 ? Form.Mine : View.Revision.RecipeText;

    public IActionResult OnGet(string id, int? against, bool advise) => Show(id, against, advise);

    public IActionResult OnPostComment(string id)
    {
        Form = ReviewForm.Read(Request.Form);
        return After(id, desk.Comment(id, Form), Form with { Text = "" },
            "Your comment is sent. The rest of what you typed stands where you typed it.", "said");
    }

    public IActionResult OnPostCorrect(string id, string? comment)
    {
        Form = ReviewForm.Read(Request.Form);
        return After(id, desk.Correct(id, comment, Form), Form, "The comment is corrected.", "decision");
    }

    public IActionResult OnPostReturn(string id) => Decide(id, desk.Return);

    public IActionResult OnPostMine(string id)
    {
        SendsMine = true;
        return Decide(id, desk.ReturnMine);
    }

    /// <summary>What became of the student's fly on the bench stands in the field of one's own version, not sent yet.</summary>
    public IActionResult OnPostCarry(string id)
    {
        SendsMine = true;
        Form = ReviewForm.Blank with { Mine = bench.Take(BenchPost.Read(Request.Form)).Text };
        Notice = "Your version from the bench stands below, under “Send it back as your version”. Nothing is sent yet.";
        return Show(id, null, advise: false);
    }

    public IActionResult OnPostSignOff(string id) => Decide(id, desk.SignOff);

    public IActionResult OnPostReopen(string id)
    {
        Form = ReviewForm.Read(Request.Form);
        (ReviewAnswer answer, Review? was) = desk.Reopen(id, Form.Version);
        ReviewForm again = was is null ? Form : Form with { Words = was.Words, Mine = was.Proposal ?? Form.Mine, Despite = was.Despite ?? Form.Despite };
        return After(id, answer, again,
            "The decision is taken back, and the student reads its words no longer. What you decided with stands below, to be used again.", "decision");
    }

    public IActionResult ShowAgain()
    {
        if (Request.Query["handler"] == "Carry") return OnPostCarry((string)RouteData.Values["id"]!);
        Form = ReviewForm.Read(Request.Form);
        Notice = "The form had gone stale and nothing was sent. What you typed stands below: send it again.";
        return Show((string)RouteData.Values["id"]!, null, advise: false);
    }

    private IActionResult Decide(string id, Func<string, ReviewForm, ReviewAnswer> decide)
    {
        Form = ReviewForm.Read(Request.Form);
        return After(id, decide(id, Form), ReviewForm.Blank with { Text = Form.Text, About = Form.About },
            "It is decided. A comment you had begun stands where you typed it.", "decision");
    }

    // Led on where nothing is left to lose; else the page is shown with what was typed for its other buttons.
    private IActionResult After(string id, ReviewAnswer answer, ReviewForm rest, string done, string place)
    {
        if (answer.Status == StatusCodes.Status404NotFound) return NotFound();
        if (answer.Trouble is { } trouble)
        {
            (Notice, MayAllTheSame, Response.StatusCode) = (trouble, answer.MayAllTheSame, answer.Status);
            return Show(id, null, advise: false);
        }

        if (table.Find(id) is { } review && rest.IsBlank(table.RecipeOf(review))) return LocalRedirect($"/reviews/{id}#{place}");
        (Form, Done) = (rest, done);
        return Show(id, null, advise: false);
    }

    private IActionResult Show(string id, int? against, bool advise)
    {
        if (table.Open(id, against, advise) is not { } view) return NotFound();
        View = view;
        return Page();
    }
}
