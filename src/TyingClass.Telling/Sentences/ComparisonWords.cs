namespace TyingClass.Telling.Sentences;

/// <summary>An answer beside what it should be. Of a figure below zero nobody says that it is too large.</summary>
public static class ComparisonWords
{
    public const string WrongSign = "has the wrong sign";

    /// <summary>"is too small", "is not far enough below zero".</summary>
    public static string Beside(double answer, double key) => (key < 0, answer > key) switch
    {
        (false, true) => "is too large",
        (false, false) => answer < 0 && key > 0 ? WrongSign : "is too small",
        (true, true) => answer > 0 ? WrongSign : "is not far enough below zero",
        (true, false) => "is too far below zero",
    };
}
