using System.Diagnostics;
using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Text;

namespace TyingClass.Benchmarks;

/// <summary>
/// What grading an answer costs beyond the engine: every exercise of the course, its right answer and its wrong ones, in processor time of this process, which
/// other work on the machine does not add to. What the engine needs is one full report of each fly the answer is about.
/// </summary>
internal static class AnswerLoad
{
    /// <param name="only">The exercises to ask; none for all.</param>
    public static void Print(int rounds, IReadOnlyCollection<string> only)
    {
        using CourseFolder folder = new(DoubtLoad.Lessons());
        foreach (string unknown in only.Except(folder.Current.Exercises.Select(e => e.Id))) Console.WriteLine($"no exercise is called {unknown}");
        List<(string Kind, string What, double EngineMs, double GradeMs)> rows = [];
        foreach (Exercise exercise in folder.Current.Exercises.Where(e => only.Count == 0 || only.Contains(e.Id)))
        {
            string? right = exercise.Kind.RightAnswer(exercise);
            IEnumerable<string> wrong = exercise.WrongAnswers.Select(w => w.Answer).Concat(exercise.Kind.WrongAnswers(exercise, right));
            foreach (string answer in wrong.Prepend(right ?? "").Where(a => a.Length > 0).Distinct())
            {
                string[] flies =
                [
                    .. new[] { exercise.RecipeText }.Concat(exercise.Task.OtherRecipes).Append(exercise.Kind.AnswerIsRecipe ? answer : null).OfType<string>()
                        .Distinct(),
                ];
                double engine = flies.Sum(fly => Least(rounds, () => Report(fly)));
                double grade = Least(rounds, () => Grader.Grade(exercise, answer, 0));
                rows.Add((exercise.Kind.Word, $"{exercise.Id}: {(answer == right ? "right" : "wrong")}", engine, grade));
                // Once the author's hints are used up the adviser searches.
                if (exercise.Kind.AnswerIsRecipe && answer != right)
                    rows.Add(("adviser", $"{exercise.Id}: last hint", engine, Least(rounds, () => Grader.Grade(exercise, answer, exercise.Hints.Length))));
            }
        }

        Console.WriteLine($"{rows.Count} answers; milliseconds of processor time, the least of {rounds}");
        foreach (var kind in rows.GroupBy(r => r.Kind))
        {
            double[] over = [.. kind.Select(r => r.GradeMs - r.EngineMs).Order()];
            var worst = kind.MaxBy(r => r.GradeMs - r.EngineMs);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{kind.Key,-14} {over.Length,4} answers   over the engine: median {over[over.Length / 2],7:F0}   longest {over[^1],7:F0} ({worst.What}, "
                    + $"engine {worst.EngineMs:F0}, graded {worst.GradeMs:F0})"));
        }

        int late = rows.Count(r => r.GradeMs - r.EngineMs > 300);
        Console.WriteLine($"over 300 ms more than the engine needs: {late} of {rows.Count}");
        // Of exercises asked for by name every answer: the worst eight of all would hide all but one of them.
        foreach (var row in only.Count == 0 ? rows.OrderByDescending(r => r.GradeMs - r.EngineMs).Take(8) : rows)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {row.What,-24} engine {row.EngineMs,6:F0}   graded {row.GradeMs,6:F0}"));
    }

    private static void Report(string fly)
    {
        if (RecipeParser.Parse(fly).Value is not { } recipe) return;
        try
        {
            BuiltFly built = FlyBuilder.Build(recipe);
            BalanceEngine.Report(built.Body, built.Conditions);
        }
        catch (ArgumentException)
        {
            // One of the wrong answers is no fly.
        }
    }

    private static double Least(int rounds, Action work)
    {
        double least = double.PositiveInfinity;
        using Process process = Process.GetCurrentProcess();
        for (int i = 0; i < rounds; i++)
        {
            process.Refresh();
            TimeSpan before = process.TotalProcessorTime;
            work();
            process.Refresh();
            least = Math.Min(least, (process.TotalProcessorTime - before).TotalMilliseconds);
        }

        return least;
    }
}
