using System.Text.RegularExpressions;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Reference;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>Finds addresses that lead nowhere inside the course. Addresses of other sites are not visited.</summary>
internal static partial class LinkChecker
{
    private static readonly string[] Pages =
        ["/", "/bench", "/patterns", "/bench-log", "/reviews", "/practice", "/safety", "/first-wraps", "/model", "/glossary", "/handouts/bench-test"];

    /// <param name="mayHold">Tells of an exercise or a practice that is not in the course whether a complaint elsewhere says why.</param>
    /// <param name="isBroken">Tells whether a lesson of that name is there and cannot be read.</param>
    public static IEnumerable<AuthorError> Check(Course course, Lesson lesson, Func<string, bool> mayHold, Func<string, bool> isBroken)
    {
        foreach (LessonLink link in lesson.Links)
        {
            if (Complaint(course, lesson, link, mayHold, isBroken) is { } text) yield return new AuthorError(lesson.File, link.Line, link.Column, text);
        }
    }

    private static string? Complaint(
        Course course, Lesson lesson, LessonLink link, Func<string, bool> mayHold, Func<string, bool> isBroken)
    {
        if (Elsewhere().IsMatch(link.Address)) return null;
        if (link.IsImage) return null;
        string[] parts = link.Address.Split('#', 2);
        string page = parts[0], fragment = parts.Length > 1 ? parts[1] : "";
        Lesson? target = page.Length == 0 ? lesson : null;
        if (page.StartsWith("/lessons/", StringComparison.Ordinal))
        {
            string slug = page["/lessons/".Length..];
            if (isBroken(slug)) return null;
            if (!course.TryFindLesson(slug, out target)) return $"There is no lesson at {page}.{Nearest.Hint(slug, course.Lessons.Select(l => l.Slug))}";
        }
        else if (page.StartsWith("/exercises/", StringComparison.Ordinal))
        {
            string id = page["/exercises/".Length..];
            if (!course.TryFindExercise(id, out _, out Exercise _) && !mayHold(id))
                return $"There is no exercise {id}.{Nearest.Hint(id, course.Exercises.Select(e => e.Id))}";
        }
        else if (page.StartsWith("/practice/", StringComparison.Ordinal))
        {
            string concept = Uri.UnescapeDataString(page["/practice/".Length..]);
            if (!course.Lessons.SelectMany(l => l.Blocks).OfType<PracticeBlock>().Any(p => p.Practice.Slug == Practice.PracticeSet.SlugOf(concept))
                && !mayHold(concept.Replace('-', ' '))) return $"There is no practice of “{concept}”.";
        }
        else if (page.Length > 0 && !Pages.Contains(page))
        {
            return $"“{page}” is no page of this site. Link to /lessons/…, /exercises/…, /practice/…, {string.Join(", ", Pages)} or another site.";
        }

        if (page == "/model" && fragment.Length > 0 && !FormulaBook.HasAnchor(fragment))
            return $"The page /model has no place named “#{fragment}”. Its anchors are the headings of docs/formulas.md, such as /model#keel-height.";
        return target is not null && fragment.Length > 0 && !HasAnchor(target, fragment)
            ? $"The lesson {target.Slug} has no heading for “#{fragment}”."
            : null;
    }

    private static bool HasAnchor(Lesson lesson, string fragment) =>
        lesson.Blocks.OfType<ProseBlock>().Any(p => p.Html.Contains($"id=\"{fragment}\"", StringComparison.Ordinal));

    [GeneratedRegex(@"\A[a-z]+:", RegexOptions.IgnoreCase)]
    private static partial Regex Elsewhere();
}
