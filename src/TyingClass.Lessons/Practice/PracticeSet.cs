using System.Collections.Concurrent;
using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;

namespace TyingClass.Lessons.Practice;

/// <summary>What was drawn for one seed.</summary>
/// <param name="Variant">Paths and values.</param>
/// <param name="Mark">What may not be asked twice: the figure that is the answer, or else the fly and what is done to it.</param>
internal sealed record PracticePick(ImmutableArray<(string Path, string Value)> Variant, string Mark);

/// <summary>What practice problems of one fence are drawn from.</summary>
/// <param name="Template">The exercise, its recipe the middle of the range; it has no id of its own.</param>
/// <param name="Vary">What changes from problem to problem: a range, or a list of values.</param>
public sealed record PracticeSet(string Concept, Exercise Template, ImmutableArray<AllowedChange> Vary)
{
    /// <summary>What a path in "vary" begins with when it varies what is done to the fly.</summary>
    internal const string OfChange = "change.";

    private VariantGrid? _grid;

    internal IPracticed Kind => (IPracticed)Template.Kind;

    /// <summary>How near a problem lies to its threshold is chosen by level.</summary>
    internal bool IsByLevel { get; } = ((IPracticed)Template.Kind).TurnsOn(Template.Task) is not null;

    internal VariantGrid Grid => _grid ??= new VariantGrid(Vary, IsByLevel);

    // By seed, where no level chooses: drawn once, since each leaves out what those before it had.
    internal ConcurrentDictionary<int, PracticePick?> Picks { get; } = new();

    /// <summary>So many problems running share no fly: then the set has been gone through, and begins again.</summary>
    public int Apart => Grid.Apart;

    internal static bool IsOfChange(string path) => path.StartsWith(OfChange, StringComparison.Ordinal);

    public string Slug => SlugOf(Concept);

    /// <summary>A concept in an address: "level-line keel" becomes "level-line-keel".</summary>
    public static string SlugOf(string concept)
    {
        ArgumentNullException.ThrowIfNull(concept);
        return concept.Replace(' ', '-');
    }
}
