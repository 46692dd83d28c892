using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>A report in the sentences that feedback uses, for pages that grade nothing.</summary>
public static class FlyInWords
{
    /// <summary>What the fly would do in one state of its dressing, with its numbers.</summary>
    public static string Verdict(Intent intent, StateReport state, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(state);
        return VerdictSentence.Of(intent, state, units);
    }

    /// <summary>Why: the two or three parts with the most say.</summary>
    public static string Cause(Intent intent, StateReport state, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(state);
        return CauseSentence.Of(intent, state, units);
    }
}
