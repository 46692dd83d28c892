using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Identity;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Pages.Home;

public sealed class IndexModel(CourseProgress progress, Visitor visitor) : PageModel
{
    public CoursePlan Plan { get; private set; } = null!;

    public bool ShowAuthorErrors => visitor.IsInstructor && !Plan.Problems.IsEmpty;

    public void OnGet() => Plan = progress.Now();
}
