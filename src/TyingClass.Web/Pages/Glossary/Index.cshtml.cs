using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Lessons.Courses;

namespace TyingClass.Web.Pages.Glossary;

/// <summary>All words that the lessons bring in.</summary>
public sealed class IndexModel(ICourseSource course) : PageModel
{
    public ImmutableArray<IGrouping<char, GlossaryEntry>> ByLetter { get; } =
        [.. course.Current.Glossary.GroupBy(e => char.ToUpperInvariant(e.Term[0]))];

    public ImmutableArray<char> Letters => [.. ByLetter.Select(g => g.Key)];

    /// <summary>A meaning as a sentence of its own.</summary>
    public static string Sentence(string meaning) =>
        char.ToUpperInvariant(meaning[0]) + meaning[1..] + (meaning[^1] is '.' or '!' or '?' ? "" : ".");
}
