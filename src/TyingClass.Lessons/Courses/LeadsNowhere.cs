using TyingClass.Lessons.Checking;

namespace TyingClass.Lessons.Courses;

/// <summary>
/// Tells of names in a course that can be read which nothing in it bears: an address in a lesson, an exercise in the plan of an evening. It is shown as it
/// stands: nothing is held back for it.
/// </summary>
internal static class LeadsNowhere
{
    /// <summary>The course with these among its problems. Next to a file that cannot be read nothing is told: the name may stand there.</summary>
    public static Course Told(Course course, LessonFiles files)
    {
        if (!course.Problems.IsEmpty) return course;
        return course with
        {
            Problems =
            [
                .. course.Lessons.SelectMany(l => LinkChecker.Check(course, l, _ => false, _ => false)).Select(e => Placed(e, files)),
                .. course.Evenings.SelectMany(plan => EveningChecker.Unknown(course, plan, _ => false).Select(u => Placed(At(u.Error, u.Id, files), files))),
            ],
        };
    }

    // The plan of an evening begins where it says its number; the name stands below.
    private static AuthorError At(AuthorError error, string id, LessonFiles files)
    {
        string[] lines = LessonFiles.Lines(files.Read(error.File));
        int line = Array.FindIndex(lines, Math.Clamp(error.Line - 1, 0, lines.Length), l => l.Contains(id, StringComparison.Ordinal));
        return line < 0 ? error : error with { Line = line + 1 };
    }

    private static AuthorError Placed(AuthorError error, LessonFiles files) =>
        CourseLoader.Placed(error, error.File, files) with { IsShown = true };
}
