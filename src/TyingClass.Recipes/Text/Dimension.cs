namespace TyingClass.Recipes.Text;

/// <summary>What a number with a unit measures. The value inside is SI, except temperature, which stays in °C.</summary>
public enum Dimension
{
    /// <summary>m.</summary>
    Length,

    /// <summary>kg.</summary>
    Mass,

    /// <summary>rad.</summary>
    Angle,

    /// <summary>m/s.</summary>
    Speed,

    /// <summary>°C.</summary>
    Temperature,

    /// <summary>kg/m³.</summary>
    Density,

    /// <summary>m³.</summary>
    Volume,

    /// <summary>N; lb and kg are read as the pull they exert at rest, as on a leader spool.</summary>
    Force,

    /// <summary>kg·m: a mass moment, as the ledger counts it.</summary>
    Moment,

    /// <summary>kg/m: of wire, or of what is wound on.</summary>
    MassPerLength,

    /// <summary>kg of salt per kg of water.</summary>
    Salinity,

    /// <summary>A share of 1, written in percent.</summary>
    Share,

    /// <summary>s.</summary>
    Duration,
}

/// <summary>Which units a reader prefers to see.</summary>
public enum UnitSystem { Metric, Imperial }
