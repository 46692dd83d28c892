using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;

namespace TyingClass.Benchmarks;

/// <summary>
/// Gives a filled class what a mentor works with: a pattern of two revisions for each third student, most of them asked about, half of those judged; two drops
/// in the tub and a comment for every student.
/// </summary>
public sealed class WorkSeed(ClassStore store, Course course)
{
    private const int OnePatternIn = 3;

    public void Fill(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        ImmutableArray<Person> people = store.Accounts.OfClass(room.Id);
        Person mentor = people.First(p => p.Role == Role.Mentor);
        (string Text, Recipe Recipe)[] flies =
        [
            .. course.Exercises.Select(e => e.RecipeText).OfType<string>().Distinct()
                .Select(t => (t, RecipeParser.Parse(t).Value)).Where(f => f.Value is not null).Select(f => (f.t, f.Value!)),
        ];
        foreach ((Person student, int i) in people.Where(p => p.Role == Role.Student).Select((p, i) => (p, i)))
        {
            (string text, Recipe recipe) = flies[i % flies.Length];
            Pattern? pattern = i % OnePatternIn == 0 ? Pattern(room, student, mentor, text, i / OnePatternIn) : null;
            for (int drop = 0; drop < 2; drop++) Drop(room, student, new TiedFly(
                recipe.Name, text, pattern is null ? FlySource.Text : FlySource.Pattern, pattern?.Id, pattern is null ? 0 : 1), recipe, drop);
            Exercise exercise = course.Exercises.ElementAt(i % course.Exercises.Count());
            store.Comments.Add(student.Id, mentor.Id, mentor.Label, exercise.Id, "Look at the row of the eyes in the ledger, then try once more.");
        }
    }

    private Pattern Pattern(ClassRoom room, Person student, Person mentor, string text, int number)
    {
        Pattern first = store.Patterns.Create(student.Id, string.Create(CultureInfo.InvariantCulture, $"Reed Darter {number + 1}"), text, "First try.");
        Pattern pattern = store.Patterns.Save(first.Id, student.Id, first.Revision, first.Name, text + "\n", "The same, tied tighter.")!.Current;
        if (number % 5 == 4) return pattern;
        Review asked = store.Reviews.Ask(pattern.Id, student.Id, room.Id, "Does it keel?")!;
        store.Reviews.AddComment(asked.Id, mentor.Id, CommentSubject.Whole, "", "Pull it through the tub five times and write down what it did.");
        if (number % 2 == 0) store.Reviews.Decide(asked.Id, mentor.Id, asked.Version, new ReviewDecision(number % 4 == 0, "As you tied it."));
        return pattern;
    }

    private void Drop(ClassRoom room, Person student, TiedFly fly, Recipe recipe, int number)
    {
        FlyForecast forecast = FlyForecast.Of(recipe, WetState.Soaked, 12);
        Seen seen = new()
        {
            Way = number == 0 ? SeenWay.PointUp : SeenWay.PointDown,
            MassKg = forecast.MassKg * (1.02 + (0.01 * number)),
            HangAngleRad = forecast.HangAngleRad,
            WaterC = 12,
        };
        store.BenchLog.Add(student.Id, room.Id, fly, seen, new Foreseen(
            forecast.HangAngleRad, forecast.Way, forecast.MassKg, forecast.SinkRateMS, BalanceEngine.Version), "In the kitchen sink.");
    }
}
