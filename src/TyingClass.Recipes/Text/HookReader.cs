using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>The hook group.</summary>
internal static partial class HookReader
{
    public static readonly string[] Keys = ["size", "shank", "wire", "gape", "eye", "bend", "mass"];

    private const int MostShankSteps = 10;
    private const int MostWireSteps = 6;

    public static HookSpec Read(MapReader map)
    {
        map.CheckKeys(Keys, key => $"{WordList.Quote(key)} is not a key of the hook.{Nearest.Hint(key, Keys)} The hook takes {WordList.And(Keys)}.");
        (int shankSteps, double? shankM) = StepsOrLength(map, "shank", ShankSteps(), MostShankSteps, Limits.Shank, "4XL (longer), 1XS (shorter)");
        (int wireSteps, double? wireM) = StepsOrLength(map, "wire", WireSteps(), MostWireSteps, Limits.Wire, "2XH (heavier), 1XF (finer)");
        (EyeKind eye, double? angleRad) = EyeText.Read(map);
        HookSpec hook = new()
        {
            Size = Size(map),
            ShankSteps = shankSteps,
            ShankM = shankM,
            WireSteps = wireSteps,
            WireM = wireM,
            GapeM = map.Quantity("gape", Limits.Gape),
            Eye = eye,
            EyeAngleRad = angleRad,
            Bend = map.Choice("bend", Words.Bends) ?? BendKind.Round,
            MassKg = map.Quantity("mass", Limits.HookMass),
        };
        RequireSizeOrMeasures(map, hook);
        return hook;
    }

    // A measure that was written but could not be read is complained about already.
    private static void RequireSizeOrMeasures(MapReader map, HookSpec hook)
    {
        bool measured = map.Has("gape")
            && (hook.ShankM is not null || Unread(map, "shank", hook.ShankSteps))
            && (hook.WireM is not null || Unread(map, "wire", hook.WireSteps));
        if (!measured) map.Missing("size", "Write one of the generic scale, such as “size: 6”, or give shank, wire and gape as lengths.");
    }

    private static bool Unread(MapReader map, string key, int steps) =>
        steps == 0 && map.Map.Find(key) is YamlText { Value: var text } && WordList.Plain(text) != "standard";

    private static HookSize? Size(MapReader map)
    {
        if (map.Text("size", "6 or 1/0") is not { } text) return null;
        Match match = SizeText().Match(text.Trim());
        if (match.Success)
        {
            int number = int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture);
            if (match.Groups["aught"].Success && number is >= 1 and <= 6) return new HookSize(1 - number);
            if (!match.Groups["aught"].Success && number is >= 2 and <= 20) return new HookSize(number);
        }

        map.Complain("size",
            $"{WordList.Quote(text)} is not a size of the generic scale. Sizes run from 20 (small) to 2, then 1/0 to 6/0 (large). A hook measured with a "
                + "caliper goes in shank, wire and gape.");
        return null;
    }

    private static (int Steps, double? LengthM) StepsOrLength(MapReader map, string key, Regex pattern, int most, Limit limit, string examples)
    {
        if (map.Text(key, $"“standard”, {examples} or {limit.Example}") is not { } text) return (0, null);
        string plain = WordList.Plain(text);
        if (plain == "standard") return (0, null);
        Match match = pattern.Match(plain);
        if (match.Success)
        {
            int steps = int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture);
            if (steps >= 1 && steps <= most) return (match.Groups["more"].Success ? steps : -steps, null);
            map.Complain(key,
                $"{WordList.Quote(text)} is out of range. It may be 1 to {most} steps; give a {key} beyond that as a length, such as {limit.Example}.");
            return (0, null);
        }

        if (plain.Length > 0 && (char.IsAsciiDigit(plain[0]) || plain[0] is '.' or '-' or '+') && !plain.Contains('x', StringComparison.Ordinal))
            return (0, map.Quantity(key, limit));
        map.Complain(key, $"{WordList.Quote(text)} is not a {key}. Write standard, {examples} or a length such as {limit.Example}.");
        return (0, null);
    }

    // "#6" and "No. 6" are how packets write it.
    [GeneratedRegex(@"^(?:#|no\.?)? ?(?<n>[0-9]{1,2})(?<aught>/0)?$", RegexOptions.IgnoreCase)]
    private static partial Regex SizeText();

    [GeneratedRegex(@"^(?<n>[0-9]{1,2}) ?x ?(?:(?<more>l|long)|(?<less>s|short))$")]
    private static partial Regex ShankSteps();

    [GeneratedRegex(@"^(?<n>[0-9]{1,2}) ?x ?(?:(?<more>h|heavy)|(?<less>f|fine))$")]
    private static partial Regex WireSteps();
}
