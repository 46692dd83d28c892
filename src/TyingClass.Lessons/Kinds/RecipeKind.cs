using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds;

/// <summary>A kind whose answer is a fly.</summary>
internal abstract class RecipeKind : ExerciseKind
{
    public override bool AnswerIsRecipe => true;

    public override bool TellsTheAnswer => false;

    internal override bool NeedsModelAnswer => true;

    /// <summary>What was changed: of the fly given, or of the attempt before where none was given.</summary>
    public override string InShort(Exercise exercise, string answerText, string? earlierText) =>
        AnswerLine.OfFly(Of(exercise).RecipeText ?? earlierText, answerText);

    /// <summary>What the answer does that its exercise does not allow.</summary>
    public abstract IEnumerable<(string Path, string Text)> Violations(Exercise exercise, Recipe? given, Recipe answer);

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        RecipeGrader.Grade(exercise, answerText, failedAttempts, options);

    internal override IEnumerable<string> Missed(Exercise exercise, GradeResult result) =>
        exercise.Goals.Zip(result.Feedback!.Goals).Where(g => !g.Second.Met).Select(g => g.First.Quantity);

    internal override IEnumerable<CheckComplaint> Check(Exercise exercise)
    {
        if (!exercise.WrongAnswers.Any(w => w.FindingNamed is not (null or WrongAnswer.Refused)))
        {
            yield return new CheckComplaint(
                "wrong answers", "kind",
                "List at least one wrong answer that fails, and say with “named:” for what: a goal missed, a finding of the report or a misreading.");
        }
    }
}
