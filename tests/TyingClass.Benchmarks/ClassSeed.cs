using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;

namespace TyingClass.Benchmarks;

/// <summary>
/// Fills a class with invented students whose attempts carry real feedback: each exercise is graded once wrong and once right, and the two are dealt out.
/// </summary>
public sealed class ClassSeed(ClassStore store, Course course, TimeProvider time, int seed = 1)
{
    private static readonly string[] Names =
        ["Wren", "Heron", "Otter", "Plover", "Sedge", "Teal", "Alder", "Rowan", "Bracken", "Linnet", "Martin", "Swift", "Fern", "Hazel", "Merlin", "Osprey",
        "Petrel", "Sorrel", "Tansy", "Yarrow"];

    private readonly Random _random = new(seed);
    private readonly Dictionary<string, (GradeResult? Wrong, GradeResult? Right)> _grades = [];

    /// <param name="attemptsEach">At every exercise by every student; null for as many as it takes, and not at all.</param>
    public ImmutableArray<Person> Fill(ClassRoom room, int students, string passphraseHash, int? attemptsEach = null)
    {
        ArgumentNullException.ThrowIfNull(room);
        ImmutableArray<Person> people =
            [.. Enumerable.Range(0, students).Select(i => store.Accounts.Add(room.Id, i == 3 ? Role.Mentor : Role.Student, Name(i), passphraseHash).Person!)];
        foreach (Person person in people) store.Attempts.AddKept([.. AttemptsOf(person, skill: 0.25 + (0.6 * _random.NextDouble()), attemptsEach)]);
        return people;
    }

    private static string Name(int i) =>
        i < Names.Length ? Names[i] : string.Create(CultureInfo.InvariantCulture, $"{Names[i % Names.Length]} {(i / Names.Length) + 1}");

    private IEnumerable<Attempt> AttemptsOf(Person person, double skill, int? attemptsEach)
    {
        int done = attemptsEach is null ? _random.Next(course.Exercises.Count() / 4, course.Exercises.Count()) : course.Exercises.Count();
        DateTimeOffset at = time.GetUtcNow() - TimeSpan.FromDays(42);
        TimeSpan step = TimeSpan.FromDays(41) / Math.Max(1, done);
        foreach (Exercise exercise in course.Exercises.Take(done))
        {
            at += step;
            (GradeResult? wrong, GradeResult? right) = GradesOf(exercise);
            // With a fixed number of attempts everyone would be done with everything: so many are not, each with some.
            bool staysOpen = _random.NextDouble() < (1 - skill) / 3;
            for (int number = 1; number <= (attemptsEach ?? 8); number++)
            {
                bool passes = attemptsEach is { } all ? number == all && !staysOpen : _random.NextDouble() < skill;
                if ((passes ? right ?? wrong : wrong ?? right) is not { } grade) break;
                yield return Make(person, exercise, number, at + TimeSpan.FromMinutes(4 * number), grade, passes);
                if (attemptsEach is null && (grade.Passed || grade.AwaitsReview || _random.NextDouble() < 0.1)) break;
            }
        }
    }

    private (GradeResult? Wrong, GradeResult? Right) GradesOf(Exercise exercise)
    {
        if (_grades.TryGetValue(exercise.Id, out (GradeResult?, GradeResult?) known)) return known;
        GradeResult? right = Graded(exercise, exercise.ModelAnswer);
        GradeResult? wrong = Graded(exercise, exercise.WrongAnswers.FirstOrDefault()?.Answer ?? exercise.RecipeText);
        return _grades[exercise.Id] = (wrong, right);
    }

    // After a wrong vote a prediction takes no second one, only a reason and a fresh fly: there the first vote is dealt out.
    private static GradeResult? Graded(Exercise exercise, string? answer) => answer is null ? null
        : new[] { 1, 0 }.Select(failed => Grader.Grade(exercise, answer, failed)).FirstOrDefault(g => g.IsAttempt);

    private static Attempt Make(Person person, Exercise exercise, int number, DateTimeOffset at, GradeResult grade, bool right) => new()
    {
        Id = Guid.NewGuid().ToString("N")[..20],
        PersonId = person.Id,
        ExerciseId = exercise.Id,
        Number = number,
        At = at,
        AnswerText = (right ? exercise.ModelAnswer : exercise.WrongAnswers.FirstOrDefault()?.Answer ?? exercise.RecipeText) ?? "",
        EngineVersion = grade.EngineVersion,
        ExerciseVersion = grade.ExerciseVersion,
        Passed = grade.Passed,
        AwaitsReview = grade.AwaitsReview,
        Feedback = grade.Feedback,
        GradedFigures = grade.Figures,
        Observations = grade.Observations,
        Figures = grade.Report is null ? [] : Figures.Of(grade.Report),
    };
}
