using System.Collections.Concurrent;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Briefs;

/// <summary>Demonstrations as they were last worked out: which of several changes does most takes a dozen flies, and a brief is opened again and again.
/// </summary>
public sealed class Demonstrations
{
    private const int Most = 400;

    private readonly ConcurrentDictionary<(string Id, string Version, string? Theirs), Demonstration> _kept = [];

    /// <param name="theirs">A recipe of theirs; null where their answer is none.</param>
    public Demonstration Of(Exercise exercise, string? theirs)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (_kept.Count > Most) _kept.Clear();
        return _kept.GetOrAdd((exercise.Id, exercise.Version, theirs), _ => Demonstration.Of(exercise, theirs));
    }
}
