using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>Why, as one answer is told it: about what was asked and nothing else.</summary>
/// <param name="First">The one sentence that stands above all figures.</param>
/// <param name="Why">The same with its figures; they stand folded.</param>
/// <param name="Reasons">The shares themselves.</param>
internal sealed record AnswerReason(string First, string Why, ImmutableArray<Reason> Reasons)
{
    /// <summary>What shows it; null where nothing may be shown.</summary>
    public AskedPicture? Picture { get; init; }

    /// <summary>The first sentence is of what leads the shares.</summary>
    public bool NamesTop { get; init; } = true;

    public AnswerReason Shown(Reason reason, FlyPair pair) => this with { Picture = AskedPicture.Of(reason, pair) };

    public static AnswerReason Of(string first, UnitSystem units, params ImmutableArray<Reason> reasons) =>
        new(first, string.Join(" ", reasons.Select(r => WhySentence.Of(r, units))), reasons);

    /// <summary>For an answer that may be tried again: no figure that would give the right one away.</summary>
    public static AnswerReason Silent(string first, string why) => new(first, why, []);
}
