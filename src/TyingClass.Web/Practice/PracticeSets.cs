using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Practice;
using TyingClass.Web.Calendar;

namespace TyingClass.Web.Practice;

/// <summary>The practice fences of the course, as far as its lessons are open to the visitor.</summary>
public sealed class PracticeSets(ICourseSource course, ClassCalendar calendar)
{
    public IEnumerable<(Lesson Lesson, PracticeSet Set)> All() =>
        course.Current.Lessons.Where(l => calendar.OpensLater(l) is null).SelectMany(l => l.Blocks.OfType<PracticeBlock>().Select(b => (l, b.Practice)));

    /// <summary>Those of one concept, in the order of the course; problems take turns among them by seed.</summary>
    public ImmutableArray<(Lesson Lesson, PracticeSet Set)> Of(string slug) => [.. All().Where(s => s.Set.Slug == slug)];

    public static (Lesson Lesson, PracticeSet Set) For(ImmutableArray<(Lesson Lesson, PracticeSet Set)> sets, int seed) => sets[(seed - 1) % sets.Length];
}
