using System.Text.Json;
using Xunit;

namespace TyingClass.CommandLine.Tests;

public sealed class GradeVerbTests : IDisposable
{
    private const string Darter = """
        recipe: Reed Darter
        intent: point up
        hook:
          size: 6
          shank: 2XL
          eye: straight
        parts:
          - part: dumbbell eyes
            material: brass
            size: 4 mm
            at: 2 mm
            side: under
        fishing:
          knot: loop
          speed: 0.4 m/s
        """;

    // As it was given it would be no attempt.
    private static readonly string Slid = Darter.Replace("at: 2 mm", "at: 2.4 mm", StringComparison.Ordinal);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass");

    public GradeVerbTests()
    {
        string recipe = string.Join('\n', Darter.Split('\n').Select(line => "  " + line));
        Write("lessons/01-a.md", $"""
            ---
            title: T
            summary: S
            concepts: [keel side]
            minutes: 4
            ---

            ```exercise
            id: keel-01
            kind: repair
            title: The darter that rolled over
            concepts: [keel side]
            prompt: Mend it.
            recipe:
            {recipe}
            allow:
              - parts[0].side
              - parts[0].at: 2 mm … 3 mm
            goals:
              - rides as intended: at least 90 %
            hints: [Look at the eyes.]
            model answer:
              parts[0].side: top
            ```

            ```exercise
            id: mass-01
            kind: measure
            title: On the scale
            concepts: [keel side]
            prompt: What does it weigh?
            recipe:
            {recipe}
            quantity: mass
            tolerance: 0.05 g
            ```

            ```exercise
            id: why-01
            kind: explain
            title: Why
            concepts: [keel side]
            prompt: Why?
            model answer: Because the eyes are below.
            ```
            """);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Grade_RecipeThatPasses_ExitsZero()
    {
        CommandRun run = Grade("keel-01", Darter.Replace("side: under", "side: top", StringComparison.Ordinal));

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.StartsWith("The darter that rolled over: passed", run.Output, StringComparison.Ordinal);
        Assert.Contains("rides point up as you meant it", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_RecipeThatFallsShort_ExitsOneAndSaysTheFourThingsInOrder()
    {
        CommandRun run = Grade("keel-01", Slid);

        Assert.Equal((1, ""), (run.ExitCode, run.Errors));
        // The reply at the head says some of it in short.
        int[] places = [
            .. new[] { "not yet", "Expect it to flip", "not met", "stays 0 %", "Look at the eyes." }.Select(
                s => run.Output.LastIndexOf(s, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Grade_TheFlyAsGiven_ExitsTwoAndIsNoAttempt()
    {
        CommandRun run = Grade("keel-01", Darter);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("still the fly that was given", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_ForbiddenChange_ExitsTwoWithItsPlace()
    {
        CommandRun run = Grade("keel-01", Darter.Replace("size: 4 mm", "size: 5 mm", StringComparison.Ordinal));

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("answer.txt:10:11: Your answer has the size of the dumbbell eyes 5 mm instead of 4 mm. That may not be changed", run.Errors,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_RecipeThatDoesNotParse_ExitsTwoWithEveryMistake()
    {
        CommandRun run =
            Grade("keel-01", Darter.Replace("size: 4 mm", "size: 4", StringComparison.Ordinal).Replace("knot: loop", "knot: bow", StringComparison.Ordinal));

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("answer.txt:10:", run.Errors, StringComparison.Ordinal);
        Assert.Contains("answer.txt:14:", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_NoNumber_ExitsTwo()
    {
        CommandRun run = Grade("mass-01", "quite heavy");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("answer.txt:1:1: ", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_Explanation_WaitsForAPersonAndExitsZero()
    {
        CommandRun run = Grade("why-01", "The eyes lie on the point side.");

        Assert.Equal(0, run.ExitCode);
        Assert.StartsWith("Why: for a person to read", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_Json_IsOneObjectWithTheNamesTheDocsPromise()
    {
        CommandRun run = Grade("keel-01", Slid, "--json");

        Assert.Equal(1, run.ExitCode);
        JsonElement grade = JsonDocument.Parse(run.Output).RootElement;
        Assert.Equal("keel-01", grade.GetProperty("exercise").GetString());
        Assert.False(grade.GetProperty("passed").GetBoolean());
        Assert.True(grade.GetProperty("isAttempt").GetBoolean());
        Assert.Equal("Look at the eyes.", grade.GetProperty("feedback").GetProperty("whereToLook").GetString());
        Assert.False(grade.GetProperty("feedback").GetProperty("goals")[0].GetProperty("met").GetBoolean());
    }

    [Fact]
    public void Grade_UnknownExercise_ExitsTwo()
    {
        CommandRun run = Grade("no-such-exercise", Darter);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("There is no exercise “no-such-exercise”", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_NoSuchFile_ExitsTwo()
    {
        CommandRun run = CommandRun.Of(_folder, "grade", "keel-01", "nowhere.txt");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("nowhere.txt:1:1: ", run.Errors, StringComparison.Ordinal);
    }

    private CommandRun Grade(string id, string answer, params string[] more)
    {
        Write("answer.txt", answer);
        return CommandRun.Of(_folder, ["grade", id, "answer.txt", .. more]);
    }

    private void Write(string name, string text)
    {
        string path = Path.Combine(_folder.FullName, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
