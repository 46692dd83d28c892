using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

/// <summary>A demonstration on the wall: the two flies side by side, nothing said of whose they are.</summary>
[Authorize(ClassPolicies.Deputy)]
public sealed class ShowModel(BriefDesk desk) : PageModel
{
    public BeliefLine Line { get; private set; } = null!;

    /// <summary>The flies are shown as they swim, once the room has said what it thinks.</summary>
    public bool Swims { get; private set; }

    public IActionResult OnGet(string exerciseId, string? key, bool swims)
    {
        if (desk.Find(exerciseId, key) is not { Show.First: not null } line) return LocalRedirect("/class");
        (Line, Swims) = (line, swims);
        return Page();
    }
}
