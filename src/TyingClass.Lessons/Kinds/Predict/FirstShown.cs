using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>The fly a prediction began with, by its name: fresh flies come after it, and a question about it must say so.</summary>
public static class FirstShown
{
    /// <summary>"the Russet Loach"; of two compared, both names.</summary>
    internal static string NameOf(Exercise exercise) => ((PredictTask)exercise.Task).Question is WhichHasMore more
        ? $"{more.FirstName} and {more.SecondName}" : $"the {GivenFly.Of(exercise.RecipeText!).Name}";

    /// <summary>What the reason is asked of: the fly, and what it did.</summary>
    public static string AskWhy(Exercise exercise, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        string fly = NameOf(exercise);
        // A prediction without one right choice is never marked, so it never comes this far.
        if (PredictKey.Of(exercise, AskedFlies.Of(exercise, null)) is not { } key) return ReasonOffer.WhyOwn(fly, "");
        return ((PredictTask)exercise.Task).Question switch
        {
            WhichWayUp => key == WhichWayUp.Undecided ? ReasonOffer.WhyNoTelling(fly) : ReasonOffer.WhyRides(fly, key),
            WhereTheNosePoints => ReasonOffer.WhyNose(fly, key),
            ChangeIn => ReasonOffer.WhyChange(fly, PredictKey.Query(exercise).Phrase(units), key),
            WhichHasMore when key == WhichHasMore.Same => ReasonOffer.WhySame(fly, PredictKey.Query(exercise).Phrase(units)),
            WhichHasMore => ReasonOffer.WhyMore(key, PredictKey.Query(exercise).More(units)),
            _ => ReasonOffer.WhyOwn(fly, key),
        };
    }
}
