using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Prose;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>docs/course-plan.md: its materials are those of the recipes it lists, and it teaches each lesson on the evening the lesson names.</summary>
public sealed partial class CoursePlanTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repo.Root, "docs", "course-plan.md")).ReplaceLineEndings("\n");

    private static readonly Lazy<ImmutableArray<CourseEvening>> Evenings = new(() =>
    {
        using CourseFolder course = new(Repo.Lessons);
        return course.Current.Evenings;
    });

    [Fact]
    public void Materials_OfThePlan_AreThoseOfTheFliesOfAllEvenings()
    {
        CourseFly[] flies = [.. Evenings.Value.SelectMany(e => e.Flies)];
        CourseFly[] spares = [.. Evenings.Value.SelectMany(e => e.Spares)];
        ImmutableArray<Supply> all = Needed(f => f.ForTwo + f.ToShow);
        ILookup<SupplyItem, Supply> two = Needed(f => f.ForTwo).ToLookup(s => s.Item), show = Needed(f => f.ToShow).ToLookup(s => s.Item);
        string expected = string.Concat(all.Select(s =>
            $"| {SupplyWords.Of(s, UnitSystem.Metric)} | {Amount(two[s.Item])} | {Amount(show[s.Item])} | {ShopWords.Of(s, UnitSystem.Metric)} |\n"));

        Assert.True(Text.Contains(expected, StringComparison.Ordinal), "The table of materials in docs/course-plan.md should be:\n" + expected);

        ImmutableArray<Supply> Needed(Func<CourseFly, int> count) =>
            SupplyList.For(flies.Select(f => (f.Recipe, count(f))), spares.Select(f => (f.Recipe, count(f))));
    }

    [Fact]
    public void Spares_OfThePlan_AreThoseOfTheEvenings()
    {
        string expected = string.Concat(Evenings.Value.SelectMany(e => e.Spares.Select(f => string.Create(CultureInfo.InvariantCulture,
            $"| {e.Number} | {SupplyWords.Of(SupplyList.For([], [(f.Recipe, 1)]).Single(), UnitSystem.Metric)} | {f.ForTwo} | {f.ToShow} |\n"))));

        Assert.True(Text.Contains(expected, StringComparison.Ordinal), "The table of spare parts in docs/course-plan.md should be:\n" + expected);
    }

    [Fact]
    public void FliesToTie_OfThePlan_AreThoseOfTheEvenings()
    {
        string expected = string.Concat(Evenings.Value.SelectMany(e => e.Flies.Select(f =>
            string.Create(CultureInfo.InvariantCulture, $"| {e.Number} | {f.Recipe.Name} | `{f.File}` | {f.ForTwo} | {f.ToShow} |\n"))));

        Assert.True(Text.Contains(expected, StringComparison.Ordinal), "The table of flies in docs/course-plan.md should be:\n" + expected);
    }

    // No evening asks anybody to buy lead: whoever may use it can, and the recipe says how.
    [Fact]
    public void FliesToTie_OfEveryEvening_HaveNoLead() =>
        Assert.Empty(Evenings.Value.SelectMany(e => e.Flies).Where(f => f.Recipe.Parts.Any(p => p.Material == "lead")).Select(f => f.File));

    [Fact]
    public void FliesToTie_OfEveryTubTest_AreListed()
    {
        HashSet<string> listed = [.. Evenings.Value.SelectMany(e => e.Flies).Select(f => f.RecipeText)];

        using CourseFolder course = new(Repo.Lessons);
        string[] missing = [.. course.Current.Exercises
            .Where(e => e.Kind.IsAtTheBench && RecipeParser.Parse(e.RecipeText!).Value!.Parts.Length > 0 && !listed.Contains(e.RecipeText!))
            .Select(e => e.Id)];

        Assert.Empty(missing);
    }

    // What is worked together needs its minutes, and on the wall it stands behind the row that names it.
    [Fact]
    public void Plans_OfEveryEvening_FillTwoHoursAndNameWhatIsWorkedTogether()
    {
        using CourseFolder course = new(Repo.Lessons);
        ILookup<string, string> titles = course.Current.Exercises.ToLookup(e => e.Id, e => e.Title);

        foreach (CourseEvening evening in course.Current.Evenings)
        {
            ImmutableArray<ImmutableArray<string>> rows = NoteTable.Rows(evening.Plan);
            string[] nowhere = [.. evening.InTheRoom.Where(id => !titles[id].Single().Split(": ").Any(IsNamed))];

            Assert.Equal(120, rows.Sum(r => int.Parse(r[0], CultureInfo.InvariantCulture)));
            Assert.Empty(nowhere);

            bool IsNamed(string title) => rows.Any(r => r[1].Contains(title, StringComparison.OrdinalIgnoreCase));
        }
    }

    // What an instructor shows must come out as the plan says, or the evening is lost.
    [Theory]
    [InlineData("slate-minnow", "", "pitch while sinking < -30°")]
    [InlineData("slate-minnow-tail-heavy", "", "pitch while sinking > 30°")]
    [InlineData("quay-bullhead", "", "flips > 50 %")]
    [InlineData("quay-bullhead-jig", "", "rides as intended > 98 %")]
    [InlineData("quay-bullhead", "parts[0].size: 2.4 mm", "flips > 95 %")]
    [InlineData("quay-bullhead-jig", "parts[0].size: 2.4 mm", "flips < 1 % and leans < 20 %")]
    [InlineData("amber-stickleback", "", "keel height > 0.8 mm")]
    [InlineData("rowan-smelt-8", "", "rides as intended > 95 %")]
    [InlineData("rowan-smelt-4-0", "", "flips > 50 %")]
    [InlineData("rowan-smelt-8", "parts[0].size: 2.4 mm", "rides as intended > 95 %")]
    [InlineData("rowan-smelt-4-0", "parts[0].size: 2.4 mm", "flips > 95 %")]
    [InlineData("rowan-smelt-4", "parts[0].size: 2 mm", "rides as intended < 65 % and flips < 5 %")]
    [InlineData("collar-hook", "", "pitch while sinking < 0°")]
    [InlineData("collar-hook", "parts[0].at: 6 mm", "pitch while sinking > 10°")]
    [InlineData("brass-gudgeon", "", "rides as intended < 35 %")]
    [InlineData("barge-hand", "", "pitch while sinking < -5°")]
    [InlineData("barge-hand-lead-free", "", "pitch while sinking < 15° and mass of wraps > 0.3 g")]
    [InlineData("barge-hand-lead-free", "parts[0].at: 11 mm", "pitch while sinking > 45°")]
    [InlineData("weir-drifter", "", "lean when fresh < 30° and lean > 120°")]
    [InlineData("tailrace-lamprey", "", "pitch while sinking < -25° and pitch > 20°")]
    [InlineData("gravel-clerk-brass", "", "sink rate < 0.65 m/s")]
    [InlineData("gravel-clerk-tungsten", "", "sink rate > 0.55 m/s")]
    [InlineData("quay-sentry", "fishing.leader: 0.30 mm; fishing.knot: loop", "pitch while sinking < -45°")]
    [InlineData("quay-sentry", "fishing.leader: 0.30 mm; fishing.knot: cinched", "pitch while sinking > 20°")]
    [InlineData("tollgate-rudd", "", "lean < 30° and rides as intended < 80 %")]
    [InlineData("breakwater-chub-brass", "", "mass with held water > 2.5 g and sink rate < 0.5 m/s")]
    [InlineData("breakwater-chub-lean", "", "mass with held water < 1.1 g and sink rate > 0.5 m/s")]
    public void Demonstrations_OfThePlan_DoWhatItSays(string file, string changes, string fact)
    {
        RecipeDraft draft = RecipeDraft.Parse(Repo.Recipe($"recipes/{file}.fly.yaml")!).Value!;
        foreach (string[] change in changes.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(c => c.Split(": ", 2)))
            draft = draft.With(change[0], change[1]);
        Condition condition = ConditionParser.Parse(fact, new ConditionScope(true, false, null, false, [], [])).Condition!;

        Assert.True(condition.Holds(new ConditionFacts(new FlyFigures(RecipeParser.Parse(draft.ToText()).Value!), null)), $"{file} {changes}: {fact}");
    }

    [Fact]
    public void Lessons_Table_IsWhatTheyMeasure()
    {
        using CourseFolder course = new(Repo.Lessons);
        string expected = string.Concat(course.Current.Lessons.Select(l => (Lesson: l, Measure: LessonMeasure.Of(l))).Select(m => string.Create(
            CultureInfo.InvariantCulture,
            $"| {m.Lesson.Number} | {m.Lesson.Title} | {m.Lesson.Minutes} | {m.Measure.Exercises} | {m.Measure.PracticeSets} | {m.Measure.Grade:F0} "
                + $"| {m.Measure.WordsPerSentence:F0} |\n")));

        Assert.True(Text.Contains(expected, StringComparison.Ordinal), "The table of lessons in docs/course-plan.md should be:\n" + expected);
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

    // Whole pieces, turns of wire, dressing to the next 0.05 g; nothing where none is needed.
    private static string Amount(IEnumerable<Supply> some) =>
        some.FirstOrDefault() is { } s ? Amount(new Packets { SparePieces = 0, Waste = 0 }.WithSpares(s)) : "";

    private static string Amount(Supply s) => s.Kind switch
    {
        SupplyKind.Wire => FormattableString.Invariant($"{s.Turns} turns"),
        SupplyKind.Dressing => FormattableString.Invariant($"{s.MassKg * 1e3:0.00} g"),
        _ => s.Pieces.ToString(CultureInfo.InvariantCulture),
    };

    [GeneratedRegex(@"^\| (?<evening>[1-8]) \| (?<lessons>[0-9]+(?:, [0-9]+)*) \|", RegexOptions.Multiline)]
    private static partial Regex Overview();
}
