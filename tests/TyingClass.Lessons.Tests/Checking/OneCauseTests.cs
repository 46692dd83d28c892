using System.Collections.Immutable;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

/// <summary>One slip of an author's hand is one error, at its line. What else the slip hides is judged once it is mended.</summary>
public sealed class OneCauseTests
{
    private const string First = """
        ---
        title: One
        summary: The first.
        concepts: [mass center]
        minutes: 3
        ---

        A text that links to [the second](/lessons/two), to [an exercise](/exercises/two-01) and to [its practice](/practice/keel-side).

        ```exercise
        id: one-01
        kind: measure
        title: M
        concepts: [mass center, keel side]
        prompt: How heavy?
        file: recipes/slate-minnow.fly.yaml
        quantity: mass
        tolerance: 0.03 g
        ```

        """;

    private const string Second = """
        ---
        title: Two
        summary: The second.
        concepts: [keel side]
        minutes: 5
        ---

        ```exercise
        id: two-01
        kind: repair
        title: R
        concepts: [keel side]
        prompt: Mend it.
        recipe:
          recipe: Plain Fry
          intent: point down
          hook:
            size: 8
          parts:
            - part: bead
              material: brass
              size: 2 mm
              at: 0 mm
          fishing:
            knot: loop
            speed: 0.4 m/s
        allow:
          - parts[0].size: 2 mm … 5 mm
        goals:
          - mass: at least 0.2 g
        misreadings:
          - when: mass falls
            say: A smaller bead is lighter.
        model answer:
          parts[0].size: 4 mm
        wrong answers:
          - answer:
              parts[0].size: 2.5 mm
            named: mass
        ```

        ```practice
        kind: measure
        title: P
        concepts: [keel side]
        prompt: How heavy?
        file: recipes/slate-minnow.fly.yaml
        quantity: mass
        tolerance: 0.05 g
        vary:
          - parts[0].size: 2.4 mm … 4 mm
          - parts[0].material: [brass, tungsten]
          - parts[2].mass: 0.03 g … 0.30 g
        ```

        """;

    [Fact]
    public void Check_NothingWrong_FindsNothing() => Assert.Empty(Errors(Second));

    [Theory]
    [InlineData("allow:", "alow:", 27, "Did you mean “allow”?")]
    [InlineData("goals:", "gaols:", 29, "Did you mean “goals”?")]
    [InlineData("model answer:", "model anser:", 34, "Did you mean “model answer”?")]
    [InlineData("title: R", "titel: R", 11, "Did you mean “title”?")]
    [InlineData("recipe:\n  recipe", "recpie:\n  recipe", 14, "Did you mean “recipe”?")]
    [InlineData("id: two-01", "id: tow-01", 9, "write “two-01” again")]
    [InlineData("kind: repair", "kind: repiar", 10, "Did you mean “repair”?")]
    [InlineData("kind: repair", "knid: repair", 10, "Did you mean “kind”?")]
    [InlineData("material: brass", "material: brss", 21, "brass")]
    [InlineData("hook:\n    size", "hook:\n    siez", 18, "Did you mean “size”?")]
    [InlineData("intent: point down", "intnet: point down", 16, "Did you mean “intent”?")]
    [InlineData("- part: bead", "- prat: bead", 20, "Did you mean “part”?")]
    [InlineData("      size: 2 mm", "      size: 2 mn", 22, "“mn” is not a unit of length")]
    [InlineData("intent: point down", "intent: pointdown", 16, "point down")]
    [InlineData("tolerance: 0.05 g", "tolernce: 0.05 g", 49, "Did you mean “tolerance”?")]
    [InlineData("vary:", "varry:", 50, "Did you mean “vary”?")]
    [InlineData("concepts: [keel side]\nminutes", "concept: [keel side]\nminutes", 4, "Did you mean “concepts”?")]
    [InlineData("summary:", "sumary:", 3, "Did you mean “summary”?")]
    [InlineData("minutes: 5", "minuts: 5", 5, "Did you mean “minutes”?")]
    [InlineData("minutes: 5", "minutes: seven", 5, "“minutes” must be a whole number")]
    [InlineData("summary: The second.", "summary: \"The second.", 3, "never closed")]
    [InlineData("    named: mass\n```", "    named: mass\n", 8, "This fence is never closed.")]
    [InlineData("  - when: mass falls", "  - when: mass fals", 32, "fals")]
    public void Check_OneSlip_IsOneErrorAtItsLine(string good, string bad, int line, string text)
    {
        Assert.Contains(good, Second, StringComparison.Ordinal);

        AuthorError error = Assert.Single(Errors(Second.Replace(good, bad, StringComparison.Ordinal)));

        Assert.Equal("02-two.md", error.File);
        Assert.Equal(line, error.Line);
        Assert.Contains(text, error.Text, StringComparison.Ordinal);
    }

    // The plan of its evening names the exercise too.
    [Theory]
    [InlineData("id: two-01", "id: tow-01", "write “two-01” again")]
    [InlineData("kind: repair", "kind: repiar", "Did you mean “repair”?")]
    [InlineData("minutes: 5", "minuts: 5", "Did you mean “minutes”?")]
    public void Check_OneSlipInALessonOfAPlannedEvening_IsOneError(string good, string bad, string text)
    {
        string planned = Second.Replace("minutes: 5", "evening: 2\nminutes: 5", StringComparison.Ordinal);
        const string Plans = "evenings:\n  - evening: 2\n    title: T\n    plan: P\n    in the room: [two-01]\n";
        Assert.Empty(Errors(planned, plans: Plans));

        AuthorError error = Assert.Single(Errors(planned.Replace(good, bad, StringComparison.Ordinal), plans: Plans));

        Assert.Equal("02-two.md", error.File);
        Assert.Contains(text, error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_PublishedIdThatNoFileHolds_IsStillMissedBesideABrokenLesson()
    {
        AuthorError[] errors = [.. Errors(Second.Replace("kind: repair", "kind: repiar", StringComparison.Ordinal), "one-01\ntwo-01\ngone-01\n")];

        Assert.Equal(2, errors.Length);
        Assert.Contains(errors, e => e.Text.Contains("“gone-01” was published and is gone", StringComparison.Ordinal));
    }

    private static ImmutableArray<AuthorError> Errors(string second, string ids = "one-01\ntwo-01\n", string? plans = null)
    {
        using TemporaryFolder folder = new();
        folder.Write("recipes/slate-minnow.fly.yaml", Repo.Recipe("recipes/slate-minnow.fly.yaml")!);
        folder.Write("01-one.md", First);
        folder.Write("02-two.md", second);
        folder.Write("exercise-ids.txt", ids);
        if (plans is not null) folder.Write("evenings.yaml", plans);
        return CourseChecker.Check(folder.Path).Errors;
    }
}
