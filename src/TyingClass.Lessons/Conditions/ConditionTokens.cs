using System.Text.RegularExpressions;
using Superpower;
using Superpower.Model;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Conditions;

internal enum ConditionToken { Quantity, Number, String, Path, Word, Sign, Open, Close }

/// <summary>Cuts a condition into quantities (longest name first), numbers with their unit, quoted text, paths, words and signs.</summary>
internal sealed partial class ConditionTokenizer : Tokenizer<ConditionToken>
{
    protected override IEnumerable<Result<ConditionToken>> Tokenize(TextSpan span)
    {
        string text = span.ToStringValue();
        TextSpan rest = SkipSpace(span);
        while (!rest.IsAtEnd)
        {
            int at = rest.Position.Absolute - span.Position.Absolute;
            (ConditionToken kind, int length) = Next(text, at);
            if (length == 0)
            {
                yield return Result.Empty<ConditionToken>(rest, ["a quantity", "a number", "a word"]);
                yield break;
            }

            TextSpan after = rest.Skip(length);
            yield return Result.Value(kind, rest, after);
            rest = SkipSpace(after);
        }
    }

    private static (ConditionToken, int) Next(string text, int at)
    {
        char c = text[at];
        if (c == '(') return (ConditionToken.Open, 1);
        if (c == ')') return (ConditionToken.Close, 1);
        if (QuantityQuery.TryReadPrefix(text, at, out _, out int end, out _) || end > at) return (ConditionToken.Quantity, end - at);
        if (Number().Match(text, at) is { Success: true } number) return (ConditionToken.Number, number.Length + UnitLength(text, at, number.Length));
        if (Quoted().Match(text, at) is { Success: true } quoted) return (ConditionToken.String, quoted.Length);
        if (Path().Match(text, at) is { Success: true } path) return (ConditionToken.Path, path.Length);
        if (Sign().Match(text, at) is { Success: true } sign) return (ConditionToken.Sign, sign.Length);
        if (Word().Match(text, at) is { Success: true } word) return (ConditionToken.Word, word.Length);
        return (ConditionToken.Word, 0);
    }

    // A word after a number belongs to it only when it is a unit: "3 and" is a bare 3.
    private static int UnitLength(string text, int at, int numberLength)
    {
        if (Unit().Match(text, at + numberLength) is not { Success: true } unit) return 0;
        string whole = text.Substring(at, numberLength + unit.Length);
        return Enum.GetValues<Dimension>().Any(d => Units.TryParse(whole, d, out _, out _)) ? unit.Length : 0;
    }

    private static TextSpan SkipSpace(TextSpan span)
    {
        while (!span.IsAtEnd && char.IsWhiteSpace(span[0])) span = span.ConsumeChar().Remainder;
        return span;
    }

    [GeneratedRegex(@"\G[0-9]+(?:\.[0-9]+)?(?:/[0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex(@"\G\s*(?:[A-Za-z°µ%\x22″]+[³3]?(?:[/·][A-Za-z]+[³3]?)?)")]
    private static partial Regex Unit();

    [GeneratedRegex("\\G(?:\"[^\"]*\"|“[^”]*”)")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\G(?:hook|fishing)\.[a-z]+|\Gparts(?:\[[0-9]{1,3}\](?:\.(?:side offset|[a-z]+))?)?(?![a-z])", RegexOptions.IgnoreCase)]
    private static partial Regex Path();

    [GeneratedRegex(@"\G(?:<=|>=|!=|[<>=≤≥≠+\-−*×/])")]
    private static partial Regex Sign();

    [GeneratedRegex(@"\G[\p{L}]+")]
    private static partial Regex Word();
}
