using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;

namespace TyingClass.Lessons.Practice;

/// <summary>What practice problems of one fence are drawn from.</summary>
/// <param name="Template">The exercise, its recipe the middle of the range; it has no id of its own.</param>
/// <param name="Vary">What changes from problem to problem: a range, or a list of values.</param>
public sealed record PracticeSet(string Concept, Exercise Template, ImmutableArray<AllowedChange> Vary)
{
    internal IPracticed Kind => (IPracticed)Template.Kind;

    public string Slug => SlugOf(Concept);

    /// <summary>A concept in an address: "level-line keel" becomes "level-line-keel".</summary>
    public static string SlugOf(string concept)
    {
        ArgumentNullException.ThrowIfNull(concept);
        return concept.Replace(' ', '-');
    }
}
