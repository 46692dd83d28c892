using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Checking;

/// <summary>
/// Lesson files that could not be read. What they hold cannot be judged until they are mended, so nothing is said of it: one cause, one error.
/// </summary>
internal sealed class BrokenLessons
{
    private readonly Dictionary<string, string> _textsByName;

    private BrokenLessons(Dictionary<string, string> textsByName) => _textsByName = textsByName;

    public static BrokenLessons Of(LessonFiles files, Course course) =>
        new(files.LessonNames().Except(course.Lessons.Select(l => l.File)).ToDictionary(n => n, n => files.Read(n) ?? ""));

    /// <summary>Whether one of them may well define an exercise, a concept or a practice of that name.</summary>
    public bool MayHold(string name) => _textsByName.Values.Any(text => text.Contains(name, StringComparison.OrdinalIgnoreCase));

    public bool HasLesson(string slug) => _textsByName.Keys.Any(name => name.EndsWith($"-{slug}.md", StringComparison.Ordinal));
}
