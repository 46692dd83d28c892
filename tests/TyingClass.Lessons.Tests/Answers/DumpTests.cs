using System.Diagnostics;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Answers;

public sealed class DumpTests
{
    [Fact]
    public void Dump()
    {
        using CourseFolder folder = new(Repo.Lessons);
        using StreamWriter w = new("/tmp/why-dump.txt");
        foreach (Exercise e in folder.Current.Lessons.SelectMany(l => l.Exercises))
        {
            string? right = e.Kind.RightAnswer(e);
            string[] answers = [.. new[] { right }.OfType<string>(), .. e.WrongAnswers.Select(x => x.Answer), .. e.Kind.WrongAnswers(e, right)];
            foreach (string a in answers.Distinct())
            {
                long t = Stopwatch.GetTimestamp();
                GradeResult r;
                try { r = Grader.Grade(e, a, 0, GradeOptions.WithoutAdvice); } catch (Exception x) { w.WriteLine($"{e.Id} CRASH {x}"); continue; }
                double ms = Stopwatch.GetElapsedTime(t).TotalMilliseconds;
                w.WriteLine($"{e.Id} [{e.Kind.Word}] {(a == right ? "RIGHT" : "wrong")} {(r.Passed ? "pass" : r.IsAttempt ? "fail" : "REFUSED")} {ms:0} ms: {e.Title}: {(e.Kind.AnswerIsRecipe ? "" : a.Replace('\n', '|'))}");
                if (r.Feedback is { } f)
                {
                    w.WriteLine($"   1st: {f.First}");
                    w.WriteLine($"   why: {f.Why}");
                    w.WriteLine($"   goals: {string.Join("; ", f.Goals.Select(g => $"{g.Asked} -> {g.Reached} {g.Met}"))}");
                    w.WriteLine($"   mis: {f.Misreading}");
                }
                else w.WriteLine("   " + string.Join(" ", r.Problems.Select(p => p.Text)));
            }
        }
    }

    [Fact]
    public void Time()
    {
        using StreamWriter w = new("/tmp/why-time.txt");
        foreach (string name in new[] { "copper-loach", "ferry-ruffe", "culvert-eel", "drift-mullet", "reed-darter" })
        {
            var recipe = TyingClass.Recipes.Text.RecipeParser.Parse(Repo.Recipe($"recipes/{name}.fly.yaml")!).Value!;
            foreach (string q in new[] { "pitch while sinking", "sink rate", "keel height", "lean", "rides as intended", "pitch while sinking" })
            {
                var query = TyingClass.Lessons.Quantities.QuantityQuery.TryParse(q, out var qq, out _) ? qq : null!;
                TyingClass.Lessons.Quantities.FlyFigures fly = new(recipe);
                long t = Stopwatch.GetTimestamp();
                query.Of(fly);
                w.Write($"{name} {q}: {Stopwatch.GetElapsedTime(t).TotalMilliseconds:0.0} ms; lacking:");
                for (int i = 1; i < fly.Body.Parts.Length; i++)
                {
                    t = Stopwatch.GetTimestamp();
                    query.Of(fly.Tied(fly.Body with { Parts = fly.Body.Parts.RemoveAt(i) }, null));
                    w.Write($" {Stopwatch.GetElapsedTime(t).TotalMilliseconds:0.0}");
                }
                t = Stopwatch.GetTimestamp();
                query.Of(fly.Tied(fly.Body with { Parts = [fly.Body.Parts[0]] }, null));
                w.WriteLine($" bare {Stopwatch.GetElapsedTime(t).TotalMilliseconds:0.0}");
            }
            long t2 = Stopwatch.GetTimestamp();
            _ = new TyingClass.Lessons.Quantities.FlyFigures(recipe).Report;
            w.WriteLine($"{name} report {Stopwatch.GetElapsedTime(t2).TotalMilliseconds:0.0}");
        }
    }

    [Fact]
    public void Fresh()
    {
        using CourseFolder folder = new(Repo.Lessons);
        using StreamWriter w = new("/tmp/why-fresh.txt");
        foreach (Exercise e in folder.Current.Lessons.SelectMany(l => l.Exercises).Where(e => e.Kind.Word == "predict"))
        {
            long t = Stopwatch.GetTimestamp();
            var reasons = TyingClass.Lessons.Kinds.Predict.OfferedReasons.Of(e);
            w.WriteLine($"{e.Id} {e.Title} key {e.Kind.RightAnswer(e)}; reasons {(reasons is null ? "NONE" : string.Join(" | ", reasons.Said) + " right " + reasons.Right)} {Stopwatch.GetElapsedTime(t).TotalMilliseconds:0} ms");
            for (int n = 1; n <= 2; n++)
            {
                t = Stopwatch.GetTimestamp();
                Exercise? f = TyingClass.Lessons.Kinds.Predict.FreshProblem.Of(e, n);
                double ms = Stopwatch.GetElapsedTime(t).TotalMilliseconds;
                w.WriteLine(f is null ? $"   {n}: NONE {ms:0} ms" : $"   {n}: {ms:0} ms key {f.Kind.RightAnswer(f)}; {f.PromptHtml}");
            }
        }
    }
}
