using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Editing;

/// <summary>Everything one exercise shows to one person.</summary>
public sealed record ExerciseView
{
    private const int LongestQuote = 100;

    public required Lesson Lesson { get; init; }

    public required Exercise Exercise { get; init; }

    /// <summary>Where its form is sent, and where it can be found again.</summary>
    public required string Address { get; init; }

    /// <summary>A problem of practice: no exercise of the course.</summary>
    public bool IsPractice => Address.StartsWith("/practice/", StringComparison.Ordinal);

    public required Typed Typed { get; init; }

    /// <summary>Why the answer could not be read.</summary>
    public ImmutableArray<AnswerProblem> Problems { get; init; } = [];

    /// <summary>What else happened to the form.</summary>
    public string? Notice { get; init; }

    /// <summary>In form mode.</summary>
    public RecipeFormView? Form { get; init; }

    /// <summary>Of the fly in the editor, as it sits in the vise.</summary>
    public IHtmlContent? Picture { get; init; }

    /// <summary>The flies a question is about.</summary>
    public ImmutableArray<AskedFly> Asked { get; init; } = [];

    /// <summary>First to last.</summary>
    public ImmutableArray<Attempt> Attempts { get; init; } = [];

    /// <summary>The one whose feedback is shown.</summary>
    public AttemptView? Shown { get; init; }

    /// <summary>What comes after the answer that is shown; null where none is, and in a lesson, which goes on below it.</summary>
    public AfterView? After { get; init; }

    /// <summary>True when the form stands in its lesson.</summary>
    public bool InLesson { get; init; }

    /// <summary>After a wrong vote: why, and a fresh fly to decide by; null where there is none.</summary>
    public FreshView? Fresh { get; init; }

    public bool Passed => Attempts.Any(a => a.Counts);

    public int Failed => Attempts.Count(a => a is { Counts: false, Waits: false });

    /// <summary>Rows for the text, so that a whole recipe is seen at once.</summary>
    public int Rows => Math.Clamp(Typed.Text.Count(c => c == '\n') + 3, 12, 60);

    /// <summary>What was answered, in one line.</summary>
    public string InShort(Attempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        return Exercise.Kind.InShort(Exercise, attempt.AnswerText, Attempts.LastOrDefault(a => a.Number < attempt.Number)?.AnswerText);
    }

    /// <summary>The line an error stands in; null where there is none to point at.</summary>
    public string? LineAt(AnswerProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        string? line = Typed.Mode == EditorMode.Plain ? null : Typed.Text.Split('\n').ElementAtOrDefault(problem.Line - 1)?.Trim();
        return line?.Length > LongestQuote ? line[..LongestQuote] + "…" : line;
    }

    /// <summary>One for each failed attempt; in a prediction for each fresh fly that fell short, for of the first one all has been told.</summary>
    public ImmutableArray<string> OpenHints => HintsAreOver ? [] : [.. Exercise.Hints.Take(Fresh is null ? Failed : Failed - 1)];

    /// <summary>Those that do not stand in the feedback on the same page.</summary>
    public IEnumerable<string> HintsHere => OpenHints.Where(h => h != Shown?.Attempt.Feedback?.WhereToLook);

    /// <summary>The feedback has given the answer: what is left is to write it down.</summary>
    public bool AnswerIsTold => Exercise.Kind.LastHintTells && Failed > Exercise.Hints.Length;

    /// <summary>Once the answer is known, by passing or by being told, a hint leads nowhere; with a fresh fly it is not known.</summary>
    public bool HintsAreOver => Passed || AnswerIsTold || (Exercise.Kind.TellsTheAnswer && !Attempts.IsEmpty && Fresh is null);

    /// <summary>What the adviser said last, once the author's hints are used up.</summary>
    public string? Advice => HintsAreOver || Exercise.Kind.TellsTheAnswer || Failed <= Exercise.Hints.Length ? null
        : Attempts.LastOrDefault(a => !a.Passed)?.Feedback?.WhereToLook is { } said && said != Shown?.Attempt.Feedback?.WhereToLook ? said : null;

    /// <summary>
    /// The model answer is the reward of an answer, never a way around one. Where the feedback tells the answer there is nothing left to show.
    /// </summary>
    public string? ModelAnswer => (!Exercise.Kind.TellsTheAnswer || Exercise.Kind.IsMarkedByPerson) && Attempts.Any(a => a.Passed || a.AwaitsReview)
        ? Exercise.ModelAnswer
        : null;
}

/// <param name="Picture">In the vise before there is an answer, as it swims afterward; null where there is no room for it.</param>
public sealed record AskedFly(RecipeCard Card, IHtmlContent? Picture);

/// <summary>The second half of a prediction that went wrong.</summary>
/// <param name="Number">Which fresh problem, from 1.</param>
/// <param name="Asked">The fresh flies, in the vise.</param>
public sealed record FreshView(int Number, Exercise Problem, ImmutableArray<string> Reasons, ImmutableArray<AskedFly> Asked)
{
    /// <summary>What the reasons are asked of: the first fly by its name, and what it did.</summary>
    public string Why { get; init; } = "";

    /// <summary>The first fly as it was shown; null where that stands with the feedback above.</summary>
    public IHtmlContent? Shown { get; init; }

    /// <summary>The reason ticked, or had right in the answer before; from 1, 0 for none.</summary>
    public int Reason { get; init; }

    /// <summary>What is said of the fresh fly; empty where nothing is yet.</summary>
    public string Choice { get; init; } = "";
}

/// <param name="Kept">The attempt, when the answer was graded and kept.</param>
/// <param name="View">The form again, when it was not; null for an exercise nobody knows.</param>
public sealed record DeskResult(Attempt? Kept, ExerciseView? View, int Status = StatusCodes.Status200OK);
