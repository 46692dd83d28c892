using System.Text.RegularExpressions;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Practice;
using TyingClass.Lessons.Quantities;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>docs/lessons.md: its examples are loaded and worked, its list of quantities is the list there is.</summary>
public sealed partial class LessonsDocumentTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repo.Root, "docs", "lessons.md")).ReplaceLineEndings("\n");

    [Fact]
    public void Examples_OfEveryKind_ReadWell()
    {
        Lesson lesson = Lesson();

        Assert.Equal([],
            ExerciseKinds.All.Except(lesson.Exercises.Select(e => e.Kind))
                .Select(k => $"Write an example, an exercise fence that works, under “### {k.Word}” of docs/lessons.md."));
        Assert.Single(lesson.Blocks.OfType<FlyBlock>());
        Assert.Single(lesson.Blocks.OfType<FigureBlock>());
        // One varies the fly, one what is done to it.
        Assert.Equal([true, false], lesson.Blocks.OfType<PracticeBlock>().Select(b => b.Practice.Template.Task.ChangedRecipe is not null));
    }

    [Fact]
    public void Examples_Worked_PassAndFailAsTheySay()
    {
        using TemporaryFolder folder = new();
        foreach (string recipe in Directory.EnumerateFiles(Path.Combine(Repo.Lessons, "recipes")))
        {
            folder.Write("recipes/" + Path.GetFileName(recipe), File.ReadAllText(recipe));
        }

        folder.Write("01-examples.md", Markdown());

        Assert.Equal([], CourseChecker.Check(folder.Path).Errors);
    }

    [Fact]
    public void Practice_SameSeed_IsTheSameProblem()
    {
        PracticeSet set = Lesson().Blocks.OfType<PracticeBlock>().Single(b => b.Practice.Template.Task.ChangedRecipe is null).Practice;

        Exercise first = PracticeProblems.Draw(set, 7)!, again = PracticeProblems.Draw(set, 7)!, other = PracticeProblems.Draw(set, 8)!;

        Assert.Equal(first.RecipeText, again.RecipeText);
        Assert.Equal("practice-mass-center-7-20", first.Id);
        Assert.NotEqual(first.RecipeText, other.RecipeText);
    }

    [Fact]
    public void Quantities_Table_IsTheRegistry()
    {
        string expected = string.Concat(
            QuantityTable.All.Select(
                q => $"| `{q.Name}{(q.Name.EndsWith(" of", StringComparison.Ordinal) ? " PART" : "")}` | {Measures(q)} | {q.Meaning} |\n"));

        Assert.True(Text.Contains(expected, StringComparison.Ordinal), "The table of quantities in docs/lessons.md should be:\n" + expected);
    }

    private static string Measures(Quantity quantity) => quantity.Dimension?.ToString().ToLowerInvariant() ?? "count";

    private static Lesson Lesson()
    {
        LessonResult result = LessonReader.Read("01-examples.md", Markdown(), Repo.Recipe);
        Assert.Equal([], result.Errors);
        return result.Lesson!;
    }

    private static string Markdown() =>
        "---\ntitle: Examples\nsummary: S\nconcepts: [keel side, mass center, hang test]\nminutes: 25\n---\n\n"
        + string.Join("\n", Fences().Matches(Text).Select(m => m.Value));

    [GeneratedRegex(@"^```(?:exercise|figure|fly|practice)[^\n]*\n(?:.*\n)*?```\n", RegexOptions.Multiline)]
    private static partial Regex Fences();
}
