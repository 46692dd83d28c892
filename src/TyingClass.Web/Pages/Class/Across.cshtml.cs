using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Instructor)]
public sealed class AcrossModel(ClassAccess access, ExerciseAcross across) : PageModel
{
    /// <summary>Recipes drawn side by side on one page.</summary>
    public const int CardsAPage = 12;

    public AcrossView View { get; private set; } = null!;

    public int Part { get; private set; } = 1;

    public int Parts => (View.Answers.Length + CardsAPage - 1) / CardsAPage;

    public IEnumerable<GivenAnswer> Shown => View.Answers.Skip((Part - 1) * CardsAPage).Take(CardsAPage);

    public IActionResult OnGet(string id, int part = 1)
    {
        if (access.Current is not { } room || across.Of(room, id) is not { } view) return NotFound();
        View = view;
        Part = Math.Clamp(part, 1, Math.Max(1, Parts));
        return Page();
    }
}
