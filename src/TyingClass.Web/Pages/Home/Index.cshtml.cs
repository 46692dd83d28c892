using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;
using TyingClass.Web.Identity;
using TyingClass.Web.Practice;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Pages.Home;

public sealed class IndexModel(CourseProgress progress, ConceptBoard board, LentBoard lent, Visitor visitor) : PageModel
{
    public CoursePlan Plan { get; private set; } = null!;

    public ConceptView Concepts { get; private set; } = null!;

    /// <summary>For a deputy.</summary>
    public LentView? Lent { get; private set; }

    public bool ShowAuthorErrors => visitor.IsInstructor && !Plan.Problems.IsEmpty;

    public void OnGet() => (Plan, Concepts, Lent) = (progress.Now(), board.Mine(), lent.Mine());
}
