using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.Sort;

/// <summary>What sets two flies of an order apart: the first pair that stands wrong, or the two ends of a right order.</summary>
internal static class SortReason
{
    /// <param name="given">The names as answered.</param>
    /// <param name="wrongAt">Where the first pair stands that is the wrong way round; null where none is.</param>
    public static AnswerReason Of(SortTask task, string[] given, int? wrongAt, GradeOptions options)
    {
        (string one, string other) = wrongAt is { } at ? (given[at], given[at + 1]) : (given[0], given[^1]);
        FlyFigures first = Fly(one), second = Fly(other);
        Reason reason = FinerThing.Of(ChangeReason.Of(task.Query, first, second), task.Query, first, second);
        if (wrongAt is null) return AnswerReason.Of(TwoOpening.OfOrder(one, other, reason), options.Units, reason).Shown(reason, FlyPair.Order);
        return AnswerReason.Silent(TwoOpening.OfPair(one, other, reason), WhySentence.Names(reason));

        FlyFigures Fly(string name) => new(GivenFly.Of(task.Items.First(i => i.Name == name).RecipeText), null, options.Report);
    }
}
