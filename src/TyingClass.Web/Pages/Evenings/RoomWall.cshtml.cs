using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;

namespace TyingClass.Web.Pages.Evenings;

public sealed class RoomWallModel(RoomDesk desk) : PageModel
{
    public RoomView Now { get; private set; } = null!;

    /// <summary>Where closing the question leads; null for the page it is put from.</summary>
    public string? Back { get; private set; }

    /// <summary>The room is swayed by what the others say: the tally comes up with the answer, or when it is asked for.</summary>
    public bool ShowsTally { get; private set; }

    public IActionResult OnGet(string? back, string? tally)
    {
        if (desk.Now() is not { } now) return Redirect("/class/tonight");
        (Now, Back, ShowsTally) = (now, back is not null && TonightModel.IsGoodBack(back, Url) ? back : null, !now.Question.TakesAnswers || tally == "show");
        return Page();
    }
}
