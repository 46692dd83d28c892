using TyingClass.Lessons.Kinds;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds;

/// <summary>
/// A kind of exercise is a folder, a partial page and a line in the catalogue. What is missing is told here, once, by the name of the file to write.
/// </summary>
public sealed class KindFilesTests
{
    private static readonly string[] Folders =
        [.. Directory.EnumerateDirectories(Path.Combine(Repo.Root, "src", "TyingClass.Lessons", "Kinds")).Select(d => Path.GetFileName(d))
        .Order(StringComparer.Ordinal)];

    [Fact]
    public void EveryKind_HasAllItsPieces()
    {
        string document = File.ReadAllText(Path.Combine(Repo.Root, "docs", "lessons.md"));

        string[] missing =
            [.. ExerciseKinds.All.Select(k => k.FileName).Concat(Folders).Distinct().Order(StringComparer.Ordinal).SelectMany(name => Missing(name, document))];
        // Whole lines: xunit cuts what it compares.
        Assert.True(missing.Length == 0, string.Join('\n', missing));
    }

    [Fact]
    public void Words_Kinds_AreToldApart() => Assert.Equal(ExerciseKinds.All.Length, ExerciseKinds.Words.Distinct(StringComparer.OrdinalIgnoreCase).Count());

    // Lessons, exports and links hold these: they never change.
    [Fact]
    public void Words_OfTheKindsThatWerePublished_Stand() =>
        Assert.Empty(new[] { "predict", "measure", "repair", "compose", "sort", "explain", "tub test", "find the slip" }.Except(ExerciseKinds.Words));

    private static IEnumerable<string> Missing(string name, string document)
    {
        string folder = $"src/TyingClass.Lessons/Kinds/{name}";
        if (Lacks($"{folder}/{name}Kind.cs")) yield return $"Write {folder}/{name}Kind.cs: the class {name}Kind, an ExerciseKind.";
        if (Lacks($"{folder}/{name}Task.cs"))
            yield return $"Write {folder}/{name}Task.cs: the record {name}Task, an ExerciseTask, with what such an exercise holds.";
        if (Lacks($"src/TyingClass.Web/Pages/Exercises/Kinds/_{name}.cshtml"))
            yield return $"Write src/TyingClass.Web/Pages/Exercises/Kinds/_{name}.cshtml: the form in which it is answered.";
        if (Lacks($"tests/TyingClass.Lessons.Tests/Kinds/{name}/{name}Tests.cs"))
            yield return $"Write tests/TyingClass.Lessons.Tests/Kinds/{name}/{name}Tests.cs: a right answer, wrong ones, mistakes of an author by line.";
        ExerciseKind? kind = ExerciseKinds.All.FirstOrDefault(k => k.FileName == name);
        if (kind is null) yield return $"Add {name}Kind.Instance to src/TyingClass.Lessons/Kinds/ExerciseKinds.cs.";
        else if (!document.Contains($"\n### {kind.Word}\n", StringComparison.Ordinal))
            yield return $"Write the section “### {kind.Word}” of docs/lessons.md, with an example that works.";
    }

    private static bool Lacks(string file) => !File.Exists(Path.Combine([Repo.Root, .. file.Split('/')]));
}
