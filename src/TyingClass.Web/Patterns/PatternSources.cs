using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Patterns;

/// <summary>Where a new pattern can come from: this visitor's own attempts and bench log, and no one else's.</summary>
public sealed class PatternSources(AttemptStore attemptStore, BenchLogStore benchLogStore, ICourseSource course, Visitor visitor)
{
    /// <param name="number">Null for the latest.</param>
    /// <returns>Null when there is no such attempt, or it is no recipe.</returns>
    public string? Attempt(string? exerciseId, int? number)
    {
        if (exerciseId is null || visitor.Person is not { } person) return null;
        if (!course.Current.TryFindExercise(exerciseId, out _, out Exercise exercise) || !exercise.Kind.AnswerIsRecipe) return null;
        ImmutableArray<Attempt> attempts = attemptStore.Of(person.Id, exerciseId);
        return (number is { } n ? attempts.FirstOrDefault(a => a.Number == n) : attempts.LastOrDefault())?.AnswerText;
    }

    /// <returns>Null when this visitor has no such entry.</returns>
    public string? Logged(string? entryId) =>
        entryId is not null && benchLogStore.Find(entryId) is { } entry && entry.PersonId == visitor.Person?.Id ? entry.Fly.RecipeText : null;
}
