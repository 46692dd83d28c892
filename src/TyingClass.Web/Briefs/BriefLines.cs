using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Briefs;

/// <summary>Lays beside a belief what to do about it.</summary>
public sealed class BriefLines(ICourseSource source, AttemptStore attemptStore)
{
    public BeliefLine Of(Belief belief)
    {
        ArgumentNullException.ThrowIfNull(belief);
        Exercise exercise = belief.Exercise;
        string? text = belief.Sample is { } sample ? attemptStore.Find(sample.AttemptId)?.AnswerText : null;
        bool isFly = exercise.Kind.AnswerIsRecipe;
        return new BeliefLine(
            belief, isFly || text is null ? null : exercise.Kind.Shown(exercise, text), isFly ? text : null,
            Demonstration.Of(exercise, isFly ? text : null), ToRoom(belief), PracticeOf(belief.Concept));
    }

    // The very question; else one of the same concept, of the same lesson before any other.
    private Exercise? ToRoom(Belief belief) => belief.Exercise.Kind is IPutToRoom ? belief.Exercise
        : belief.Column.Lesson.Exercises.Concat(source.Current.Exercises).FirstOrDefault(e => e.Kind is IPutToRoom && e.Concepts.Contains(belief.Concept));

    private string? PracticeOf(string concept) =>
        source.Current.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>()).FirstOrDefault(b => b.Practice.Concept == concept) is { } block
            ? "/practice/" + block.Practice.Slug : null;
}
