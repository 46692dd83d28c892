using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Exercises;

/// <summary>"- keel height: at least 0.4 mm".</summary>
internal static partial class GoalReader
{
    private const string Forms = "Write “at least 0.4 mm”, “at most 0.1 g” or “between 5° and 15°”.";

    public static ImmutableArray<Goal> ReadRequired(FieldReader fields, bool hasStart)
    {
        if (!fields.Has("goals")) fields.Missing("goals", "say what the fly must do, as in “- keel height: at least 0.4 mm”.");
        return Read(fields, hasStart);
    }

    private static ImmutableArray<Goal> Read(FieldReader fields, bool hasStart)
    {
        ImmutableArray<Goal>.Builder goals = ImmutableArray.CreateBuilder<Goal>();
        foreach ((YamlNode place, string name, YamlNode? value) in fields.Pairs("goals"))
        {
            if (!QuantityQuery.TryParse(name, out QuantityQuery query, out string error))
                fields.Errors.Add(place, error);
            else if (query.Quantity.Takes.HasFlag(Circumstances.Start) && !hasStart)
                fields.Errors.Add(place, $"“{query.Name}” is counted from a fly given, and this exercise gives none.");
            else if (value is not YamlText { Value: var text })
                fields.Errors.Add(value ?? place, $"The goal “{query.Name}” needs a bound. {Forms}");
            else if (TryParse(query, text, out Goal? goal, out error))
                goals.Add(goal!);
            else
                fields.Errors.Add(value, error);
        }

        return goals.ToImmutable();
    }

    public static bool TryParse(QuantityQuery query, string text, out Goal? goal, out string error)
    {
        goal = null;
        if (Pattern().Match(text.Trim()) is not { Success: true } match)
        {
            error = $"“{FieldReader.Clip(text)}” is not a bound. {Forms}";
            return false;
        }

        bool between = match.Groups["word"].Value.StartsWith("between", StringComparison.OrdinalIgnoreCase);
        if (!TryRead(query.Quantity, match.Groups["a"].Value, out double a, out error)) return false;
        double b = a;
        if (between && !TryRead(query.Quantity, match.Groups["b"].Value, out b, out error)) return false;
        if (a > b)
        {
            error = "“between” takes the smaller figure first.";
            return false;
        }

        bool atLeast = match.Groups["word"].Value.EndsWith("least", StringComparison.OrdinalIgnoreCase);
        goal = new Goal(
            query.Name,
            between || atLeast ? a : double.NegativeInfinity,
            between || !atLeast ? b : double.PositiveInfinity);
        return true;
    }

    internal static bool TryRead(Quantity quantity, string text, out double si, out string error)
    {
        error = "";
        if (quantity.Dimension is { } dimension)
        {
            bool read = Units.TryParse(text, dimension, out si, out string? why);
            error = why ?? "";
            return read;
        }

        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out si)) return true;
        error = $"“{FieldReader.Clip(text)}” is not a plain number, and {quantity.Name} is counted without a unit.";
        return false;
    }

    [GeneratedRegex(@"\A(?:(?<word>at least|at most)\s+(?<a>.+)|(?<word>between)\s+(?<a>.+?)\s+and\s+(?<b>.+))\z", RegexOptions.IgnoreCase)]
    private static partial Regex Pattern();
}
