using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Briefs;

/// <summary>Lays beside a belief what to do about it, and beside a goal that several miss why most of them do.</summary>
public sealed class BriefLines(ICourseSource source, AttemptStore attemptStore, Demonstrations demonstrations)
{
    // So many of the latest say what most are told.
    private const int AttemptsRead = 6;

    /// <summary>A group that shares no misreading but a goal, with what the feedback said first to most of them.</summary>
    public StuckGroup WithWhy(StuckGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        if (group.Missed is null) return group;
        return group with
        {
            Why = group.People.SelectMany(p => p.Lines).Take(AttemptsRead)
                .Select(l => l.Standing.LastFailed is { } last ? attemptStore.Find(last.AttemptId)?.Feedback?.First : null).OfType<string>()
                .GroupBy(f => f).MaxBy(g => g.Count())?.Key,
        };
    }

    public BeliefLine Of(Belief belief)
    {
        ArgumentNullException.ThrowIfNull(belief);
        Exercise exercise = belief.Exercise;
        string? text = belief.Sample is { } sample ? attemptStore.Find(sample.AttemptId)?.AnswerText : null;
        bool isFly = exercise.Kind.AnswerIsRecipe;
        return new BeliefLine(
            belief, isFly || text is null ? null : OnOneLine(exercise.Kind.Shown(exercise, text)), isFly ? text : null,
            demonstrations.Of(exercise, isFly ? text : null), ToRoom(belief), PracticeOf(belief.Concept));
    }

    // An order or an argument is sent in line by line.
    private static string OnOneLine(string answer) =>
        string.Join("; ", answer.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));

    // The very question; else one of the same concept, of the same lesson before any other.
    private Exercise? ToRoom(Belief belief) => belief.Exercise.Kind is IPutToRoom ? belief.Exercise
        : belief.Column.Lesson.Exercises.Concat(source.Current.Exercises).FirstOrDefault(e => e.Kind is IPutToRoom && e.Concepts.Contains(belief.Concept));

    private string? PracticeOf(string concept) =>
        source.Current.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>()).FirstOrDefault(b => b.Practice.Concept == concept) is { } block
            ? "/practice/" + block.Practice.Slug : null;
}
