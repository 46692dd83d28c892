using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>Predict questions asked of a whole room: made from any recipe, and answered by the engine when the room has spoken.</summary>
public static class Prediction
{
    /// <summary>What may be asked of any fly, as an author writes it after "ask:".</summary>
    public static ImmutableArray<string> Asks { get; } = [WhichWay, Nose];

    public const string WhichWay = "which way up";

    public const string Nose = "nose";

    /// <summary>A question about a fly that stands in no lesson.</summary>
    /// <param name="recipe">A recipe that was parsed without errors.</param>
    /// <param name="ask">One of <see cref="Asks"/>.</param>
    public static Exercise About(Recipe recipe, string ask)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        bool way = ask == WhichWay;
        if (!way && ask != Nose) throw new ArgumentException($"“{ask}” cannot be asked of any fly.", nameof(ask));
        return new Exercise
        {
            Id = "room",
            Title = way ? $"Which way up does the {recipe.Name} ride?" : $"Where does the nose of the {recipe.Name} point when it is towed?",
            Concepts = [],
            PromptHtml = "",
            RecipeText = RecipeWriter.Write(recipe),
            Task = way ? new PredictTask(new WhichWayUp(), WhichWayUp.Choices, null)
                : new PredictTask(new WhereTheNosePoints(), WhereTheNosePoints.Choices, "pitch"),
        };
    }

    /// <summary>Its choices turn on masses and places alone: a sum in the hand, and no guess of the model's.</summary>
    public static bool IsOfMass(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise is { Task: PredictTask { Question: OwnChoices own }, RecipeText: { } text }
            && PredictKey.Asked(exercise, own, new FlyFigures(GivenFly.Of(text))) is { IsEmpty: false } asked && asked.All(q => q.Quantity.IsOfMass);
    }

    /// <summary>The choice the engine computes to be right, and what it says about it.</summary>
    /// <returns>Null when no single choice is right for this fly.</returns>
    public static (string Choice, Feedback Feedback)? Answer(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (exercise.Task is not PredictTask) throw new ArgumentException("Only a predict exercise has an answer to reveal.", nameof(exercise));
        return PredictKey.Of(exercise, AskedFlies.Of(exercise, null)) is { } key && Grader.Grade(exercise, key, 0).Feedback is { } feedback ? (key, feedback)
            : null;
    }
}
