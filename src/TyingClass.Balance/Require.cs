using System.Globalization;

namespace TyingClass.Balance;

/// <summary>Argument checks that name the argument, the value and the range; NaN never passes.</summary>
public static class Require
{
    public static double Finite(double value, string name) =>
        double.IsFinite(value) ? value : throw Error(value, name, "a finite number");

    public static double Positive(double value, string name) =>
        double.IsFinite(value) && value > 0 ? value : throw Error(value, name, "over 0");

    public static double NotNegative(double value, string name) =>
        double.IsFinite(value) && value >= 0 ? value : throw Error(value, name, "0 or more");

    public static double InRange(double value, double low, double high, string name) =>
        value >= low && value <= high
            ? value
            : throw Error(value, name, string.Create(CultureInfo.InvariantCulture, $"from {low} to {high}"));

    private static ArgumentOutOfRangeException Error(double value, string name, string wanted) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} is {value}; it must be {wanted}."));
}
