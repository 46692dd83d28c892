using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds;

/// <summary>
/// One kind of exercise: all that the rest of the program asks of a kind. Each has a folder of its own, and a line in <see cref="ExerciseKinds"/>.
/// </summary>
public abstract class ExerciseKind
{
    /// <summary>As lessons write it after "kind:". Never changes: lessons, exports and links hold it.</summary>
    public abstract string Word { get; }

    /// <summary>As a student meets it.</summary>
    public virtual string Name => char.ToUpperInvariant(Word[0]) + Word[1..];

    /// <summary>One sentence: what a student is to do.</summary>
    public abstract string Invitation { get; }

    /// <summary>How long it takes to answer. Estimate.</summary>
    public abstract double Minutes { get; }

    /// <summary>Names the kind's files: its folder here, and its partial page ("Predict" for _Predict.cshtml).</summary>
    public string FileName => GetType().Name[..^"Kind".Length];

    /// <summary>A mentor or the instructor reads it; nothing is computed to be right or wrong.</summary>
    public virtual bool IsMarkedByPerson => false;

    /// <summary>The answer is a fly: the page shows the recipe editor.</summary>
    public virtual bool AnswerIsRecipe => false;

    /// <summary>The feedback on any answer gives the right one away. Where it does not, pictures may not either before a pass.</summary>
    public virtual bool TellsTheAnswer => true;

    /// <summary>Once the hints are used up its feedback tells the answer: there is nothing left to find, only to write down.</summary>
    public virtual bool LastHintTells => false;

    /// <summary>What the first part of its feedback is about.</summary>
    public virtual string FeedbackHeading => "What it would do";

    /// <summary>Done with a tied fly in hand: its fly is on the materials list and in the bench log.</summary>
    public virtual bool IsAtTheBench => false;

    /// <summary>An answer as another person reads it.</summary>
    public virtual string Shown(Exercise exercise, string answerText) => answerText;

    /// <summary>An answer in one line, for a list of attempts.</summary>
    /// <param name="earlierText">The attempt before it; null for the first.</param>
    public virtual string InShort(Exercise exercise, string answerText, string? earlierText) => AnswerLine.Of(Shown(exercise, answerText));

    /// <summary>What an answer was about, where that is not what the exercise began with: a fresh problem of the same idea.</summary>
    public virtual Exercise Answered(Exercise exercise, string answerText) => exercise;

    /// <summary>An answer that passes once so many have fallen short, and one that does not, where they are known.</summary>
    public virtual (string? Right, string? Wrong) After(Exercise exercise, int failed) => (RightAnswer(exercise), null);

    /// <summary>An answer that passes, where one is known.</summary>
    public virtual string? RightAnswer(Exercise exercise) => Of(exercise).ModelAnswer;

    /// <summary>Answers that do not pass, beside those the author lists.</summary>
    /// <param name="right">What <see cref="RightAnswer"/> gave.</param>
    public virtual IEnumerable<string> WrongAnswers(Exercise exercise, string? right) => [];

    /// <summary>Keys of its fence that no other kind needs to take.</summary>
    internal abstract ImmutableArray<string> Keys { get; }

    /// <summary>There is no such exercise without "recipe" or "file".</summary>
    internal virtual bool NeedsFly => false;

    internal virtual bool NeedsModelAnswer => false;

    /// <summary>An answer is "name: value" lines, which authors may write as keys.</summary>
    internal virtual bool AnswerHasNames => false;

    /// <summary>Reads the kind's own keys; null where something is missing or spoiled, which has been complained about.</summary>
    internal abstract ExerciseTask? Read(TaskReading reading);

    internal abstract GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options);

    /// <summary>What conditions of the exercise may speak of.</summary>
    internal virtual ConditionScope Scope(ExerciseTask task, Recipe? given) => new(
        HasFly: given is not null, HasStart: false, AnswerDimension: null, AnswerIsNumber: false,
        task.Choices, given is null ? [] : FlyBuilder.Names(given.Parts));

    /// <summary>Why the computed key would not survive a practiced tyer's errors; null when it would, or none is computed.</summary>
    internal virtual string? KeyComplaint(Exercise exercise) => null;

    /// <summary>What else check-lessons finds wrong.</summary>
    internal virtual IEnumerable<CheckComplaint> Check(Exercise exercise) => [];

    /// <summary>What an answer that did not pass missed, in words an author may name.</summary>
    internal virtual IEnumerable<string> Missed(Exercise exercise, GradeResult result) => [];

    private protected static Exercise Of(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise;
    }
}

/// <param name="Key">The key of the fence it stands at; <paramref name="OtherKey"/> where that is not there.</param>
internal sealed record CheckComplaint(string Key, string OtherKey, string Text)
{
    /// <summary>Where it stands exactly, when that is known.</summary>
    public (int Line, int Column)? Place { get; init; }
}
