using System.Globalization;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Practice;

/// <summary>Draws practice problems. The same set and seed always give the same problem.</summary>
public static class PracticeProblems
{
    // A set whose ranges give fewer fair problems than one in this many draws is refused by check-lessons.
    private const int MostDraws = 60;

    /// <summary>The problem of a seed, or null when none of the draws was fair.</summary>
    public static Exercise? Draw(PracticeSet set, int seed)
    {
        ArgumentNullException.ThrowIfNull(set);
        Random random = new(seed);
        for (int draw = 0; draw < MostDraws; draw++)
        {
            Exercise candidate = set.Template with
            {
                Id = string.Create(CultureInfo.InvariantCulture, $"practice-{set.Concept.Replace(' ', '-')}-{seed}"),
                RecipeText = Varied(set, random),
            };
            if (candidate.RecipeText is { } text && RecipeParser.Parse(text).Success && IsFair(candidate)) return candidate;
        }

        return null;
    }

    private static string? Varied(PracticeSet set, Random random)
    {
        RecipeDraft? draft = RecipeDraft.Parse(set.Template.RecipeText!).Value;
        foreach (AllowedChange vary in set.Vary)
        {
            draft = draft?.With(vary.Path, Value(vary, random));
        }

        return draft?.ToText();
    }

    private static string Value(AllowedChange vary, Random random)
    {
        if (vary.Words.Length > 0) return vary.Words[random.Next(vary.Words.Length)];
        string key = vary.Path[(vary.Path.LastIndexOf('.') + 1)..];
        bool read = ValueRule.TryRead(vary.LowText, key, out double low) & ValueRule.TryRead(vary.HighText, key, out double high);
        if (!read) throw new InvalidOperationException("The range was checked when its lesson was loaded.");

        // Twenty steps of the range, so that figures stay short enough to read.
        double si = low + (high - low) * random.Next(21) / 20;
        return ValueRule.DimensionOf(key) is { } dimension
            ? Units.Format(si, dimension)
            : Math.Round(si).ToString(CultureInfo.InvariantCulture);
    }

    private static bool IsFair(Exercise candidate) => candidate.Kind == ExerciseKind.Repair
        ? NeedsRepair(candidate) && !LastHint.Proposals(candidate, AskedFlies.Given(candidate.RecipeText!)).IsEmpty
        : KeyClearance.Complaint(candidate) is null;

    private static bool NeedsRepair(Exercise candidate)
    {
        Recipe given = AskedFlies.Given(candidate.RecipeText!);
        return !GoalCheck.AllMet(candidate, new Quantities.FlyFigures(given, new Quantities.FlyFigures(given)));
    }
}
