using Superpower;
using Superpower.Parsers;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>A sum as it is written by hand: numbers, + − × ÷ and brackets; units beside the numbers are passed over.</summary>
internal static class Arithmetic
{
    private static readonly TextParser<double> Sum = Sums();

    /// <returns>Null for what is no sum.</returns>
    public static double? Of(string text) =>
        Sum.AtEnd().TryParse(string.Concat(text.Where(c => char.IsAsciiDigit(c) || ".+-−×÷()".Contains(c, StringComparison.Ordinal)))) is
        { HasValue: true, Value: var value } ? value : null;

    private static TextParser<double> Sums()
    {
        TextParser<double> one = null!, sum = null!;
        TextParser<double> negative = Character.In('-', '−').IgnoreThen(Superpower.Parse.Ref(() => one)).Select(value => -value);
        one = Numerics.DecimalDouble.Or(negative).Or(Superpower.Parse.Ref(() => sum).Between(Character.EqualTo('('), Character.EqualTo(')')));
        TextParser<double> product = Superpower.Parse.Chain(Character.In('×', '÷'), one, (sign, a, b) => sign == '×' ? a * b : a / b);
        sum = Superpower.Parse.Chain(Character.In('+', '-', '−'), product, (sign, a, b) => sign == '+' ? a + b : a - b);
        return sum;
    }
}
