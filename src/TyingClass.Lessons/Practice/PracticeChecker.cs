using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Practice;

/// <summary>Whether a practice fence gives fair problems.</summary>
internal static class PracticeChecker
{
    private static readonly int[] Seeds = [1, 2, 3];

    // Fewer problems than this are known by heart before they are understood. Estimate.
    private const int FewestApart = 8;

    public static IEnumerable<AuthorError> Check(Lesson lesson, PracticeSet set)
    {
        int different = PracticeProblems.Different(set, FewestApart);
        if (different < FewestApart)
        {
            (int l, int c) = set.Template.Place.Of("vary");
            yield return new AuthorError(lesson.File, l, c,
                $"Practice of “{set.Concept}” repeats itself after {different} problems, and {FewestApart} that differ are the least. "
                + "Vary one thing more.");
        }

        if (Seeds.All(seed => PracticeProblems.Draw(set, seed) is not null)) yield break;
        (int line, int column) = set.Template.Place.Of("vary");
        yield return new AuthorError(lesson.File, line, column,
            $"Practice of “{set.Concept}” finds no fair problem in these ranges: every draw is too near a threshold. Widen them.");
    }
}
