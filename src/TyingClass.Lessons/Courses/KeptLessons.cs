namespace TyingClass.Lessons.Courses;

/// <summary>
/// The last good version of every lesson and of the plan of the evenings, as files of a folder of its own: a program that is started while one of them is
/// broken shows it as it last was.
/// Nothing here is ever needed to show a lesson that can be read, so what cannot be written is left.
/// </summary>
internal sealed class KeptLessons(string directory)
{
    private readonly LessonFiles _kept = new(directory);

    /// <summary>The course of what was kept; empty where nothing was.</summary>
    public Course Read() => CourseLoader.Load(_kept, Course.Empty);

    /// <summary>Keeps what is good in a folder as it stands now, and forgets lessons that are gone from it.</summary>
    public void Keep(LessonFiles files, Course course)
    {
        try
        {
            Directory.CreateDirectory(Path.Combine(directory, "recipes"));
            HashSet<string> broken = [.. course.Problems.Where(p => !p.IsShown).SelectMany(p => new[] { p.Lesson, p.File })];
            string[] names = [.. files.TextNames()];
            foreach (string name in names.Concat(broken.Count == 0 ? files.RecipeNames() : []).Where(n => !broken.Contains(n))) Copy(files, name);
            foreach (string gone in _kept.TextNames().Except(names).ToArray()) File.Delete(Path.Combine(directory, gone));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A full or read-only disk: the lessons of today are shown all the same.
        }
    }

    private void Copy(LessonFiles files, string name)
    {
        if (files.Read(name) is not { } text || _kept.Read(name) == text) return;
        string path = Path.Combine(directory, name);
        File.WriteAllText(path + ".new", text);
        File.Move(path + ".new", path, overwrite: true);
    }
}
