namespace TyingClass.Drawing.Plots;

/// <summary>One axis: from a value to a place on the page, with round-numbered ticks (steps of 1, 2 or 5 times a power of ten).</summary>
internal sealed class Scale
{
    private readonly double _from;
    private readonly double _to;

    private Scale(double low, double high, double step, double from, double to) =>
        (Low, High, Step, _from, _to) = (low, high, step, from, to);

    public double Low { get; }

    public double High { get; }

    public double Step { get; }

    public int Decimals => Math.Max(0, (int)Math.Ceiling(-Math.Log10(Step) - 1e-9));

    public IEnumerable<double> Ticks
    {
        get
        {
            int count = (int)Math.Round((High - Low) / Step);
            for (int i = 0; i <= count; i++)
                yield return Low + i * Step;
        }
    }

    /// <summary>Widens the range outward to whole steps.</summary>
    /// <param name="ticks">About how many.</param>
    public static Scale Round(double low, double high, int ticks, double from, double to)
    {
        if (!(high - low > 1e-9))
            (low, high) = (low - 0.5, high + 0.5);
        double raw = (high - low) / ticks;
        double power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        double step = power * ((raw / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 });
        return new Scale(Math.Floor(low / step + 1e-9) * step, Math.Ceiling(high / step - 1e-9) * step, step, from, to);
    }

    public static Scale Exact(double low, double high, double step, double from, double to) => new(low, high, step, from, to);

    public double At(double value) => _from + (value - Low) / (High - Low) * (_to - _from);
}
