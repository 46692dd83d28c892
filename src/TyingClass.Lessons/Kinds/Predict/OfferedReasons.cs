using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>
/// Reasons why a fly did what it did, one of which holds: the author's own, in the lesson's words; else three parts of it, one of which the engine finds to
/// have the largest share.
/// </summary>
/// <param name="Right">The place of the right one, from 1.</param>
public sealed record OfferedReasons(ImmutableArray<string> Said, int Right)
{
    private const int Offered = 3;

    public bool IsRight(int reason) => reason == Right;

    public string? At(int reason) => Said.ElementAtOrDefault(reason - 1);

    /// <summary>The same exercise always offers the same ones in the same order.</summary>
    /// <returns>Null where nothing decides that could be named.</returns>
    public static OfferedReasons? Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (exercise.Task is PredictTask { Reasons: { IsEmpty: false } own, RightReason: var holds }) return new OfferedReasons(own, holds);
        AskedFlies flies = AskedFlies.Of(exercise, null);
        if (PredictKey.Of(exercise, flies) is not { } key) return null;
        // Nothing makes so great a difference where there is hardly one, or where no one thing does.
        if (PredictReason.Of(exercise, flies, key, key, UnitSystem.Metric) is not { NamesTop: true, Reasons: [{ Top: { } top } reason, ..] }) return null;
        if (reason is { Form: ReasonForm.Change, IsNoticeable: false }) return null;
        // What has nearly as much say would be no wrong answer.
        HashSet<string> taken = [.. reason.Shares.Where(s => s == top || s.SaySi > top.SaySi / 3).Select(s => s.What.Word)];
        string[] others =
        [
            .. Things(flies.Fly).Select(t => t.Word).Where(word => !taken.Any(t => t.Contains(word, StringComparison.Ordinal))).Distinct().Take(Offered - 1),
        ];
        if (others.Length < Offered - 1) return null;
        int right = StableSeed.Of(exercise.Id, 0) % Offered;
        string[] words = [.. others];
        return new OfferedReasons([.. words[..right].Append(top.What.Word).Concat(words[right..]).Select(ReasonOffer.Of)], right + 1);
    }

    // The parts first: what lies in the hand is what a beginner would blame.
    private static IEnumerable<Thing> Things(FlyFigures fly) =>
    [
        .. fly.Body.Parts.Where(p => p.IsTied).Select(p => new Thing(ThingKind.Part, p.Name)),
        new Thing(ThingKind.Knot), new Thing(ThingKind.Eye), new Thing(ThingKind.Leader), new Thing(ThingKind.Water),
    ];
}
