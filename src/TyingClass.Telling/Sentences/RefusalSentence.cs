namespace TyingClass.Telling.Sentences;

/// <summary>Why an answer is not taken as an attempt yet, and what to do.</summary>
public static class RefusalSentence
{
    public const string Unchanged =
        "This is still the fly that was given: nothing on it is changed yet. Change one thing that bears on what it must do, and send it in.";

    public const string TooShort =
        "That is too short to be read as an explanation. Write a sentence or two: what happens, and which part, eye, knot or water makes it so.";
}
