using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Figures;
using TyingClass.Web.Progress;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class PersonModel(PeopleDesk desk, TimeText times, EveningBook book, TimeProvider time) : PageModel, IKeepsTyped
{
    public Person Who { get; private set; } = null!;

    public ImmutableArray<GuestLine> Guests => desk.Guests();

    /// <summary>That can be undone.</summary>
    public ImmutableArray<GuestMove> Moves => desk.MovedInto(Who.Id);

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

    public IActionResult OnPost(string personId, [FromForm(Name = "do")] string? what, string? guest, string? move)
    {
        if (desk.Find(personId) is not { } person) return NotFound();
        switch (what)
        {
            case "mentor" or "student":
                desk.SetRole(personId, what == "mentor" ? Role.Mentor : Role.Student);
                Done = $"{person.Label} is a {what} now, and signs in again.";
                break;
            case "deputy":
                return SetDeputy(person);
            case "passphrase":
                Handed = desk.ResetPassphrase(personId);
                break;
            case "move" when guest is not null && desk.MoveGuest(guest, personId) is { } moved:
                Done = Moved(moved);
                break;
            case "undo" when move is not null:
                Done = desk.UndoMove(move, personId) ? "Undone. The guest’s record holds its work again."
                    : "That move can no longer be undone. Nothing was changed.";
                break;
        }

        return LocalRedirect($"/class/people/{Uri.EscapeDataString(personId)}");
    }

    /// <summary>As it stands, or as it was chosen when that could not be kept.</summary>
    public Deputy Lent { get; private set; } = null!;

    /// <summary>To choose from.</summary>
    public ImmutableArray<EveningLine> Evenings => book.All();

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("account", "The form had gone stale and nothing was done. Press the button again.");
        return Show((string)RouteData.Values["personId"]!);
    }

    /// <summary>"3 attempts and 2 answers in practice".</summary>
    public static string Count(GuestMove move)
    {
        ArgumentNullException.ThrowIfNull(move);
        string practice = move.PracticeAnswers switch { 0 => "", 1 => " and 1 answer in practice", var n => $" and {n} answers in practice" };
        return CountWords.Attempts(move.Attempts) + practice;
    }

    public string Say(DateTimeOffset at) => times.When(at);

    internal static string Moved(GuestMove move) => $"{Count(move)} moved in. For 30 days this can be undone, below under “Work done as a guest”.";

    private IActionResult SetDeputy(Person person)
    {
        (string lent, int[] evenings) = (Request.Form["deputy"].ToString(), Ticked());
        Deputy deputy = new(person.Id, lent == "everything", lent == "evenings" ? [.. evenings] : []);
        if (lent == "evenings" && evenings.Length == 0)
        {
            ModelState.AddModelError("deputy-evenings", $"Tick at least one evening for {person.Label} to run.");
            Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
            return Show(person.Id);
        }

        Done = !desk.SetDeputy(deputy) ? "Nothing was changed."
            : deputy.Everything ? $"{person.Label} may run everything but people, files and setup now."
            : lent == "evenings" ? $"{person.Label} may run {(evenings.Length == 1 ? "evening" : "evenings")} {string.Join(", ", evenings)} now."
            : $"{person.Label} runs nothing for you any more.";
        return LocalRedirect($"/class/people/{Uri.EscapeDataString(person.Id)}");
    }

    // Only evenings that are listed: the numbers come from a form.
    private int[] Ticked() => [.. Evenings.Select(e => e.Number).Where(n => Request.Form["evening"].Contains(n.ToString(CultureInfo.InvariantCulture)))];

    private IActionResult Show(string personId)
    {
        if (desk.Find(personId) is not { } person) return NotFound();
        Who = person;
        Lent = desk.DeputyOf(person) ?? new Deputy(person.Id, false, []);
        return Page();
    }
}
