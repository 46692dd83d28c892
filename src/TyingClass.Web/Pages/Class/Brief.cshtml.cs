using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Lessons.Courses;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Class;

/// <summary>The first page of a class.</summary>
[Authorize(ClassPolicies.Deputy)]
public sealed class BriefModel(BriefDesk desk, ICourseSource course, TimeProvider time) : PageModel, IKeepsTyped
{
    // What addressed the register when it was the first page: bookmarks go on working.
    private static readonly string[] OfRegister = ["evening", "concept", "stuck", "sort", "sheets"];

    /// <summary>Null for an instructor who has no class yet.</summary>
    public Brief? Brief { get; private set; }

    /// <summary>The brief of an evening that is over; null where the class as it stands is asked for.</summary>
    public LookBack? Back { get; private set; }

    /// <summary>Evenings to look back on.</summary>
    public ImmutableArray<HeldEvening> Held => desk.Held;

    public DateTimeOffset Now => time.GetUtcNow();

    /// <summary>What is wrong in the lessons folder.</summary>
    public ImmutableArray<AuthorError> Problems => course.Current.Problems;

    /// <summary>What a button did.</summary>
    public string? Done { get; private set; }

    public string? Trouble { get; private set; }

    public IActionResult OnGet(int? given, int? planned, int? after)
    {
        if (OfRegister.Any(Request.Query.ContainsKey)) return LocalRedirect("/class/register" + Request.QueryString);
        Done = given is { } many
            ? $"Written to {(many == 1 ? "one student" : many.ToString(CultureInfo.InvariantCulture) + " students")}: it stands on their home "
                + "page until they have read it."
            : planned is { } number ? $"It stands among the demonstrations of evening {number} now." : null;
        if (after is { } over && (Back = desk.LookBack(over)) is null) return NotFound();
        return Back is null ? Show() : Page();
    }

    public IActionResult OnPostPractice(string? exercise, string? key) =>
        desk.GivePractice(exercise, key) is > 0 and var many ? RedirectToPage(new { given = many }) : Gone();

    public IActionResult OnPostPlan(string? exercise, string? key) =>
        desk.Plan(exercise, key) is { } number ? RedirectToPage(new { planned = number }) : Gone();

    public IActionResult ShowAgain()
    {
        Trouble = HttpContext.Items.ContainsKey(ArchivedFilter.Refused) ? null : "The page had gone stale and nothing was done. Press the button once more.";
        return Show();
    }

    private PageResult Gone()
    {
        Trouble = "Nothing was done: nobody holds it any more, or there is no evening left to plan for. Below is how it stands now.";
        Response.StatusCode = StatusCodes.Status409Conflict;
        return Show();
    }

    private PageResult Show()
    {
        Brief = desk.Open();
        return Page();
    }
}
