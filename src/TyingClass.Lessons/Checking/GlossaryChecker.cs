using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Checking;

/// <summary>Whether each word of the glossary has one meaning, and its lesson uses it.</summary>
internal static class GlossaryChecker
{
    public static IEnumerable<AuthorError> Check(Course course)
    {
        Dictionary<string, Lesson> owners = new(StringComparer.Ordinal);
        foreach (Lesson lesson in course.Lessons)
        {
            string shown = string.Concat(lesson.Blocks.OfType<ProseBlock>().Select(p => p.Html));
            foreach (GlossaryTerm term in lesson.Glossary)
            {
                if (!owners.TryAdd(Glossary.SameWord(term.Term), lesson))
                    yield return At(term,
                        $"“{term.Term}” is defined already in {owners[Glossary.SameWord(term.Term)].File}. A word has one meaning in the course: delete "
                            + "one of the two.");
                else if (!ReadingTime.Text(shown).Contains(term.Term, StringComparison.OrdinalIgnoreCase))
                    yield return At(term, $"The lesson's text nowhere uses “{term.Term}”. Use the word, or define it in the lesson that does.");

                AuthorError At(GlossaryTerm at, string text) => new(lesson.File, at.Line, at.Column, text);
            }
        }
    }
}
