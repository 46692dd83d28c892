using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class PeopleModel(PeopleDesk desk, GuestDesk guests, TimeProvider time) : PageModel, IKeepsTyped
{
    public PeopleView? View => desk.Open();

    public DateTimeOffset Now => time.GetUtcNow();

    public string? Done { get; private set; }

    /// <summary>As it was typed.</summary>
    [BindProperty(Name = "mark")]
    public string? Mark { get; set; }

    /// <summary>The account chosen to move the work into.</summary>
    [BindProperty(Name = "into")]
    public string? Into { get; set; }

    /// <summary>What the mark was found to stand for.</summary>
    public GuestHolding? Holding { get; private set; }

    /// <summary>A mark just found, from one request to the next: an address would keep it in the browser's history.</summary>
    [TempData]
    public string? FoundMark { get; set; }

    public void OnGet(string? done)
    {
        if (FoundMark is { } found) Holding = guests.Look(found);
        Done = done switch
        {
            "removed" => "Removed. Whoever it was stands under “In the trash” below and can be brought back for 30 days.",
            "restored" => "Brought back, with all work.",
            _ => null,
        };
    }

    public IActionResult OnPost([FromForm(Name = "do")] string? what, string? id) => what switch
    {
        "look" => Look(),
        "move" => Move(),
        _ => id is not null && desk.Restore(id) ? LocalRedirect("/class/people?done=restored") : NotFound(),
    };

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("people-title", "The form had gone stale and nothing was done. Press the button again.");
        return Page();
    }

    private IActionResult Look()
    {
        GuestSearch search = guests.Try(Mark);
        if (search.Holding is not { } holding) return Refuse("mark", search.Trouble!);
        FoundMark = holding.Mark;
        return LocalRedirect("/class/people#bring");
    }

    private IActionResult Move()
    {
        (GuestMove? move, string? trouble) = guests.Move(Mark, Into);
        if (move is not null)
        {
            TempData[nameof(PersonModel.Done)] = PersonModel.Moved(move);
            return LocalRedirect($"/class/people/{Uri.EscapeDataString(move.ToPersonId)}");
        }

        if (trouble is null) return NotFound();
        Holding = Into is null or "" ? guests.Look(Mark!) : null;
        return Refuse(Holding is null ? "mark" : "into", trouble);
    }

    private PageResult Refuse(string field, string text)
    {
        ModelState.AddModelError(field, text);
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Page();
    }
}
