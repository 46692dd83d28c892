using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Sentences;

/// <summary>The last hint: the smallest change that the adviser found.</summary>
public static class HintSentence
{
    public const string NoSingleChange =
        "No single change reaches every goal from here. Take the goal you miss by most, change one thing that bears on it, and try again.";

    public static string Smallest(Proposal change, UnitSystem units) => $"The smallest change that does it: {Told(change, units)}";

    public static string FromTheFlyGiven(Proposal change, UnitSystem units) => $"Go back to the fly given, and from there: {Told(change, units)}";

    /// <param name="left">The goals it leaves unmet, as they were asked.</param>
    public static string FirstStep(Proposal change, IReadOnlyCollection<string> left, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(left);
        string rest = left.Count == 0 ? "" : $" That leaves {string.Join("; ", left)}.";
        return $"No single change reaches every goal from here. A first step: {Told(change, units)}{rest}";
    }

    private static string Told(Proposal change, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(change);
        return $"{AdviceSentence.Of(change.Advised, units)}. {AdviceSentence.Cost(change.Advised, change.AddedMassG, units)}";
    }
}
