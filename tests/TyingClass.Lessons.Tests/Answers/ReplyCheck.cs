using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Compose;
using TyingClass.Lessons.Kinds.Explain;
using TyingClass.Lessons.Kinds.FindTheSlip;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Kinds.Repair;
using TyingClass.Lessons.Kinds.Sort;
using TyingClass.Lessons.Kinds.TubTest;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Answers;

/// <summary>The sentence that stands first answers what was asked, in the question's own words.</summary>
internal static partial class ReplyCheck
{
    private const int MostWords = 19;
    private const int MostFigures = 2;

    public static void Answers(Exercise exercise, string text, GradeResult grade)
    {
        string? reply = grade.Feedback!.Reply;
        Assert.NotNull(reply);
        Assert.EndsWith(".", reply, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", reply, StringComparison.Ordinal);
        Assert.True(reply.Split(' ').Length <= MostWords, $"{reply.Split(' ').Length} words: {reply}");
        Assert.True(Figure().Count(reply) <= MostFigures, $"More than {MostFigures} figures: {reply}");
        switch (exercise.Task)
        {
            case PredictTask task:
                Predicted(task.Question, Key(grade), reply);
                break;
            case MeasureTask task:
                Measured(task, grade, reply);
                break;
            case SortTask:
                if (grade.Passed) Assert.StartsWith("Right, ", reply, StringComparison.Ordinal);
                else Assert.Matches("backward|the wrong way round", reply);
                break;
            case FindTheSlipTask:
                Slipped(SlipAnswer.Read(text)!.Step!.Value, grade, reply);
                break;
            case RepairTask or ComposeTask:
                Reached(grade, reply);
                break;
            case ExplainTask:
                Assert.Matches("^(Yours speaks of|The model answer speaks of|Your explanation is kept)", reply);
                break;
            case TubTestTask:
                Assert.Contains(grade.Observations.Length == 1 ? "You saw " : "things you saw", reply, StringComparison.Ordinal);
                break;
            default:
                Assert.Fail($"No reply is known for {exercise.Kind.Word}.");
                break;
        }
    }

    private static void Predicted(Question question, string key, string reply)
    {
        string outcome = (question, key) switch
        {
            (WhichWayUp, WhichWayUp.OnItsSide) => "leaning|on its side",
            (WhichWayUp, WhichWayUp.Undecided) => "There is no telling which way up",
            (WhereTheNosePoints, WhereTheNosePoints.Up) => "nose points up",
            (WhereTheNosePoints, WhereTheNosePoints.Level) => "nose stays level",
            (WhereTheNosePoints, WhereTheNosePoints.Down) => "nose points down",
            (ChangeIn, _) => "^It " + key["it ".Length..],
            (WhichHasMore, WhichHasMore.Same) => "much the same",
            (WhichHasMore, _) => "^" + Regex.Escape(key),
            (OwnChoices, _) => "“" + Regex.Escape(key.TrimEnd('.')) + "”",
            _ => Regex.Escape(key),
        };
        Assert.Matches(outcome, reply);
    }

    // As the table of goals has it: what was said, or what it is.
    private static string Key(GradeResult grade)
    {
        string told = grade.Feedback!.Goals[^1].Reached;
        return Told().Match(told) is { Success: true } match ? match.Groups["key"].Value : throw new ArgumentException($"No outcome is told in: {told}");
    }

    private static void Measured(MeasureTask task, GradeResult grade, string reply)
    {
        Assert.Equal(grade.Passed, reply.StartsWith("Yes: ", StringComparison.Ordinal));
        QuantityQuery query = QuantityQuery.TryParse(task.Quantity, out QuantityQuery found, out string error) ? found : throw new ArgumentException(error);
        string key = query.Say(grade.Figures[0].Si, UnitSystem.Metric);
        if (grade.Passed) Assert.Contains(key, reply, StringComparison.Ordinal);
        else Assert.DoesNotMatch($@"(?<![\d.]){Regex.Escape(key)}(?!\p{{L}})", reply);
    }

    private static void Slipped(int step, GradeResult grade, string reply)
    {
        bool found = grade.Feedback!.Goals[0].Met;
        string said = string.Create(CultureInfo.InvariantCulture, $"step {step} {(found ? "is the slip" : "holds")}");
        Assert.Contains(said, reply, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(grade.Passed, reply.StartsWith("Yes, ", StringComparison.Ordinal));
    }

    private static void Reached(GradeResult grade, string reply)
    {
        Assert.Matches("goal|^What was asked is done, but", reply);
        bool all = reply.StartsWith("The goal is met", StringComparison.Ordinal) || reply.StartsWith("Both goals", StringComparison.Ordinal)
            || reply.StartsWith("All ", StringComparison.Ordinal);
        Assert.Equal(grade.Passed, all);
    }

    [GeneratedRegex(@"(?<![\p{L}\d.])(?<!step )[0-9]+(?:[./][0-9]+)?", RegexOptions.IgnoreCase)]
    private static partial Regex Figure();

    [GeneratedRegex("(?:; it is “(?<key>.+)”|^you said “(?<key>.+)”, and so it is)$")]
    private static partial Regex Told();
}
