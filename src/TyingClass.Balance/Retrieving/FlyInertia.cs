using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Retrieving;

/// <summary>How a fly resists being sped up and turned: its own mass, the water held in its dressing, and the water set in motion with it.</summary>
/// <remarks>
/// Strip theory: a cylinder moves ρπd²/4 per length across itself (Lamb, Hydrodynamics; Newman, Marine Hydrodynamics, from memory), a ball half of its water,
/// and a body of a given slenderness the shares k₁ and k₂ of the ellipsoid (<see cref="LambInertia"/>); a flat plate ρπ(w/2)² per length square to itself.
/// About the eye, hook frame. docs/formulas.md#water-moved-along
/// </remarks>
internal sealed class FlyInertia
{
    // A row of points has no inertia about itself, which no solver likes: this share of the trace is added.
    private const double Thickness = 1e-4;

    private FlyInertia(double[] whole, double massKg, Vector3D massMomentKgM, Symmetric3 turning)
    {
        (Whole, MassKg, MassMomentKgM, Turning) = (whole, massKg, massMomentKgM, turning);
    }

    /// <summary>6×6 by rows: momentum and angular momentum about the eye against velocity of the eye and turning; moved water with it.</summary>
    public double[] Whole { get; }

    /// <summary>Without moved water.</summary>
    public double MassKg { get; }

    public Vector3D MassMomentKgM { get; }

    /// <summary>Moment of inertia about the eye, without moved water, kg·m².</summary>
    public Symmetric3 Turning { get; }

    public static FlyInertia Of(FlyBody body, Water water, bool movesWater = true)
    {
        double[] whole = new double[36];
        double mass = 0;
        Vector3D moment = default;
        Symmetric3 turning = default;
        foreach (BodyPart part in body.Parts)
        {
            double own = part.Masses.Sum(m => m.MassKg), held = own > 0 ? 1 + part.HeldWaterKg / own : 1;
            foreach (MassElement e in part.Masses)
            {
                Vector3D r = e.PositionM - body.TowPointM;
                double m = held * e.MassKg;
                mass += m;
                moment += m * r;
                turning += m * (Symmetric3.Diagonal(r.LengthSquared) - Symmetric3.About(r.LengthSquared > 0 ? r.Normalized() : default, 0, r.LengthSquared));
                Add(whole, Symmetric3.Diagonal(m), r);
            }

            if (!movesWater) continue;
            foreach (DragElement e in part.Drag) Add(whole, Moved(e, water), e.PositionM - body.TowPointM);
            foreach (SideForceElement e in part.SideForces.Where(e => e.Shape == SideForceShape.Plate))
                Add(whole, Moved(e, water), e.PositionM - body.TowPointM);
        }

        double small = Thickness * (turning.XX + turning.YY + turning.ZZ);
        turning += Symmetric3.Diagonal(small);
        for (int i = 3; i < 6; i++) whole[7 * i] += small;
        return new FlyInertia(whole, mass, moment, turning);
    }

    private static Symmetric3 Moved(DragElement e, Water water)
    {
        switch (e.Shape)
        {
            case DragShape.Sphere:
                return Symmetric3.Diagonal(0.5 * water.DensityKgM3 * Math.PI / 6 * Math.Pow(e.DiameterM, 3));
            case DragShape.Cylinder when e.DiameterM > 0 && e.LengthM > 0:
                (double endOn, double broadside) = double.IsFinite(e.SlendernessRatio) ? LambInertia.Of(e.SlendernessRatio) : (0, 1);
                double displaced = water.DensityKgM3 * Math.PI / 4 * e.DiameterM * e.DiameterM * e.LengthM;
                return Symmetric3.About(e.Axis, broadside * displaced, endOn * displaced);
            default:
                // Supple stuff gives way and moves little with it.
                return default;
        }
    }

    // Lamb's shares of a lens as thin as nothing tend to a disc's 8ρr³/3; a plate longer than wide moves ρπ(w/2)² per length.
    private static Symmetric3 Moved(SideForceElement plate, Water water)
    {
        double half = Math.Min(plate.WidthM, plate.LengthM) / 2, length = Math.Max(plate.WidthM, plate.LengthM);
        return Symmetric3.About(plate.Normal, 0, water.DensityKgM3 * Math.PI * half * half * length);
    }

    // Momentum of an element at r that moves with u + ω × r: A, and its moment: the blocks A, -A [r]ₓ, [r]ₓ A, -[r]ₓ A [r]ₓ.
    private static void Add(double[] whole, in Symmetric3 a, Vector3D r)
    {
        for (int column = 0; column < 6; column++)
        {
            Vector3D velocity = column < 3 ? Unit(column) : Vector3D.Cross(Unit(column - 3), r);
            Vector3D momentum = a * velocity, angular = Vector3D.Cross(r, momentum);
            whole[column] += momentum.X;
            whole[6 + column] += momentum.Y;
            whole[12 + column] += momentum.Z;
            whole[18 + column] += angular.X;
            whole[24 + column] += angular.Y;
            whole[30 + column] += angular.Z;
        }
    }

    private static Vector3D Unit(int axis) => new(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
}
