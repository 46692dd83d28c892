using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Practice;

namespace TyingClass.Web.Practice;

/// <summary>The practice fences of a course.</summary>
internal static class PracticeSets
{
    public static IEnumerable<(Lesson Lesson, PracticeSet Set)> All(Course course) =>
        course.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>().Select(b => (l, b.Practice)));

    /// <summary>Those of one concept, in the order of the course; problems take turns among them by seed.</summary>
    public static ImmutableArray<(Lesson Lesson, PracticeSet Set)> Of(Course course, string slug) =>
        [.. All(course).Where(s => s.Set.Slug == slug)];

    public static (Lesson Lesson, PracticeSet Set) For(ImmutableArray<(Lesson Lesson, PracticeSet Set)> sets, int seed) => sets[(seed - 1) % sets.Length];
}
