using System.Globalization;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>
/// What a student answers once the fly has been shown: why it did that, and what a fresh fly of the same idea will do. Kept as two lines,
/// "reason: 2" and "fresh 1: nose up". Any other text is a first vote.
/// </summary>
/// <param name="Fresh">Which fresh problem, from 1.</param>
/// <param name="Reason">One of the three offered, from 1; 0 where none was taken.</param>
public sealed record PredictAnswer(int Fresh, int Reason, string Choice)
{
    public const string ReasonLine = "reason";

    private const int MostFresh = 1000;

    /// <summary>How the form names the fresh problem's choice.</summary>
    public static string FreshLine(int fresh) => string.Create(CultureInfo.InvariantCulture, $"fresh {fresh}");

    public string Text => $"{ReasonLine}: {Reason.ToString(CultureInfo.InvariantCulture)}\n{FreshLine(Fresh)}: {Choice}";

    /// <summary>Null for a first vote.</summary>
    public static PredictAnswer? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        (int reason, int? fresh, string choice) = (0, null, "");
        foreach (string line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            string[] pair = line.Split(':', 2, StringSplitOptions.TrimEntries);
            if (pair.Length < 2) continue;
            if (pair[0] == ReasonLine) _ = int.TryParse(pair[1], NumberStyles.None, CultureInfo.InvariantCulture, out reason);
            else if (pair[0].StartsWith("fresh ", StringComparison.Ordinal)
                && int.TryParse(pair[0]["fresh ".Length..], NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number is >= 1 and <= MostFresh)
                (fresh, choice) = (number, pair[1]);
        }

        return fresh is { } n ? new PredictAnswer(n, reason, choice)
            : reason > 0 ? new PredictAnswer(0, reason, "") : null;
    }
}
