namespace TyingClass.Drawing.Plots;

/// <summary>How the fly rides at a plotted speed, told by shape.</summary>
internal enum MarkerKind
{
    /// <summary>As intended.</summary>
    Round,

    /// <summary>Leaning 30° or more, or on its side.</summary>
    Diamond,

    /// <summary>Flipped: over 120°.</summary>
    Cross,
}
