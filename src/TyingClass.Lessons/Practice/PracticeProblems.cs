using System.Globalization;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Practice;

/// <summary>Draws practice problems. The same set, seed and level always give the same problem, so an address can be shared.</summary>
public static class PracticeProblems
{
    // A set whose ranges give fewer fair problems than one in this many draws is refused by check-lessons.
    private const int MostDraws = 60;

    // Fair problems to choose the one of the right difficulty from.
    private const int Choice = 4;

    /// <summary>The problem of a seed, or null when none of the draws was fair.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="level">0 plain to 1 close; see <see cref="PracticeLevel"/>. Counted in hundredths, so that it fits an address.</param>
    public static Exercise? Draw(PracticeSet set, int seed, double level = PracticeLevel.Start)
    {
        ArgumentNullException.ThrowIfNull(set);
        int hundredths = PracticeLevel.Hundredths(level);
        level = hundredths / 100.0;
        Exercise template = set.Template with { Id = string.Create(CultureInfo.InvariantCulture, $"practice-{set.Slug}-{seed}-{hundredths}") };
        foreach (ExerciseTask task in set.Kind.At(template.Task, level))
        {
            if (Draw(set, template with { Task = task }, seed, level) is { } problem) return problem;
        }

        return null;
    }

    private static Exercise? Draw(PracticeSet set, Exercise template, int seed, double level)
    {
        // Neighboring seeds start the generator alike; spread out, they do not.
        Random random = new(unchecked((int)((uint)seed * 2654435769u)));
        double wanted = Math.Log(PracticeDifficulty.WantedSpreads(level));
        (Exercise? best, double off) = (null, double.PositiveInfinity);
        for (int draw = 0, fair = 0; draw < MostDraws && fair < Choice; draw++)
        {
            Exercise candidate = template with { RecipeText = Varied(set, random) };
            if (!IsFair(set, candidate)) continue;
            fair++;
            if (PracticeDifficulty.Spreads(set.Kind, candidate) is not { } spreads) return candidate;
            double miss = Math.Abs(Math.Log(Math.Max(spreads, 1e-3)) - wanted);
            if (miss < off) (best, off) = (candidate, miss);
        }

        return best;
    }

    private static string Varied(PracticeSet set, Random random)
    {
        RecipeDraft draft =
            RecipeDraft.Parse(set.Template.RecipeText!).Value ?? throw new InvalidOperationException("The recipe was checked when its lesson was loaded.");
        foreach (AllowedChange vary in set.Vary)
        {
            draft = draft.With(vary.Path, Value(vary, random));
        }

        return draft.ToText();
    }

    private static string Value(AllowedChange vary, Random random)
    {
        if (vary.Words.Length > 0) return vary.Words[random.Next(vary.Words.Length)];
        string key = vary.Path[(vary.Path.LastIndexOf('.') + 1)..];
        if (!ValueRule.TryRead(vary.LowText, key, out double low) || !ValueRule.TryRead(vary.HighText, key, out double high))
            throw new InvalidOperationException("The range was checked when its lesson was loaded.");

        // Twenty steps of the range, so that figures stay short enough to read.
        double si = low + (high - low) * random.Next(21) / 20;
        return ValueRule.DimensionOf(key) is { } dimension
            ? Units.Write(si, dimension)
            : Math.Round(si).ToString(CultureInfo.InvariantCulture);
    }

    private static bool IsFair(PracticeSet set, Exercise candidate) =>
        RecipeParser.Parse(candidate.RecipeText!).Value is { } given && set.Kind.IsFair(candidate, given);
}
