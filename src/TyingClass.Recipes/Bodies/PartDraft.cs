using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Bodies;

/// <summary>Gathers the elements of one part.</summary>
internal sealed class PartDraft(string name)
{
    private readonly ImmutableArray<MassElement>.Builder _masses = ImmutableArray.CreateBuilder<MassElement>();
    private readonly ImmutableArray<VolumeElement>.Builder _solids = ImmutableArray.CreateBuilder<VolumeElement>();
    private readonly ImmutableArray<AirElement>.Builder _air = ImmutableArray.CreateBuilder<AirElement>();
    private readonly ImmutableArray<DragElement>.Builder _drag = ImmutableArray.CreateBuilder<DragElement>();
    private readonly ImmutableArray<SideForceElement>.Builder _sideForces = ImmutableArray.CreateBuilder<SideForceElement>();
    private double _heldWaterKg;

    /// <summary>
    /// A solid as six equal points that share its mass, volume, centroid and second moments: ±√(3σ²) along its axis and two directions across, since 2 · (m/6)
    /// · 3σ² = m σ².
    /// </summary>
    public void AddSolid(double massKg, double volumeM3, Vector3D centroidM, Vector3D axis, Spread spread)
    {
        Vector3D along = axis.Normalized();
        Vector3D first = Vector3D.Cross(along, Math.Abs(along.Y) < 0.9 ? Vector3D.UnitY : Vector3D.UnitZ).Normalized();
        Vector3D second = Vector3D.Cross(along, first);
        double reachM = Math.Sqrt(3 * spread.AlongM2), sideM = Math.Sqrt(3 * spread.AcrossM2);
        foreach (Vector3D arm in (ReadOnlySpan<Vector3D>)[reachM * along, sideM * first, sideM * second])
        {
            AddPoint(massKg / 6, volumeM3 / 6, centroidM + arm);
            AddPoint(massKg / 6, volumeM3 / 6, centroidM - arm);
        }
    }

    public void AddPoint(double massKg, double volumeM3, Vector3D positionM)
    {
        _masses.Add(new MassElement(massKg, positionM));
        _solids.Add(new VolumeElement(volumeM3, positionM));
    }

    /// <summary>Air and water that go with a mass of dry stuff. mm³ per mg is 10⁻³ m³ per kg.</summary>
    /// <param name="roomM3">Room between the fibers, which the caught air cannot outgrow. The air sealed in hairs is inside them.</param>
    public void AddSoaking(double dryKg, Material material, Vector3D positionM, double roomM3 = double.PositiveInfinity)
    {
        AddAir(Math.Min(1e-3 * material.CaughtAir.Value * dryKg, roomM3), material.SoakTime.Value, positionM);
        AddAir(1e-3 * material.SealedAir.Value * dryKg, double.PositiveInfinity, positionM);
        _heldWaterKg += material.HeldWater.Value * dryKg;
    }

    /// <summary>Air that no water will ever take the place of.</summary>
    public void AddSealedAir(double volumeM3, Vector3D positionM) => AddAir(volumeM3, double.PositiveInfinity, positionM);

    public void AddDrag(DragElement element) => _drag.Add(element);

    public void AddSideForce(IEnumerable<SideForceElement> elements) => _sideForces.AddRange(elements);

    /// <summary>A straight run as one cylinder, or as <paramref name="pieces"/> equal ones; only the first has the blunt end.</summary>
    public void AddStraightDrag(Vector3D fromM, Vector3D toM, double diameterM, double slendernessRatio, int pieces, double bluntShare = 0)
    {
        Vector3D step = (toM - fromM) / pieces;
        if (!(step.Length > 0) || !(diameterM > 0)) return;

        for (int i = 0; i < pieces; i++)
        {
            AddDrag(DragElement.Cylinder(fromM + (i + 0.5) * step, step, step.Length, diameterM, i == 0 ? bluntShare : 0, slendernessRatio));
        }
    }

    public BodyPart ToPart(bool isTied = true) => new(name)
    {
        Masses = _masses.ToImmutable(),
        Solids = _solids.ToImmutable(),
        Air = _air.ToImmutable(),
        Drag = _drag.ToImmutable(),
        SideForces = _sideForces.ToImmutable(),
        HeldWaterKg = _heldWaterKg,
        IsTied = isTied,
    };

    private void AddAir(double volumeM3, double soakTimeS, Vector3D positionM)
    {
        if (volumeM3 > 0) _air.Add(new AirElement(volumeM3, soakTimeS, positionM));
    }
}
