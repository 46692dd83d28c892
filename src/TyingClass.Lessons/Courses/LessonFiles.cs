using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Courses;

/// <summary>The files of a lessons folder.</summary>
internal sealed class LessonFiles(string directory)
{
    // A lesson is text someone wrote by hand; more is a slip or an attack.
    private const long MostBytes = 1_000_000;

    public string Directory => directory;

    public IEnumerable<string> LessonNames() => System.IO.Directory.Exists(directory)
        ? System.IO.Directory.EnumerateFiles(directory, "*.md").Select(f => Path.GetFileName(f)).Where(n => char.IsAsciiDigit(n[0]))
        .Order(StringComparer.Ordinal)
        : [];

    public IEnumerable<string> RecipeNames() => System.IO.Directory.Exists(Path.Combine(directory, "recipes"))
        ? System.IO.Directory.EnumerateFiles(Path.Combine(directory, "recipes"), "*.fly.yaml").Select(f => "recipes/" + Path.GetFileName(f))
        .Order(StringComparer.Ordinal)
        : [];

    /// <summary>What a course is made of besides recipes: its lessons, and the plan of its evenings where there is one.</summary>
    public IEnumerable<string> TextNames() =>
        File.Exists(Path.Combine(directory, EveningsReader.FileName)) ? LessonNames().Append(EveningsReader.FileName) : LessonNames();

    /// <summary>Null when there is no such file, or its name is none of ours.</summary>
    public string? ReadRecipe(string name) => RecipeFileName.IsGood(name) ? Read(name) : null;

    /// <summary>Null when the file is not there or cannot be read just now, as while an editor saves it.</summary>
    public string? Read(string name)
    {
        FileInfo file = new(Path.Combine(directory, name));
        try
        {
            return file.Exists && file.Length <= MostBytes ? File.ReadAllText(file.FullName) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public static string[] Lines(string? text) => (text ?? "").ReplaceLineEndings("\n").Split('\n');

    /// <summary>Changes when any file of the course does.</summary>
    public string Fingerprint()
    {
        HashCode hash = default;
        foreach (string name in LessonNames().Concat(RecipeNames()).Append(EveningsReader.FileName))
        {
            FileInfo file = new(Path.Combine(directory, name));
            hash.Add(name);
            hash.Add(file.Exists ? file.LastWriteTimeUtc.Ticks : 0);
            hash.Add(file.Exists ? file.Length : 0);
        }

        return hash.ToHashCode().ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
