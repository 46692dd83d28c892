using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.CommandLine;

/// <summary>grade EXERCISE-ID FILE [--lessons DIR] [--json] [--units metric|imperial]: an answer against an exercise, as a first attempt.</summary>
internal static class GradeVerb
{
    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static Command Command()
    {
        Argument<string> id = new("EXERCISE-ID") { Description = "The exercise, such as keel-03." };
        Argument<FileInfo> file = new("FILE") { Description = "A recipe, or a text file with the answer." };
        Option<DirectoryInfo?> lessons = LessonsFolder.Option();
        Option<bool> json = new("--json") { Description = "Print one JSON object instead of text." };
        Option<UnitSystem> units = new("--units") { Description = "Units of the feedback: metric (usual) or imperial." };
        Command command = new("grade", "Grade a recipe or an answer against an exercise.") { id, file, lessons, json, units };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(id), parsed.GetRequiredValue(file), parsed.GetValue(lessons),
            new Wanted(parsed.GetValue(json), parsed.GetValue(units)), Console.Out, Console.Error));
        return command;
    }

    private static int Run(string id, FileInfo file, DirectoryInfo? lessons, Wanted wanted, TextWriter output, TextWriter errors)
    {
        if (LessonsFolder.Find(lessons, errors) is not { } folder || !RecipeFile.TryReadText(file, errors, out string? answer))
        {
            return ExitCodes.InputError;
        }

        using CourseFolder course = new(folder);
        if (!course.Current.TryFindExercise(id, out _, out Exercise exercise))
        {
            errors.WriteLine($"{folder}:1:1: There is no exercise “{id}” in these lessons.");
            foreach (AuthorError problem in course.Current.Problems)
            {
                errors.WriteLine(problem);
            }

            return ExitCodes.InputError;
        }

        GradeResult grade = Grader.Grade(exercise, answer, failedAttempts: 0, new GradeOptions { Units = wanted.Units });
        if (wanted.Json)
        {
            output.WriteLine(JsonSerializer.Serialize(Shape(exercise, grade), Options));
        }

        if (!grade.IsAttempt)
        {
            foreach (AnswerProblem problem in grade.Problems)
            {
                // An answer of one line has no place of its own.
                string text = WrittenFigures.BesideOutsideQuotes(problem.Text, wanted.Units);
                errors.WriteLine($"{file}:{Math.Max(1, problem.Line)}:{Math.Max(1, problem.Column)}: {text}");
            }

            return ExitCodes.InputError;
        }

        if (!wanted.Json)
        {
            WriteText(exercise, grade, output);
        }

        return grade.Passed || grade.AwaitsReview ? ExitCodes.AllIsWell : ExitCodes.FallsShort;
    }

    private readonly record struct Wanted(bool Json, UnitSystem Units);

    private static object Shape(Exercise exercise, GradeResult grade) => new
    {
        Exercise = exercise.Id,
        grade.IsAttempt,
        grade.Passed,
        grade.AwaitsReview,
        grade.EngineVersion,
        Why = grade.Why.SelectMany(reason => reason.Shares.Select(share => new
        {
            What = share.What.Word,
            Share = share.Si,
            reason.Quantity,
            From = share.FromSi,
            To = share.ToSi,
            Error = share.Error is { } error ? char.ToLowerInvariant(error.ToString()[0]) + error.ToString()[1..] : null,
        })),
        Problems = grade.Problems.Select(p => new { p.Line, p.Column, p.Path, p.Text }),
        Feedback = grade.Feedback is { } f
            ? new
            {
                f.Reply,
                f.First,
                f.WhatItWouldDo,
                Goals = f.Goals.Select(g => new { g.Asked, g.Reached, g.Met }),
                f.Why,
                f.WhereToLook,
                f.Misreading,
                Cautions = f.Cautions.ToArray(),
            }
            : null,
    };

    private static void WriteText(Exercise exercise, GradeResult grade, TextWriter output)
    {
        output.WriteLine($"{exercise.Title}: {(grade.AwaitsReview ? "for a person to read" : grade.Passed ? "passed" : "not yet")}");
        if (grade.Feedback is not { } feedback)
        {
            return;
        }

        if (feedback.Reply is { } reply)
        {
            output.WriteLine(reply);
        }

        if (feedback.First is { } first)
        {
            output.WriteLine(first);
        }

        output.WriteLine(feedback.WhatItWouldDo);
        if (feedback.Misreading is { } misreading)
        {
            output.WriteLine(misreading);
        }

        foreach (GoalResult goal in feedback.Goals)
        {
            output.WriteLine($"  {(goal.Met ? "met    " : "not met")}  {goal.Asked}: {goal.Reached}");
        }

        output.WriteLine(feedback.Why);
        if (feedback.WhereToLook is { } look)
        {
            output.WriteLine(look);
        }

        foreach (string caution in feedback.Cautions)
        {
            output.WriteLine($"Take care: {caution}");
        }
    }
}
