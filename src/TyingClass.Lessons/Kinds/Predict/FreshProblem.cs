using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>
/// A fresh problem of the same idea: the same question of a fly tied otherwise, by seed, so that whoever has seen one answer cannot vote for what is left.
/// </summary>
public static class FreshProblem
{
    private const int MostDraws = 24;
    private const int MostKept = 512;

    // Enough to tell a clear fly from a close one while drawing; the one that is taken is held to the full rule.
    private static readonly ReportOptions Quick = ReportOptions.Default with { Flies = 400, SpeedsMS = [], SoakTimesS = [] };

    private static readonly double[] Factors = [0.75, 0.85, 1.2, 1.35];

    // Drawn for a page, for its answer and for its picture: the same each time.
    private static readonly ConcurrentDictionary<(string, string, int), Exercise?> Kept = new();

    /// <param name="number">From 1: how many answers of this student fell short before.</param>
    /// <returns>Null where none of the draws was clear.</returns>
    public static Exercise? Of(Exercise exercise, int number)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (Kept.Count > MostKept) Kept.Clear();
        return Kept.GetOrAdd((exercise.Id, exercise.Version, number), _ => Draw(exercise, number));
    }

    private static Exercise? Draw(Exercise exercise, int number)
    {
        PredictTask task = (PredictTask)exercise.Task;
        string? key = PredictKey.Of(exercise, AskedFlies.Of(exercise, Quick));
        Random random = new(StableSeed.Of(exercise.Id, number));
        Exercise? second = null;
        for (int draw = 0; draw < MostDraws; draw++)
        {
            if (Varied(exercise, task, random, draw) is not { } candidate) continue;
            string? its = TryKey(candidate);
            if (its is null) continue;
            // Half of the time the answer is another one than the one just seen.
            bool other = its != key;
            if (!other && (second is not null || draw < MostDraws / 2 && number % 2 == 1)) continue;
            if (candidate.Kind.KeyComplaint(candidate) is not null) continue;
            if (other || number % 2 == 0) return candidate;
            second = candidate;
        }

        return second;
    }

    private static string? TryKey(Exercise candidate)
    {
        try
        {
            return PredictKey.Of(candidate, AskedFlies.Of(candidate, Quick));
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static Exercise? Varied(Exercise exercise, PredictTask task, Random random, int draw)
    {
        if (RecipeDraft.Parse(exercise.RecipeText!).Value is not { } draft) return null;
        Recipe given = GivenFly.Of(exercise.RecipeText!);
        string name = given.Name;
        switch (task.Question)
        {
            case WhichHasMore more:
                {
                    RecipeDraft other = RecipeDraft.Parse(more.SecondRecipeText).Value!;
                    double factor = Factors[random.Next(Factors.Length)];
                    string first = Vary(draft, random, [], factor).ToText(), second = Vary(other, random, [], factor).ToText();
                    if (!Parses(first) || !Parses(second)) return null;
                    return With(exercise, task with { Question = more with { SecondRecipeText = second } }, first, ReasonOffer.WhichHasMore(Phrase(task)));
                }

            case ChangeIn change:
                {
                    ImmutableArray<RecipeChange> changes = ChangeList.Between(given, GivenFly.Of(change.ChangedRecipeText));
                    RecipeDraft before = Vary(draft, random, [.. changes.Select(c => c.Path)], null), after = before;
                    foreach (RecipeChange c in changes.Where(c => !c.IsWholePart)) after = after.With(c.Path, c.After);
                    (string from, string to) = (Named(before, name), Named(after, name));
                    // Undone, the same change does the opposite.
                    if (draw % 2 == 0) (from, to) = (to, from);
                    if (!Parses(from) || !Parses(to)) return null;
                    Reason reason = ChangeReason.Of(PredictKey.Query(exercise), new FlyFigures(GivenFly.Of(from)), new FlyFigures(GivenFly.Of(to)));
                    return With(exercise, task with { Question = new ChangeIn(to) }, from,
                        ReasonOffer.Fresh(name, reason.Shares, ReasonOffer.WhatHappens(Phrase(task))));
                }

            default:
                {
                    string text = Named(Turn(Vary(draft, random, [], null), random), name);
                    string question = task.Question switch
                    {
                        WhichWayUp => ReasonOffer.WhichWayUp,
                        WhereTheNosePoints => ReasonOffer.Nose,
                        _ => ReasonOffer.WhichIsTrue,
                    };
                    return Parses(text) ? With(exercise, task, text, ReasonOffer.Fresh(name, [], question)) : null;
                }
        }
    }

    private static Exercise With(Exercise exercise, PredictTask task, string recipe, string prompt) => exercise with
    {
        Task = task,
        RecipeText = recipe,
        PromptHtml = $"<p>{WebUtility.HtmlEncode(prompt)}</p>",
        Hints = [],
        Misreadings = [],
    };

    private static string Phrase(PredictTask task) => QuantityQuery.Known(task.Quantity!).Phrase(UnitSystem.Metric);

    private static string Named(RecipeDraft draft, string name) => draft.With("recipe", $"Cousin of the {name}").ToText();

    /// <summary>Every measure of the dressing a little larger or smaller, what the question changes left as it is.</summary>
    private static RecipeDraft Vary(RecipeDraft draft, Random random, ImmutableArray<string> fixedPaths, double? factor)
    {
        foreach ((string path, string value) in draft.Values.ToArray())
        {
            string key = path[(path.LastIndexOf('.') + 1)..];
            if (fixedPaths.Contains(path) || key is not ("size" or "mass" or "diameter" or "length" or "turns") || path == "hook.size") continue;
            if (factor is null && random.Next(3) == 0) continue;
            draft = draft.With(path, Scaled(key, value, factor ?? Factors[random.Next(Factors.Length)]) ?? value);
        }

        return draft;
    }

    private static string? Scaled(string key, string value, double factor)
    {
        if (key == "turns")
            return int.TryParse(value, CultureInfo.InvariantCulture, out int turns)
                ? Math.Max(1, (int)Math.Round(turns * factor)).ToString(CultureInfo.InvariantCulture) : null;
        Dimension dimension = key == "mass" ? Dimension.Mass : Dimension.Length;
        return Units.TryParse(value, dimension, out double si, out _) ? Units.Write(factor * si, dimension, 2) : null;
    }

    // Now and then a part changes sides: then the answer may be another.
    private static RecipeDraft Turn(RecipeDraft draft, Random random)
    {
        string[] sides = [.. draft.Values.Where(v => v.Key.EndsWith(".side", StringComparison.Ordinal) && v.Value is "top" or "under").Select(v => v.Key)];
        if (sides.Length == 0 || random.Next(2) == 0) return draft;
        string path = sides[random.Next(sides.Length)];
        return draft.With(path, draft.Get(path) == "top" ? "under" : "top");
    }

    private static bool Parses(string text) => RecipeParser.Parse(text).Success;
}
