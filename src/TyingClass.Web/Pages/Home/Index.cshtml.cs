using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;
using TyingClass.Web.Identity;
using TyingClass.Web.Practice;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Pages.Home;

public sealed class IndexModel(CourseProgress progress, ConceptBoard board, LentBoard lent, NewsBoard news, Visitor visitor) : PageModel
{
    public CoursePlan Plan { get; private set; } = null!;

    public ConceptView Concepts { get; private set; } = null!;

    /// <summary>For a deputy.</summary>
    public LentView? Lent { get; private set; }

    /// <summary>What a mentor or instructor did for them.</summary>
    public ImmutableArray<NewsLine> News { get; private set; } = [];

    public bool ShowAuthorErrors => visitor.IsInstructor && !Plan.Problems.IsEmpty;

    public bool IsGuest => !visitor.HasAccount;

    public void OnGet() => (Plan, Concepts, Lent, News) = (progress.Now(), board.Mine(), lent.Mine(), news.Mine());
}
