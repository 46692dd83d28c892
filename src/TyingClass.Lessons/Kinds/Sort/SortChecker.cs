using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;

namespace TyingClass.Lessons.Kinds.Sort;

/// <summary>Whether flies tied alike would keep the order.</summary>
internal static class SortChecker
{
    public static string? KeyComplaint(Exercise exercise)
    {
        SortTask task = (SortTask)exercise.Task;
        QuantityQuery query = task.Query;
        Dictionary<string, FlyFigures> flies = task.Items.ToDictionary(i => i.Name, i => new FlyFigures(GivenFly.Of(i.RecipeText)));
        Dictionary<string, double?> values = flies.ToDictionary(f => f.Key, f => query.Of(f.Value));
        if (values.FirstOrDefault(v => v.Value is null) is { Key: { } none }) return $"The engine has no {query.Name} for {none}.";
        ImmutableArray<string> key = SortGrader.Key(task, values);
        Dictionary<string, double?[]> tied = flies.ToDictionary(f => f.Key,
            f => (double?[])[.. TiedFlies.Of(f.Value.Body, TyingAccuracy.Practiced, KeyClearance.Flies).Select(b => query.Of(f.Value.Tied(b, null)))]);
        for (int i = 1; i < key.Length; i++)
        {
            double?[] a = tied[key[i - 1]], b = tied[key[i]];
            int agree = Enumerable.Range(0, KeyClearance.Flies)
                .Count(j => task.LargestFirst ? a[j] > b[KeyClearance.Flies - 1 - j] : a[j] < b[KeyClearance.Flies - 1 - j]);
            if (!KeyClearance.Enough(agree))
                return $"{key[i - 1]} and {key[i]} are too near each other: only {agree} of {KeyClearance.Flies} pairs tied alike keep this order.";
        }

        return Doubted(task, key, flies);
    }

    private static string? Doubted(SortTask task, ImmutableArray<string> key, Dictionary<string, FlyFigures> flies)
    {
        Dictionary<string, double?[]> drawn =
            flies.ToDictionary(f => f.Key, f => (double?[])[.. DrawnFlies.Of(f.Value).Select(d => d is null ? null : task.Query.Of(d))]);
        return Enumerable.Range(1, key.Length - 1).Select(i => KeyClearance.ModelComplaint(
            drawn[key[i - 1]].Zip(drawn[key[i]], (a, b) => (bool?)(task.LargestFirst ? a > b : a < b)), $"{key[i - 1]} comes before {key[i]}"))
            .FirstOrDefault(c => c is not null);
    }
}
