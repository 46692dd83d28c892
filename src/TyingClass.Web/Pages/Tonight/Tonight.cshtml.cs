using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Tonight;

/// <summary>On the phone at the vise: the question before the room.</summary>
public sealed class TonightModel(RoomDesk desk, Visitor visitor) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "question")]
    public string? QuestionId { get; set; }

    [BindProperty(Name = "choice")]
    public int? Choice { get; set; }

    public bool HasClass => desk.Room is not null;

    public RoomView? Now { get; private set; }

    public string? Notice { get; private set; }

    public IActionResult OnGet()
    {
        if (visitor.IsInstructor) return Redirect("/class/tonight");
        Now = desk.Now();
        return Page();
    }

    public IActionResult OnPost()
    {
        if (Choice is null) return Again("Choose one of the answers first.");
        return desk.Answer(QuestionId ?? "", Choice.Value) ? RedirectToPage()
            : Again("That came too late: the question is no longer open. Nothing of yours was counted.");
    }

    public IActionResult ShowAgain() => Again("The form had gone stale and nothing was sent. Send your answer once more.");

    private PageResult Again(string notice)
    {
        (Notice, Now) = (notice, desk.Now());
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
