using TyingClass.Lessons.Grading;

namespace TyingClass.Storage.Tests;

/// <summary>Graded answers as the grader hands them over; what matters here is that they come back as they were.</summary>
internal static class Grades
{
    public static GradeResult Failed { get; } =
        new() { Passed = false, EngineVersion = "engine 1, course a", Feedback = Words(met: false, look: "Look at the cone.") };

    public static GradeResult Passed { get; } = new() { Passed = true, EngineVersion = "engine 1, course a", Feedback = Words(met: true, look: null) };

    public static GradeResult Waiting { get; } = new() { AwaitsReview = true, EngineVersion = "engine 1, course a" };

    public static GradeResult Unreadable { get; } = new() { Problems = [new AnswerProblem(3, 9, "hook.gape", "“wide” is not a length.")] };

    private static Feedback Words(bool met, string? look) => new()
    {
        Reply = "One of two goals is met.",
        WhatItWouldDo = "It would ride on its side.",
        Goals = [new GoalResult("keel height at least 0.4 mm", "-0.9 mm", met), new GoalResult("sink rate at least 0.15 m/s", "0.21 m/s", true)],
        Why = "The gape and bend pull -0.9 g·mm.",
        WhereToLook = look,
        Misreading = met ? null : "This treats the eye as if it were straight.",
        Cautions = ["Lead is toxic: wash your hands. <b>Local rules</b> may forbid it."],
    };
}
