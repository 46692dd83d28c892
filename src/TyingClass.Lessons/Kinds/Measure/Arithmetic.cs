using System.Globalization;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>A sum as it is written by hand: numbers, + − × ÷ and brackets; units beside the numbers are passed over.</summary>
internal sealed class Arithmetic
{
    private readonly string _text;
    private int _at;

    private Arithmetic(string text) => _text = string.Concat(text.Where(c => char.IsAsciiDigit(c) || ".+-−×÷()".Contains(c, StringComparison.Ordinal)));

    /// <returns>Null for what is no sum.</returns>
    public static double? Of(string text)
    {
        Arithmetic sum = new(text);
        return sum.Terms() is { } value && sum._at == sum._text.Length ? value : null;
    }

    private double? Terms()
    {
        double? value = Factors();
        while (value is not null && Next("+-−") is { } sign) value += (sign == '+' ? 1 : -1) * Factors();
        return value;
    }

    private double? Factors()
    {
        double? value = One();
        while (value is not null && Next("×÷") is { } sign) value = sign == '×' ? value * One() : value / One();
        return value;
    }

    private double? One()
    {
        if (Next("-−") is not null) return -One();
        if (Next("(") is not null) return Terms() is { } inside && Next(")") is not null ? inside : null;
        int from = _at;
        while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.')) _at++;
        return double.TryParse(_text[from.._at], CultureInfo.InvariantCulture, out double value) ? value : null;
    }

    private char? Next(string oneOf) => _at < _text.Length && oneOf.Contains(_text[_at], StringComparison.Ordinal) ? _text[_at++] : null;
}
