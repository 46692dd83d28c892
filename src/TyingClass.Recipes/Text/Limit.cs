namespace TyingClass.Recipes.Text;

/// <summary>What a field may hold: a dimension, a range as a tyer reads it, and an example to copy.</summary>
internal sealed record Limit(Dimension Dimension, string Low, string High, string Example)
{
    public double LowSi { get; } = Read(Low, Dimension);

    public double HighSi { get; } = Read(High, Dimension);

    /// <summary>Reads a value and holds it against the range; the sentence says what to write instead.</summary>
    public string? TryRead(string text, out double si)
    {
        if (!Units.TryParse(text, Dimension, out si, out string? error)) return error.Replace(Units.Example(Dimension), Example, StringComparison.Ordinal);
        return si >= LowSi && si <= HighSi ? null : OutOfRange(text);
    }

    public string OutOfRange(string text) => $"{WordList.Quote(text)} is out of range. It may be {Low} to {High}, for example {Example}.";

    private static double Read(string text, Dimension dimension) =>
        Units.TryParse(text, dimension, out double si, out string? error) ? si : throw new ArgumentException(error, nameof(text));
}

/// <summary>The ranges of a recipe's fields: wide enough for anything tied on a hook of 6/0 … 20, narrow enough to catch a slipped unit. Estimates.</summary>
internal static class Limits
{
    public static readonly Limit Shank = new(Dimension.Length, "1 mm", "100 mm", "22 mm");
    public static readonly Limit Wire = new(Dimension.Length, "0.1 mm", "3 mm", "0.8 mm");
    public static readonly Limit Gape = new(Dimension.Length, "1 mm", "50 mm", "8.5 mm");
    public static readonly Limit EyeAngle = new(Dimension.Angle, "0°", "60°", "25°");
    public static readonly Limit HookMass = new(Dimension.Mass, "1 mg", "10 g", "0.21 g");

    public static readonly Limit Size = new(Dimension.Length, "0.5 mm", "12 mm", "5.6 mm");
    public static readonly Limit Mass = new(Dimension.Mass, "0.1 mg", "10 g", "0.25 g");
    public static readonly Limit Density = new(Dimension.Density, "10 kg/m³", "20000 kg/m³", "8500 kg/m³");
    public static readonly Limit WireOfWraps = new(Dimension.Length, "0.02 mm", "2 mm", "0.025 in");
    public static readonly Limit Diameter = new(Dimension.Length, "0.2 mm", "60 mm", "6 mm");
    public static readonly Limit ConeLength = new(Dimension.Length, "0.5 mm", "20 mm", "5 mm");
    public static readonly Limit StrandLength = new(Dimension.Length, "1 mm", "250 mm", "45 mm");
    public static readonly Limit Place = new(Dimension.Length, "0 mm", "150 mm", "6 mm");
    public static readonly Limit SideOffset = new(Dimension.Length, "-10 mm", "10 mm", "0.3 mm");
    public static readonly Limit Clocked = new(Dimension.Angle, "-180°", "180°", "10°");

    public static readonly Limit LeaderDiameter = new(Dimension.Length, "0.05 mm", "1.5 mm", "0.25 mm");
    public static readonly Limit LeaderStrength = new(Dimension.Force, "0.5 lb", "150 lb", "12 lb");
    public static readonly Limit Temperature = new(Dimension.Temperature, "0 °C", "40 °C", "12 °C");
    public static readonly Limit Salinity = new(Dimension.Salinity, "0 g/kg", "42 g/kg", "35 g/kg");
    public static readonly Limit Speed = new(Dimension.Speed, "0.01 m/s", "3 m/s", "0.4 m/s");

    public const int FewestTurns = 1;
    public const int MostTurns = 200;
    public const int FewestBalls = 1;
    public const int MostBalls = 12;
    public const int MostLoops = 2;
    public const int MostParts = 60;
    public const int MostSteps = 60;
    public const int LongestStep = 300;
    public const int LongestName = 100;
}
