using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Bodies;

/// <summary>Which law of side force an element obeys.</summary>
public enum SideForceShape
{
    /// <summary>A place where the section of a round body grows or shrinks (<see cref="SlenderBody"/>).</summary>
    Round,

    /// <summary>A whole flat plate, its friction and broadside drag with it (<see cref="FlatPlate"/>).</summary>
    Plate,
}

/// <summary>One piece that the water pushes aside when it lies askew to the flow. Use the factories; each keeps only what its law needs.</summary>
public readonly record struct SideForceElement
{
    public SideForceShape Shape { get; private init; }

    /// <summary>Where the force acts, hook frame, m; the middle of a plate.</summary>
    public Vector3D PositionM { get; private init; }

    /// <summary>Unit vector along the body, or along the plate's length.</summary>
    public Vector3D Axis { get; private init; }

    /// <summary>Unit vector square to a plate; zero for a round body.</summary>
    public Vector3D Normal { get; private init; }

    /// <summary>Round: how much the section that pushes water aside grows here on the way along the axis, m²; under 0 where it shrinks.</summary>
    public double SectionStepM2 { get; private init; }

    /// <summary>Round: share kept while this place is on the lee end of its body.</summary>
    public double RearShare { get; private init; }

    /// <summary>Plate: along its axis, m.</summary>
    public double LengthM { get; private init; }

    /// <summary>Plate: across its axis, m.</summary>
    public double WidthM { get; private init; }

    /// <summary>Plate: what is estimated of its force.</summary>
    public PlateLaw Law { get; private init; }

    /// <param name="positionM">The centroid of the growth, hook frame, m.</param>
    /// <param name="sectionStepM2">
    /// Growth along the axis of the section times its share of the slender body's force (<see cref="LambInertia.SideShare"/>, porosity).
    /// </param>
    /// <param name="rearShare">1 in an ideal fluid.</param>
    public static SideForceElement Round(Vector3D positionM, Vector3D axis, double sectionStepM2, double rearShare = SlenderBody.RearShare) => new()
    {
        Shape = SideForceShape.Round,
        PositionM = positionM,
        Axis = axis.Normalized(),
        SectionStepM2 = Require.Finite(sectionStepM2, nameof(sectionStepM2)),
        RearShare = Require.InRange(rearShare, 0, 1, nameof(rearShare)),
    };

    /// <summary>
    /// A rod cut off square: its section begins at one end and ends at the other. One shorter than it is wide turns as a lens does, by a couple alone.
    /// </summary>
    /// <param name="share">What is left of the force of a solid body, 1 for one.</param>
    /// <param name="slenderness">Length over width of the body it is taken for.</param>
    public static IEnumerable<SideForceElement> Rod(
        Vector3D fromM, Vector3D toM, double diameterM, double slenderness, double share = 1, double rearShare = SlenderBody.RearShare)
    {
        // A rest of a strand that rounding left, of no mass and no width.
        if (diameterM == 0 || fromM == toM) return [];
        double force = LambInertia.SideShare(slenderness) * share;
        // A net force would grow without bound as the disc gets thinner; half of both ends' shares is the couple a long rod has.
        (double strength, double rear) = force < 0 ? (force * (1 + rearShare) / 2, 1) : (force, rearShare);
        double sectionM2 = strength * Math.PI / 4 * diameterM * diameterM;
        return sectionM2 == 0 ? [] : [Round(fromM, toM - fromM, sectionM2, rear), Round(toM, toM - fromM, -sectionM2, rear)];
    }

    /// <param name="centerM">Hook frame, m.</param>
    /// <param name="axis">Along its length.</param>
    /// <param name="normal">Square to it.</param>
    public static SideForceElement Plate(Vector3D centerM, Vector3D axis, Vector3D normal, double lengthM, double widthM, PlateLaw law)
    {
        Vector3D along = axis.Normalized();
        return new()
        {
            Shape = SideForceShape.Plate,
            PositionM = centerM,
            Axis = along,
            Normal = (normal - Vector3D.Dot(normal, along) * along).Normalized(),
            LengthM = Require.NotNegative(lengthM, nameof(lengthM)),
            WidthM = Require.NotNegative(widthM, nameof(widthM)),
            Law = law,
        };
    }

    /// <summary>The same element carried along by a rigid motion.</summary>
    public SideForceElement Moved(Func<Vector3D, Vector3D> point, Func<Vector3D, Vector3D> direction)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(direction);
        return this with { PositionM = point(PositionM), Axis = direction(Axis), Normal = direction(Normal) };
    }
}
