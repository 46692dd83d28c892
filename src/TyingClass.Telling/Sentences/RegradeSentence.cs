namespace TyingClass.Telling.Sentences;

/// <summary>Why an answer kept from before would be graded otherwise today.</summary>
public static class RegradeSentence
{
    public static string NotTaken(bool exerciseChanged, string why) => $"{Since(exerciseChanged)} Today this answer would not be taken: {why}";

    /// <param name="moved">Figures that are others now: <see cref="Moved"/>.</param>
    public static string Graded(bool exerciseChanged, bool passedThen, bool passedNow, IReadOnlyCollection<string> moved)
    {
        ArgumentNullException.ThrowIfNull(moved);
        string grade = passedThen == passedNow ? "The grade would be the same" : $"Today it would {(passedNow ? "pass" : "not pass")}";
        return $"{Since(exerciseChanged)} {grade}{(moved.Count == 0 ? "" : $": {string.Join("; ", moved)}")}.";
    }

    public static string Moved(string name, string then, string now) => $"{name} was {then} and is now {now}";

    private static string Since(bool exerciseChanged) => exerciseChanged ? "The exercise has changed since." : "The engine has changed since.";
}
