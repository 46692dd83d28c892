using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Text;

/// <summary>The eye: "straight", "down 25°", "jig 60°".</summary>
internal static class EyeText
{
    private const string Forms = "straight, up, down (with an angle if you know it: down 25°) or jig 45°, jig 60°, jig 90°";

    private static readonly double[] JigAnglesRad = [.. new[] { "45°", "60°", "90°" }.Select(Angle)];

    public static (EyeKind Eye, double? AngleRad) Read(MapReader map)
    {
        if (map.Text("eye", "“straight” or “down 25°”") is not { } text) return (EyeKind.Straight, null);
        string plain = WordList.Plain(text);
        string word = plain.Split(' ')[0];
        string angle = plain[word.Length..].Trim();
        if (!Words.Eyes.TryGet(word, out EyeKind eye))
        {
            map.Complain("eye", $"{WordList.Quote(text)} is not an eye.{Nearest.Hint(word, Words.Eyes.Words)} Write {Forms}.");
            return (EyeKind.Straight, null);
        }

        (double? angleRad, string? error) = AngleOf(eye, angle);
        if (error is not null) map.Complain("eye", error);
        return (eye, angleRad);
    }

    private static (double? AngleRad, string? Error) AngleOf(EyeKind eye, string angle)
    {
        if (eye == EyeKind.Jig) return Jig(angle);
        if (angle.Length == 0) return (null, null);
        if (eye == EyeKind.Straight) return (null, $"A straight eye has no angle. Delete {WordList.Quote(angle)}, or write up or down in place of straight.");
        string? error = Limits.EyeAngle.TryRead(angle, out double rad);
        return error is null ? (rad, null) : (null, error);
    }

    private static (double? AngleRad, string? Error) Jig(string angle)
    {
        const string Advice = "Write jig 45°, jig 60° or jig 90°.";
        if (angle.Length == 0) return (null, $"A jig eye needs its angle. {Advice}");
        if (!Units.TryParse(angle, Dimension.Angle, out double rad, out string? error)) return (null, error.Replace("25°", "60°", StringComparison.Ordinal));
        return JigAnglesRad.Contains(rad) ? (rad, null) : (null, $"{WordList.Quote(angle)} is not an angle that jig hooks are made with. {Advice}");
    }

    private static double Angle(string text) =>
        Units.TryParse(text, Dimension.Angle, out double rad, out string? error) ? rad : throw new ArgumentException(error, nameof(text));
}
