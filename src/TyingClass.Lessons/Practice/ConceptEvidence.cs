using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Practice;

/// <summary>Which concepts an attempt speaks of.</summary>
public static class ConceptEvidence
{
    /// <summary>A success, all of its exercise's; a failure that matched a known misreading, only the concept misread; any other failure, all.</summary>
    public static ImmutableArray<string> Concepts(Exercise exercise, bool passed, string? misreadConcept)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return passed || misreadConcept is null ? exercise.Concepts : [misreadConcept];
    }
}
