namespace TyingClass.Telling.Replies;

/// <summary>On a figure that was worked out.</summary>
public static class FigureReply
{
    /// <summary>"Yes: 19 cm." Where the two are not told alike, both.</summary>
    public static string Right(string answer, string key, bool isTheSame) =>
        isTheSame ? $"Yes: {key}." : Reply.Fit($"Yes: it is {key}, and your {answer} is near enough.", $"Yes: {key}.");

    /// <summary>"30 cm is too large for the hop." Never what it should be: it may be tried again.</summary>
    /// <param name="beside">"is too large", "has the wrong sign".</param>
    public static string Wrong(string answer, string beside, string phrase)
    {
        ArgumentNullException.ThrowIfNull(beside);
        string plain = $"{answer} {beside}.";
        return beside.StartsWith("is too ", StringComparison.Ordinal) && !beside.Contains("zero", StringComparison.Ordinal)
            ? Reply.Fit($"{answer} {beside} for the {phrase}.", plain) : plain;
    }

    /// <summary>The hints are used up, and the last one tells it.</summary>
    public static string Told(string answer, string beside, string key) => $"{answer} {beside}: it is {key}.";

    /// <summary>"5.4 g is ten times too large."</summary>
    /// <param name="times">"ten times too large".</param>
    public static string Times(string answer, string times) => $"{answer} is {times}.";

    /// <summary>"1.44 m is the greatest depth of the retrieve; the hop was asked for."</summary>
    public static string Another(string answer, string itIs, string asked) =>
        Reply.Fit($"{answer} is the {itIs}. Asked for is the {asked}.", $"{answer} is the {itIs}, and something else was asked for.");
}
