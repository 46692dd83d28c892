using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Replies;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>What came of the question, in its own words. A prediction's feedback tells the outcome, missed or not.</summary>
internal static class PredictOutcome
{
    public static string Of(Exercise exercise, AskedFlies flies, string key, string choice, UnitSystem units) => ((PredictTask)exercise.Task).Question switch
    {
        WhichWayUp => VoteReply.OfWay(flies.Fly.Report),
        WhereTheNosePoints => VoteReply.OfNose(PredictKey.Query(exercise).Of(flies.Fly)!.Value),
        ChangeIn => Change(PredictKey.Query(exercise), flies, key, units),
        WhichHasMore more => More(PredictKey.Query(exercise), more, flies, key, units),
        OwnChoices own => VoteReply.OfOwn(key, choice, Figure(exercise, own, flies.Fly, key, units)),
        _ => throw new InvalidOperationException("There is no such question."),
    };

    private static string Change(QuantityQuery query, AskedFlies flies, string key, UnitSystem units) =>
        query.SayApart(units, query.Of(flies.Fly), query.Of(flies.Other!)) is [var was, var now]
            ? VoteReply.OfChange(key, key == ChangeIn.Stays ? now : was, now)
            : throw new InvalidOperationException("Two figures are told as two.");

    private static string More(QuantityQuery query, WhichHasMore more, AskedFlies flies, string key, UnitSystem units)
    {
        if (query.SayApart(units, query.Of(flies.Fly), query.Of(flies.Other!)) is not [var one, var other])
            throw new InvalidOperationException("Two figures are told as two.");
        (string, string) first = (more.FirstName, one), second = (more.SecondName, other);
        return key == WhichHasMore.Same ? VoteReply.OfSame(query.Phrase(units), one, other)
            : key == more.FirstName ? VoteReply.OfMore(query.Quantity.Name, first, second) : VoteReply.OfMore(query.Quantity.Name, second, first);
    }

    // Choices that turn on one figure of a fly as it is; a list of figures would be no answer.
    private static string? Figure(Exercise exercise, OwnChoices own, FlyFigures fly, string key, UnitSystem units) =>
        PredictReason.Asked(exercise, own, fly, key) is [var only] && only.Of(fly) is not null
            && QuantityQuery.Figures(fly, [only], units).ToArray() is [var (phrase, said)]
                ? StepReply.Acts(only.Quantity.Name, only.Told(units), phrase, said) : null;
}
