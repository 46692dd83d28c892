using System.Collections.Concurrent;
using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Demo;

/// <param name="FailedBefore">Attempts of this student that failed before: they open hints.</param>
internal sealed record PlannedAttempt(string PersonId, Exercise Exercise, string Answer, int FailedBefore, DateTimeOffset At);

/// <summary>Six weeks of attempts: planned from a seed, then graded by the real grader, each distinct answer once.</summary>
internal static class DemoAttempts
{
    // What this class has in common, so that there is something to find: most of them read this exercise alike, try it again and leave it so.
    private const string SharedExercise = "bead-08";
    private const double SeesThrough = 0.88;

    // What takes longer to answer is harder, and what a person marks cannot fail; an estimate, only there to make a register look like one.
    private static double Hardness(ExerciseKind kind) => kind.IsMarkedByPerson ? 0 : Math.Min(0.35, 0.07 * kind.Minutes);

    /// <param name="evenings">When each of the evenings held so far began.</param>
    public static IEnumerable<PlannedAttempt> Plan(Course course, IReadOnlyDictionary<int, DateTimeOffset> evenings,
        IReadOnlyList<(string Id, DemoStudent Student)> students, DateTimeOffset now)
    {
        foreach (((string id, DemoStudent student), int s) in students.Select((p, i) => (p, i)))
        {
            Random chance = new(7919 * (s + 1));
            foreach (Lesson lesson in course.Lessons.Where(l => l.Evening is { } e && evenings.ContainsKey(e)))
            {
                DateTimeOffset at = evenings[lesson.Evening!.Value].AddHours(-70 + 66 * chance.NextDouble());
                foreach (Exercise exercise in lesson.Exercises)
                {
                    if (chance.NextDouble() > student.Diligence || (exercise.Kind.IsAtTheBench && chance.NextDouble() > 0.6)) continue;
                    foreach (PlannedAttempt attempt in Tries(id, student, exercise, at = at.AddMinutes(4 + 25 * chance.NextDouble()), chance)
                        .TakeWhile(a => a.At < now)) yield return attempt;
                }
            }
        }
    }

    /// <returns>By plan, in its order; what the grader would not take as an answer is left out.</returns>
    public static ImmutableArray<Attempt> Grade(IReadOnlyList<PlannedAttempt> plan)
    {
        ConcurrentDictionary<(string, string, int), GradeResult> graded = new();
        Parallel.ForEach(plan.DistinctBy(Key), p => graded[Key(p)] = Grader.Grade(p.Exercise, p.Answer, p.FailedBefore));
        Dictionary<(string, string), int> numbers = [];
        ImmutableArray<Attempt>.Builder attempts = ImmutableArray.CreateBuilder<Attempt>();
        foreach (PlannedAttempt p in plan)
        {
            if (graded[Key(p)] is not { IsAttempt: true } grade) continue;
            int number = numbers[(p.PersonId, p.Exercise.Id)] = numbers.GetValueOrDefault((p.PersonId, p.Exercise.Id)) + 1;
            attempts.Add(Attempt.Of(p.PersonId, p.Exercise.Id, number, p.At, p.Answer, grade) with { Id = $"demo-{attempts.Count:x6}" });
        }

        return attempts.ToImmutable();
    }

    // Never more failures than the author has hints: past them the adviser would search for minutes on end.
    private static IEnumerable<PlannedAttempt> Tries(string personId, DemoStudent student, Exercise exercise, DateTimeOffset at, Random chance)
    {
        DemoAnswers answers = new(exercise);
        if (exercise.Id == SharedExercise && student.Skill < SeesThrough && answers.Misread is { } misread)
        {
            int tries = 1 + chance.Next(3);
            for (int failed = 0; failed < tries; failed++) yield return new PlannedAttempt(personId, exercise, misread, failed, at.AddMinutes(11 * failed));
            yield break;
        }

        bool neverPasses = student.IsStuck && exercise.Kind.AnswerIsRecipe && chance.NextDouble() < 0.5;
        int most = Math.Max(1, exercise.Hints.Length);
        for (int failed = 0; failed < most; failed++)
        {
            bool right = !neverPasses && chance.NextDouble() < student.Skill - Hardness(exercise.Kind) + 0.15 * failed;
            bool unmarked = exercise.Kind.IsMarkedByPerson;
            if ((right || unmarked ? answers.Right(chance, failed) : answers.Wrong(chance, failed)) is not { } answer) yield break;
            yield return new PlannedAttempt(personId, exercise, answer, failed, at);
            if (right || unmarked) yield break;
            // Some give up for the week; those who are stuck keep trying.
            if (!neverPasses && chance.NextDouble() < 0.12) yield break;
            at = at.AddMinutes(3 + 40 * chance.NextDouble());
        }

        if (!neverPasses && answers.Right(chance, most) is { } atLast)
            yield return new PlannedAttempt(personId, exercise, atLast, Math.Max(0, most), at.AddHours(20));
    }

    private static (string, string, int) Key(PlannedAttempt p) => (p.Exercise.Id, p.Answer, p.FailedBefore);
}
