using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>Why an answer is not taken as an attempt yet, and what to do.</summary>
public static class RefusalSentence
{
    public const string Unchanged =
        "This is still the fly that was given: nothing on it is changed yet. Change one thing that bears on what it must do, and send it in.";

    /// <summary>A figure that no fly has.</summary>
    /// <param name="low">The least that can be meant, told.</param>
    public static string BeyondReason(string typed, string phrase, string low, string high) =>
        $"Can “{typed}” be meant? The {phrase} lies between {low} and {high} on any fly. Look at the unit, the decimal point and the sign; "
        + "nothing was counted.";

    /// <summary>A part that nobody could tie on a hook or cast.</summary>
    public static string TooHeavyToBeMeant(string part, double massKg, double mostKg, UnitSystem units) =>
        $"Can {Stated.Say(massKg, Dimension.Mass, units)} be meant? "
        + $"On the largest flies the {part} has no more than {Stated.Say(mostKg, Dimension.Mass, units)}. "
        + "Look at the unit and the decimal point; nothing was counted.";

    /// <summary>A soaked fly with less mass than the dry one.</summary>
    public static string WetterIsLighter(double dryKg, double wetKg, UnitSystem units) =>
        $"Can it be {Stated.Say(wetKg, Dimension.Mass, units)} wet and {Stated.Say(dryKg, Dimension.Mass, units)} dry? A soaked fly carries water besides, "
        + "so it never has less mass than the dry one. Look whether the two were exchanged; nothing was counted.";

    public const string BareHook = "There is nothing on the hook yet. Tie in a part, say how large it is, and send it in; nothing was counted.";

    /// <param name="key">A measure that it takes: "mass".</param>
    public static string NothingFilledIn(string part, string key) =>
        $"Nothing is said of the {part} yet. Give at least its {key}, or take it out; nothing was counted.";

    public const string TooShort =
        "That is too short to be read as an explanation. Write a sentence or two: what happens, and which part, eye, knot or water makes it so.";
}
