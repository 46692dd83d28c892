namespace TyingClass.Recipes.Catalogue;

/// <summary>What each estimate is taken to be: the table's own value, or one draw from its range. Whoever builds a fly asks here.</summary>
public sealed class Guesses
{
    /// <summary>Every estimate at the value of the table.</summary>
    public static readonly Guesses Usual = new();

    private readonly Func<Figure, double>? _drawn;
    private readonly Dictionary<Material, Material> _materials = new(ReferenceEqualityComparer.Instance);

    private Guesses()
    {
    }

    /// <param name="drawn">Value of a named estimate.</param>
    public Guesses(Func<Figure, double> drawn) => _drawn = drawn ?? throw new ArgumentNullException(nameof(drawn));

    /// <summary>False for the table's own values, and then nothing is worked out for the doubt.</summary>
    internal bool AreDrawn => _drawn is not null;

    /// <summary>A number with a source, and what a tyer chooses, are what they are.</summary>
    public double Of(Figure figure) => _drawn is null || figure.Name is null ? figure.Value : _drawn(figure);

    /// <summary>A material with its estimates drawn.</summary>
    internal Material Of(Material material)
    {
        if (_drawn is null) return material;
        if (_materials.TryGetValue(material, out Material? known)) return known;
        return _materials[material] = material with
        {
            Density = Drawn(material.Density),
            Suppleness = Drawn(material.Suppleness),
            CaughtAir = Drawn(material.CaughtAir),
            SoakTime = Drawn(material.SoakTime),
            SealedAir = Drawn(material.SealedAir),
            VoidShare = Drawn(material.VoidShare),
            HeldWater = Drawn(material.HeldWater),
            StreamerCoefficient = Drawn(material.StreamerCoefficient),
            LinearDensity = Drawn(material.LinearDensity),
            SideForceShare = Drawn(material.SideForceShare),
            FlatWidth = Drawn(material.FlatWidth),
        };
    }

    private Figure Drawn(Figure figure) => figure.Name is null ? figure : figure.At(_drawn!(figure));
}
