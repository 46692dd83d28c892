namespace TyingClass.Recipes.Catalogue;

/// <summary>A catalogue number with its unit and where it comes from. No number enters the catalogue without one.</summary>
/// <param name="Value">In <paramref name="Unit"/>.</param>
/// <param name="Unit">As shown to a reader: "kg/m³", "s", "1" for a pure number.</param>
/// <param name="Source">A citation, or <see cref="Estimate"/>, with a remark after a comma where it helps.</param>
public readonly record struct Figure(double Value, string Unit, string Source)
{
    /// <summary>Common practice with no source: an editable default, never a measured fact.</summary>
    public const string Estimate = "estimate";

    public bool IsEstimate => Source.StartsWith(Estimate, StringComparison.Ordinal);

    /// <summary>Its row in the table of estimates (docs/estimates.md); null for what has a source, or is chosen, as turns of wire.</summary>
    public string? Name { get; private init; }

    /// <summary>It would surprise us to find it lower; in <see cref="Unit"/>. Only of a named one.</summary>
    public double Low { get; private init; }

    /// <summary>It would surprise us to find it higher.</summary>
    public double High { get; private init; }

    /// <summary>An estimate with the range that its doubt is drawn from.</summary>
    /// <param name="name">Told to readers, and what its draws are numbered by: another name is another sample.</param>
    /// <param name="why">The reason for the range.</param>
    public static Figure Guess(string name, double value, string unit, double low, double high, string why)
    {
        if (!(low <= value && value <= high)) throw new ArgumentException($"{name}: {value} is not between {low} and {high}.", nameof(value));
        return new Figure(value, unit, $"{Estimate}, {why}") { Name = name, Low = low, High = high };
    }

    /// <summary>As a list of the catalogue shows it.</summary>
    internal (string What, Figure Figure) Named => (Name ?? throw new InvalidOperationException("It has no name."), this);

    /// <summary>The same estimate drawn otherwise.</summary>
    internal Figure At(double value) => this with { Value = value };
}
