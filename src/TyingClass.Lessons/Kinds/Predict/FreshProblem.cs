using System.Collections.Concurrent;
using System.Collections.Immutable;
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
/// Which answer it has is drawn too: neither the answer just seen nor its opposite is worth a vote.
/// </summary>
public static class FreshProblem
{
    private const int MostDraws = 36;
    private const int MostKept = 512;

    // Enough to tell a clear fly from a close one while drawing; the one that is taken is held to the full rule.
    private static readonly ReportOptions Quick = ReportOptions.Default with { Flies = 400, SpeedsMS = [], SoakTimesS = [] };

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
        // Of a change or of two flies, any answer; else the one just seen or another one.
        string? wanted = task.Question is ChangeIn or WhichHasMore ? exercise.Choices[random.Next(exercise.Choices.Length)] : null;
        bool other = random.Next(3) > 0;
        for (int draw = 0; draw < MostDraws; draw++)
        {
            if (Varied(exercise, task, random, (number, draw)) is not { } candidate || TryKey(candidate) is not { } its) continue;
            // “No telling” is an answer to a fly that stands on the edge, not to one that came there by lot.
            if (its == WhichWayUp.Undecided && key != its) continue;
            // What cannot be had in half the draws is not waited for.
            bool fits = wanted is not null ? its == wanted : (its != key) == other;
            if (!fits && draw < MostDraws / 2) continue;
            if (candidate.Kind.KeyComplaint(candidate) is null) return candidate;
        }

        return null;
    }

    private static string? TryKey(Exercise candidate)
    {
        try
        {
            AskedFlies flies = AskedFlies.Of(candidate, Quick);
            return PredictKey.Of(candidate, flies) is { } key && PredictChecker.MayBeClear(candidate, flies, key) && IsPlain(candidate, flies) ? key : null;
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    // Nobody has understood less who calls 29° and 28° different: what counts as the same is told by the same figure, and what counts as more is much more.
    private static bool IsPlain(Exercise candidate, AskedFlies flies)
    {
        if (((PredictTask)candidate.Task).Question is not ChangeIn) return true;
        QuantityQuery query = PredictKey.Query(candidate);
        (double? before, double? after) = (query.Of(flies.Fly), query.Of(flies.Other!));
        return Math.Abs(after - before ?? 0) >= FlyChange.Plain * query.Quantity.NoticeableSi
            || query.Say(before, UnitSystem.Metric) == query.Say(after, UnitSystem.Metric);
    }

    private static Exercise? Varied(Exercise exercise, PredictTask task, Random random, (int Number, int Draw) at)
    {
        if (RecipeDraft.Parse(exercise.RecipeText!).Value is not { } draft) return null;
        Recipe given = GivenFly.Of(exercise.RecipeText!);
        string name = given.Name;
        switch (task.Question)
        {
            case WhichHasMore more:
                {
                    (RecipeDraft a, RecipeDraft b) = FreshDressing.Two(draft, RecipeDraft.Parse(more.SecondRecipeText).Value!, random);
                    (string first, string second) = (a.ToText(), b.ToText());
                    if (!Parses(first) || !Parses(second)) return null;
                    return With(exercise, task with { Question = more with { SecondRecipeText = second } }, first,
                        ReasonOffer.WhichHasMore(PredictKey.Query(exercise).More(UnitSystem.Metric)));
                }

            case ChangeIn change:
                {
                    ImmutableArray<RecipeChange> changes = ChangeList.Between(given, GivenFly.Of(change.Change.ChangedRecipeText));
                    RecipeDraft dressed = FreshDressing.Vary(draft, random, [.. changes.Select(c => c.Path)]);
                    if (FreshChange.Draw(dressed, changes, random) is not var (before, after)) return null;
                    (string from, string to) = (Named(before, name, at.Number), Named(after, name, at.Number));
                    if (!Parses(from) || !Parses(to)) return null;
                    Reason reason = ChangeReason.Of(PredictKey.Query(exercise), new FlyFigures(GivenFly.Of(from)), new FlyFigures(GivenFly.Of(to)));
                    // One thing at a time, or the reason would be two.
                    return reason.Shares.Length != 1 ? null : With(exercise, task with { Question = new ChangeIn(new FlyChange(to, [])) }, from,
                        ReasonOffer.Fresh(name, at.Number, reason.Shares, ReasonOffer.WhatHappens(Phrase(task))));
                }

            case OwnChoices own when IsOfTheCast(exercise, own, given):
                {
                    // Metal cannot be weighed on a page: what it weighs dry is told, and stays about what it was. The dressing is another.
                    string text = Named(FreshDressing.Dressed(draft, random), name, at.Number);
                    if (!Parses(text)) return null;
                    FlyFigures fly = new(GivenFly.Of(text));
                    double dry = Mass(fly), was = Mass(new FlyFigures(given));
                    return Math.Abs(dry - was) > AlikeShare * was ? null
                        : With(exercise, task, text, ReasonOffer.FreshDressing(name, at.Number, dry, [.. Drinks(fly)]));
                }

            default:
                {
                    // What is like the first fly has its answer: the longer another is looked for, the less like it.
                    if (FreshDressing.One(draft, random, 1 + at.Draw / 6) is not { } other) return null;
                    string text = Named(other, name, at.Number);
                    string question = task.Question switch
                    {
                        WhichWayUp => ReasonOffer.WhichWayUp,
                        WhereTheNosePoints => ReasonOffer.Nose,
                        _ => ReasonOffer.WhichIsTrue,
                    };
                    return Parses(text) ? With(exercise, task, text, ReasonOffer.Fresh(name, at.Number, [], question)) : null;
                }
        }
    }

    // What a dry fly may differ by and still be "2 g".
    private const double AlikeShare = 0.08;

    private static bool IsOfTheCast(Exercise exercise, OwnChoices own, Recipe given) =>
        PredictKey.Asked(exercise, own, new FlyFigures(given)) is { IsEmpty: false } asked && asked.All(q => q.Quantity.Name == "mass with held water");

    private static double Mass(FlyFigures fly) => QuantityQuery.Known("mass").Of(fly) ?? 0;

    // What each part of the dressing takes up, of its own mass.
    private static IEnumerable<(string Part, double Times)> Drinks(FlyFigures fly) => fly.Body.Parts.Where(p => p.HeldWaterKg > 0)
        .Select(p => (p.Name, p.HeldWaterKg / p.Masses.Sum(m => m.MassKg)));

    private static Exercise With(Exercise exercise, PredictTask task, string recipe, string prompt) => exercise with
    {
        Task = task,
        RecipeText = recipe,
        PromptHtml = $"<p>{WebUtility.HtmlEncode(prompt)}</p>",
        Hints = [],
        Misreadings = [],
    };

    private static string Phrase(PredictTask task) => QuantityQuery.Known(task.Quantity!).Phrase(UnitSystem.Metric);

    private static string Named(RecipeDraft draft, string name, int number) => draft.With("recipe", ReasonOffer.Cousin(name, number)).ToText();

    private static bool Parses(string text) => RecipeParser.Parse(text).Success;
}
