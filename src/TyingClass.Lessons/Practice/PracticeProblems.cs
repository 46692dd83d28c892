using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Unicode;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Practice;

/// <summary>Draws practice problems. The same set, seed and level always give the same problem, so an address can be shared.</summary>
public static class PracticeProblems
{
    // A set whose ranges give fewer fair problems than one in this many draws is refused by check-lessons.
    private const int MostDraws = 60;

    // Degrees and cubes stay what they are, so that figures can be told in the reader's units.
    private static readonly HtmlEncoder Words = HtmlEncoder.Create(UnicodeRanges.All);

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
        if (!set.IsByLevel)
        {
            return Picked(set, seed) is not { } picked ? null
                : set.Kind.At(template.Task, level).Select(task => Varied(set, template with { Task = task }, picked.Variant))
                    .FirstOrDefault(problem => IsFair(set, problem)) is { } fair ? Told(fair) : null;
        }

        foreach (ExerciseTask task in set.Kind.At(template.Task, level))
        {
            if (Draw(set, template with { Task = task }, seed, level) is { } problem) return Told(problem);
        }

        return null;
    }

    /// <summary>How many of so many problems running differ in what is asked: in the figure that is the answer, or else in the fly.</summary>
    internal static int Different(PracticeSet set, int running) => set.IsByLevel
        ? Math.Min(running, set.Apart)
        : Enumerable.Range(1, running).Select(seed => Picked(set, seed)?.Mark).OfType<string>().Distinct().Count();

    /// <summary>
    /// Where no level chooses: a fly that differs from all before it in the set, the same at every level; one of them again where there is none.
    /// </summary>
    private static PracticePick? Picked(PracticeSet set, int seed) => set.Picks.GetOrAdd(seed, _ =>
    {
        HashSet<string> met = [];
        for (int earlier = seed - (seed - 1) % set.Apart; earlier < seed; earlier++)
        {
            if (Picked(set, earlier) is { } before) met.Add(before.Mark);
        }

        Exercise easy = set.Template with { Task = set.Kind.At(set.Template.Task, 0).Last() };
        PracticePick? again = null;
        foreach (ImmutableArray<(string Path, string Value)> variant in set.Grid.Of(seed, MostDraws).Concat(set.Grid.Any(seed, MostDraws)))
        {
            Exercise candidate = Varied(set, easy, variant);
            string mark = set.Kind.Figure(candidate) ?? candidate.RecipeText + candidate.Task.ChangedRecipe;
            if (met.Contains(mark) && again is not null || !IsFair(set, candidate)) continue;
            if (!met.Contains(mark)) return new PracticePick(variant, mark);
            again = new PracticePick(variant, mark);
        }

        return again;
    });

    private static Exercise? Draw(PracticeSet set, Exercise template, int seed, double level)
    {
        double wanted = Math.Log(PracticeDifficulty.WantedSpreads(level));
        (Exercise? best, double off, int fair) = (null, double.PositiveInfinity, 0);
        foreach (ImmutableArray<(string Path, string Value)> variant in set.Grid.Of(seed, MostDraws))
        {
            Exercise candidate = Varied(set, template, variant);
            if (!IsFair(set, candidate)) continue;
            if (PracticeDifficulty.Spreads(set.Kind, candidate) is not { } spreads) return candidate;
            double miss = Math.Abs(Math.Log(Math.Max(spreads, 1e-3)) - wanted);
            if (miss < off) (best, off) = (candidate, miss);
            if (++fair == Choice) break;
        }

        return best;
    }

    private static Exercise Varied(PracticeSet set, Exercise template, ImmutableArray<(string Path, string Value)> variant)
    {
        RecipeDraft draft =
            RecipeDraft.Parse(set.Template.RecipeText!).Value ?? throw new InvalidOperationException("The recipe was checked when its lesson was loaded.");
        foreach ((string path, string value) in variant.Where(v => !PracticeSet.IsOfChange(v.Path))) draft = draft.With(path, value);
        ExerciseTask task = template.Task.Change is not { } change ? template.Task : template.Task.With(change.On(draft,
            variant.Where(v => PracticeSet.IsOfChange(v.Path)).ToDictionary(v => v.Path[PracticeSet.OfChange.Length..], v => v.Value)));
        return template with { RecipeText = draft.ToText(), Task = task };
    }

    // What is done to the fly is drawn too, so no author can have written it down.
    private static Exercise Told(Exercise problem) => problem.Task.Change is not { } change ? problem : problem with
    {
        PromptHtml = $"{problem.PromptHtml}<p>{Words.Encode(problem.Task.Told(problem, change))}</p>",
    };

    // The change must leave a fly, and another one.
    private static bool IsFair(PracticeSet set, Exercise candidate) =>
        RecipeParser.Parse(candidate.RecipeText!).Value is { } given
        && (candidate.Task.ChangedRecipe is not { } changed || (changed != candidate.RecipeText && RecipeParser.Parse(changed).Value is not null))
        && set.Kind.IsFair(candidate, given);
}
