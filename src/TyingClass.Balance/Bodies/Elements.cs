using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Bodies;

/// <summary>A point mass.</summary>
/// <param name="MassKg">Mass, kg, zero or more.</param>
/// <param name="PositionM">Place in the hook frame, m.</param>
public readonly record struct MassElement(double MassKg, Vector3D PositionM);

/// <summary>A displaced volume that stays as long as the fly is wet through: the solid itself.</summary>
/// <param name="VolumeM3">Volume, m³, zero or more.</param>
/// <param name="PositionM">Place in the hook frame, m.</param>
public readonly record struct VolumeElement(double VolumeM3, Vector3D PositionM);

/// <summary>Air held by a dressing, driven out as it soaks: V(t) = V0 exp(-t/τ).</summary>
/// <param name="FreshVolumeM3">Volume fresh from the cast, m³.</param>
/// <param name="SoakTimeS">τ, s; positive infinity for a closed cell that never soaks.</param>
/// <param name="PositionM">Place in the hook frame, m.</param>
public readonly record struct AirElement(double FreshVolumeM3, double SoakTimeS, Vector3D PositionM)
{
    /// <summary>The air left after <paramref name="soakS"/> seconds (positive infinity: soaked), m³.</summary>
    public double VolumeM3(double soakS) =>
        double.IsPositiveInfinity(SoakTimeS) ? FreshVolumeM3
        : double.IsPositiveInfinity(soakS) ? 0
        : FreshVolumeM3 * Math.Exp(-soakS / SoakTimeS);
}

/// <summary>Which law of drag an element obeys.</summary>
public enum DragShape
{
    /// <summary>Cross-flow on a slender cylinder, plus skin friction along it, plus a blunt end if it has one.</summary>
    Cylinder,

    /// <summary>A sphere.</summary>
    Sphere,

    /// <summary>Supple stuff that trails with the flow: a force along the flow, whatever the attitude.</summary>
    Streamer,
}

/// <summary>One piece that the water drags on. Use the factories; each keeps only what its law needs.</summary>
public readonly record struct DragElement
{
    public DragShape Shape { get; private init; }

    /// <summary>Where the force acts, hook frame, m.</summary>
    public Vector3D PositionM { get; private init; }

    /// <summary>Unit vector along a cylinder; zero for the others.</summary>
    public Vector3D Axis { get; private init; }

    /// <summary>Length of a cylinder, m.</summary>
    public double LengthM { get; private init; }

    /// <summary>Diameter of a cylinder or sphere, m.</summary>
    public double DiameterM { get; private init; }

    /// <summary>Share of the cylinder's end area (π/4)d² that meets the flow bluntly, 0 to 1.</summary>
    public double BluntShare { get; private init; }

    /// <summary>
    /// Reference length over diameter of the whole body this piece belongs to, for the finite-length correction of cross-flow drag; infinity for none.
    /// </summary>
    public double SlendernessRatio { get; private init; }

    /// <summary>Streamer: drag coefficient times reference area, C_s A, m².</summary>
    public double StreamerAreaM2 { get; private init; }

    public static DragElement Cylinder(
        Vector3D centerM, Vector3D axis, double lengthM, double diameterM, double bluntShare = 0, double slendernessRatio = double.PositiveInfinity) => new()
        {
            Shape = DragShape.Cylinder,
            PositionM = centerM,
            Axis = axis.Normalized(),
            LengthM = Require.NotNegative(lengthM, nameof(lengthM)),
            DiameterM = Require.NotNegative(diameterM, nameof(diameterM)),
            BluntShare = Require.InRange(bluntShare, 0, 1, nameof(bluntShare)),
            SlendernessRatio = slendernessRatio,
        };

    public static DragElement Sphere(Vector3D centerM, double diameterM) => new()
    {
        Shape = DragShape.Sphere,
        PositionM = centerM,
        DiameterM = Require.NotNegative(diameterM, nameof(diameterM)),
        SlendernessRatio = double.PositiveInfinity,
    };

    /// <param name="pointM">Where the pull reaches the hook, hook frame, m.</param>
    /// <param name="dragAreaM2">Drag coefficient times area, m².</param>
    public static DragElement Streamer(Vector3D pointM, double dragAreaM2) => new()
    {
        Shape = DragShape.Streamer,
        PositionM = pointM,
        StreamerAreaM2 = Require.NotNegative(dragAreaM2, nameof(dragAreaM2)),
        SlendernessRatio = double.PositiveInfinity,
    };

    /// <summary>The same element carried along by a rigid motion.</summary>
    public DragElement Moved(Func<Vector3D, Vector3D> point, Func<Vector3D, Vector3D> direction)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(direction);
        return this with
        {
            PositionM = point(PositionM),
            Axis = Shape == DragShape.Cylinder ? direction(Axis) : Axis,
        };
    }
}
