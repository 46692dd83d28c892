using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Grading;

/// <summary>Explain: free text, kept for a mentor or the instructor.</summary>
internal static class ExplainGrader
{
    private const int MostCharacters = 10_000;

    public static GradeResult Grade(Exercise exercise, string answerText)
    {
        if (string.IsNullOrWhiteSpace(answerText)) return GradeResult.Refused("Write your explanation first: a few sentences in your own words.");
        if (answerText.Length > MostCharacters) return GradeResult.Refused($"Your explanation is longer than {MostCharacters} characters. Shorten it to what matters.");
        return new GradeResult
        {
            AwaitsReview = true,
            ExerciseVersion = exercise.Version,
            ModelAnswer = exercise.ModelAnswer,
            Feedback = new Feedback
            {
                WhatItWouldDo = "Your explanation is with your mentor or instructor, who will mark it.",
                Goals = [],
                Why = "Meanwhile, compare yours with the model answer: what does it mention that yours does not, and the other way round?",
            },
        };
    }
}
