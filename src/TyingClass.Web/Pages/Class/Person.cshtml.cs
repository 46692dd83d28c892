using System.Collections.Immutable;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class PersonModel(PeopleDesk desk, TimeProvider time) : PageModel, IKeepsTyped
{
    public Person Who { get; private set; } = null!;

    public ImmutableArray<GuestLine> Guests => desk.Guests();

    public DateTimeOffset Now => time.GetUtcNow();

    /// <summary>A passphrase just made up: shown this once.</summary>
    [TempData]
    public string? Handed { get; set; }

    [TempData]
    public string? Done { get; set; }

    public IActionResult OnGet(string personId) => Show(personId);

    public IActionResult OnGetWork(string personId) => desk.Find(personId) is { } person
        ? File(desk.WorkOf(person), "application/json", "work.json")
        : NotFound();

    public IActionResult OnPost(string personId, [FromForm(Name = "do")] string? what, string? guest)
    {
        if (desk.Find(personId) is not { } person) return NotFound();
        switch (what)
        {
            case "mentor" or "student":
                desk.SetRole(personId, what == "mentor" ? Role.Mentor : Role.Student);
                Done = $"{person.Label} is a {what} now, and signs in again.";
                break;
            case "passphrase":
                Handed = desk.ResetPassphrase(personId);
                break;
            case "move" when guest is not null && desk.MoveGuest(guest, personId) is { } moved:
                Done = $"{moved} attempts moved.";
                break;
        }

        return LocalRedirect($"/class/people/{Uri.EscapeDataString(personId)}");
    }

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("account", "The form had gone stale and nothing was done. Press the button again.");
        return Show((string)RouteData.Values["personId"]!);
    }

    private IActionResult Show(string personId)
    {
        if (desk.Find(personId) is not { } person) return NotFound();
        Who = person;
        return Page();
    }
}
