using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Text;

/// <summary>The leader: a diameter or a breaking strength, and what it is made of: "0.25 mm fluorocarbon", "12 lb nylon".</summary>
internal static partial class LeaderText
{
    public const string Forms = "“0.25 mm fluorocarbon” or “12 lb nylon”";

    public static string? TryRead(string text, ref FishingSpec fishing)
    {
        string[] words = WordList.Plain(text).Split(' ');
        LeaderMaterial[] materials =
            [.. words.Where(w => Words.Leaders.TryGet(w, out _)).Select(w => Words.Leaders.TryGet(w, out LeaderMaterial m) ? m : default)];
        if (materials.Length > 1) return $"{WordList.Quote(text)} names a material twice. Keep one of {WordList.Or(Words.Leaders.Words)}.";
        LeaderMaterial? material = materials.Length == 1 ? materials[0] : null;
        string plain = string.Join(' ', words.Where(w => !Words.Leaders.TryGet(w, out _)));
        if (TippetSize().Match(plain) is { Success: true } size)
            return $"{WordList.Quote(text)} is a tippet size, and makers differ on those. Write the diameter printed on the spool, as "
                + $"in {Forms}.{RuleOfEleven(int.Parse(size.Groups["x"].Value, CultureInfo.InvariantCulture))}";
        if (plain.Length == 0) return $"{WordList.Quote(text)} does not say how thick the leader is. Write {Forms}.";
        if (!NumberText.TrySplit(plain, "0.25 mm", out _, out string unit, out string? error)) return $"{error} A leader reads {Forms}.";
        if (Units.IsUnitOf(unit, Dimension.Length))
            return Take(Limits.LeaderDiameter.TryRead(plain, out double diameterM), fishing with { LeaderDiameterM = diameterM, LeaderMaterial = material },
                ref fishing);
        if (Units.IsUnitOf(unit, Dimension.Force))
            return Take(Limits.LeaderStrength.TryRead(plain, out double strengthN), fishing with { LeaderStrengthN = strengthN, LeaderMaterial = material },
                ref fishing);
        if (unit.Length == 0) return $"{WordList.Quote(text)} has no unit. Write mm or in for a diameter, lb or kg for a breaking strength: {Forms}.";
        string last = unit.Split(' ')[^1];
        return $"{WordList.Quote(text)} cannot be read as a leader.{Nearest.Hint(last, Words.Leaders.Words)} Write a diameter (mm, in) or a breaking "
            + $"strength (lb, kg), then nylon or fluorocarbon: {Forms}.";
    }

    // The number and the thousandths of an inch add up to eleven: common practice, no source.
    private static string RuleOfEleven(int x) => x > 8 ? "" : string.Create(
        CultureInfo.InvariantCulture,
        $" By the trade's rule of eleven {x}X is 0.{11 - x:000} in, "
            + $"which is {Units.Write(Units.ToSi((11 - x) / 1e3, Dimension.Length, "in"), Dimension.Length, 2)}.");

    private static string? Take(string? error, FishingSpec read, ref FishingSpec fishing)
    {
        if (error is null) fishing = read;
        return error;
    }

    [GeneratedRegex(@"^(?<x>[0-9]{1,2})\s?x$")]
    private static partial Regex TippetSize();
}
