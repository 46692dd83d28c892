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

    public const string TooShort =
        "That is too short to be read as an explanation. Write a sentence or two: what happens, and which part, eye, knot or water makes it so.";
}
