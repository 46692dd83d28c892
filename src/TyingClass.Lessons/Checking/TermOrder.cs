using System.Text.RegularExpressions;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Checking;

/// <summary>No exercise may ask in a word that only a later lesson brings in.</summary>
internal static class TermOrder
{
    public static IEnumerable<AuthorError> Check(Course course)
    {
        (string Term, Regex Word, Lesson Lesson)[] terms = [.. course.Lessons.SelectMany(l => l.Glossary.Select(t => (t.Term, Word(t.Term), l)))];
        foreach (Lesson lesson in course.Lessons)
        {
            foreach (Exercise exercise in lesson.Exercises)
            {
                string asked = $"{ReadingTime.Text(exercise.PromptHtml)} {exercise.Task.AskedQuantity}";
                foreach ((string term, Regex _, Lesson later) in terms.Where(t => t.Lesson.Number > lesson.Number && t.Word.IsMatch(asked)))
                {
                    (int line, int column) = exercise.Place.Of("prompt");
                    yield return new AuthorError(lesson.File, line, column,
                        $"{exercise.Id}: it asks in the word “{term}”, which lesson {later.Number} brings in. "
                        + "Define the word in this lesson or an earlier one, or ask without it.");
                }
            }
        }
    }

    private static Regex Word(string term) =>
        new($@"(?<!\w){Regex.Escape(Glossary.SameWord(term))}s?(?!\w)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
