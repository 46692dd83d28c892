using System.Text.RegularExpressions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Replies;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Explain;

/// <summary>Explain: free text, kept for a mentor or the instructor.</summary>
internal static partial class ExplainGrader
{
    private const int MostCharacters = 10_000;
    private const int LeastWords = 5;

    public static GradeResult Grade(Exercise exercise, string answerText, GradeOptions options)
    {
        if (string.IsNullOrWhiteSpace(answerText)) return GradeResult.Refused("Write your explanation first: a few sentences in your own words.");
        if (answerText.Length > MostCharacters)
            return GradeResult.Refused($"Your explanation is longer than {MostCharacters} characters. Shorten it to what matters.");
        // The model answer opens with this: it must have been worth somebody's thought.
        if (Words().Matches(answerText).Select(m => m.Value.ToLowerInvariant()).Distinct().Count() < LeastWords)
            return GradeResult.Refused(RefusalSentence.TooShort);
        FlyFigures? fly = exercise.RecipeText is { } text ? new FlyFigures(GivenFly.Of(text), null, options.Report) : null;
        WayReason? way = fly is null ? null : WayReason.Of(fly, options.Units, new AuthorWords(exercise));
        return new GradeResult
        {
            Why = way is null ? [] : [way.Reason],
            AwaitsReview = true,
            ExerciseVersion = exercise.Version,
            Feedback = new Feedback
            {
                Reply = SeenReply.Explained(answerText, exercise.ModelAnswer),
                First = way?.First ?? OpeningSentence.OfExplanation(exercise.ModelAnswer),
                Picture = way is null ? null : way.Told(options.Units).Picture,
                WhatItWouldDo = fly is null
                    ? "Nothing is computed here: what counts is what your explanation says."
                    : $"{VerdictSentence.Of(fly.Report, options.Units)} So the engine finds.",
                Goals = [],
                Why = $"{(fly is null ? "" : CauseSentence.Of(fly.Solved, options.Units) + " ")}Compare yours with the model answer: what does it mention that "
                    + "yours does not, and the other way round?",
                WhereToLook = "Read the model answer beside yours, then go on to the next one.",
                Cautions = fly is null ? [] : [.. Cautions.For(fly.Recipe).Select(c => c.Text)],
            },
        };
    }

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Words();
}
