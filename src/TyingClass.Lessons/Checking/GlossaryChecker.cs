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
            string shown = string.Join(' ', lesson.Blocks.Select(b => b switch
            {
                ProseBlock prose => ReadingTime.Text(prose.Html),
                FlyBlock fly => fly.Caption,
                FigureBlock figure => figure.Caption,
                _ => "",
            }));
            foreach (GlossaryTerm term in lesson.Glossary)
            {
                if (!owners.TryAdd(Glossary.SameWord(term.Term), lesson))
                    yield return At(term,
                        $"“{term.Term}” is defined already in {owners[Glossary.SameWord(term.Term)].File}. A word has one meaning in the course: delete "
                            + "one of the two.");
                else if (!shown.Contains(term.Term, StringComparison.OrdinalIgnoreCase))
                    yield return At(term, $"The lesson's text nowhere uses “{term.Term}”. Use the word, or define it in the lesson that does.");

                AuthorError At(GlossaryTerm at, string text) => new(lesson.File, at.Line, at.Column, text);
            }
        }
    }
}
