using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>docs/course-plan.md: its materials are those of the recipes it lists, and it teaches each lesson on the evening the lesson names.</summary>
public sealed partial class CoursePlanTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repo.Root, "docs", "course-plan.md")).ReplaceLineEndings("\n");

    [Fact]
    public void Materials_PerStudent_AreThoseOfTheFliesTied()
    {
        string expected = string.Concat(Materials().OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => $"| {m.Key} | {m.Value} |\n"));

        Assert.True(Text.Contains(expected, StringComparison.Ordinal), "The table of materials in docs/course-plan.md should be:\n" + expected);
    }

    [Fact]
    public void FliesToTie_OfEveryTubTest_AreListed()
    {
        HashSet<string> listed = [.. Tied().Select(t => Repo.Recipe(t.File)!)];

        string[] missing = [.. CourseChecker.Check(Repo.Lessons).Course.Exercises
            .Where(e => e.Kind == ExerciseKind.TubTest && RecipeParser.Parse(e.RecipeText!).Value!.Parts.Length > 0 && !listed.Contains(e.RecipeText!))
            .Select(e => e.Id)];

        Assert.Empty(missing);
    }

    [Fact]
    public void Evenings_OfEachLesson_AreThoseTheLessonsName()
    {
        using CourseFolder course = new(Repo.Lessons);

        string[] misplaced = [.. course.Current.Lessons
            .Where(l => EveningOf(l.Number) != l.Evening)
            .Select(l => $"{l.File} says evening {l.Evening}, the plan {EveningOf(l.Number)}")];

        Assert.Empty(misplaced);
    }

    // "| 3 | 5, 6, 7 | …": the overview's first two columns.
    private static int? EveningOf(int lesson) => Overview().Matches(Text)
        .Where(m => m.Groups["lessons"].Value.Split(',').Any(n => int.Parse(n, CultureInfo.InvariantCulture) == lesson))
        .Select(m => (int?)int.Parse(m.Groups["evening"].Value, CultureInfo.InvariantCulture))
        .FirstOrDefault();

    private static IEnumerable<(string File, int Count)> Tied() => TiedFly().Matches(Text)
        .Select(m => (m.Groups["file"].Value, int.Parse(m.Groups["count"].Value, CultureInfo.InvariantCulture)));

    private static SortedDictionary<string, string> Materials()
    {
        Dictionary<string, int> pieces = [], turns = [];
        Dictionary<string, double> grams = [];
        foreach ((string file, int count) in Tied())
        {
            string text = Repo.Recipe(file)!;
            Recipe recipe = RecipeParser.Parse(text).Value!;
            RecipeDraft draft = RecipeDraft.Parse(text).Value!;
            Add(pieces, "hook, " + string.Join(", ", draft.Fields("hook").Where(f => f.Key is not ("mass" or "bend") && f.Value != "standard").Select(f => $"{f.Key} {f.Value}")), count);
            ImmutableArray<Balance.Bodies.BodyPart> built = [.. FlyBuilder.Build(recipe).Body.Parts.Skip(1)];
            for (int i = 0; i < recipe.Parts.Length; i++)
            {
                string? Of(string key) => draft.Get($"parts[{i}].{key}")?.Replace(".0 mm", " mm", StringComparison.Ordinal);
                switch (recipe.Parts[i].Kind)
                {
                    case PartKind.Bead or PartKind.Cone or PartKind.DumbbellEyes:
                        Add(pieces, $"{Of("part")}, {Of("material")}, {Of("size")}", count);
                        break;
                    case PartKind.Wraps:
                        Add(turns, $"wraps, {Of("material")}, {Of("diameter")}", count * recipe.Parts[i].Turns!.Value);
                        break;
                    default:
                        grams[Of("material")!] = grams.GetValueOrDefault(Of("material")!) + count * 1e3 * built[i].Masses.Sum(m => m.MassKg);
                        break;
                }
            }
        }

        SortedDictionary<string, string> all = new(StringComparer.Ordinal);
        foreach ((string key, int n) in pieces) all[key] = n.ToString(CultureInfo.InvariantCulture);
        foreach ((string key, int n) in turns) all[key] = FormattableString.Invariant($"{n} turns");
        foreach ((string key, double g) in grams) all[key] = FormattableString.Invariant($"{Math.Ceiling(20 * g - 1e-6) / 20:0.00} g");
        return all;
    }

    private static void Add(Dictionary<string, int> to, string key, int count) => to[key] = to.GetValueOrDefault(key) + count;

    [GeneratedRegex(@"^\| (?<evening>[1-8]) \| (?<lessons>[0-9]+(?:, [0-9]+)*) \|", RegexOptions.Multiline)]
    private static partial Regex Overview();

    [GeneratedRegex(@"^\| [1-8] \| [^|]+ \| `(?<file>recipes/[a-z0-9-]+\.fly\.yaml)` \| (?<count>[0-9]+) \|", RegexOptions.Multiline)]
    private static partial Regex TiedFly();
}
