using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Recipes.Text;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;
using TyingClass.Web.Preferences;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Preferences;

public sealed class IndexModel(Visitor visitor, PersonStore store) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "name")]
    public string? Name { get; set; }

    [BindProperty(Name = "units")]
    public UnitSystem Units { get; set; }

    [BindProperty(Name = "theme")]
    public Theme Theme { get; set; }

    public bool HasAccount => visitor.HasAccount;

    public bool Saved { get; private set; }

    public void OnGet(bool kept)
    {
        (Units, Theme) = Look.Of(Request);
        (Name, Saved) = (visitor.Person?.Name, kept);
    }

    public IActionResult OnPost()
    {
        new Look(Units, Theme).Write(HttpContext);
        bool named = !string.IsNullOrWhiteSpace(Name);
        if (visitor.Person is { Role: Role.Guest } person) store.Rename(person.Id, Name);
        else if (named && visitor.Person is null) visitor.PersonOrNewGuest(Name);
        return LocalRedirect("/preferences?kept=true");
    }

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("name", "The form had gone stale and nothing was kept. What you chose stands below: send it again.");
        return Page();
    }
}
