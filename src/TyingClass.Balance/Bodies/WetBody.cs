using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Bodies;

/// <summary>Zeroth and first moments of mass and displaced volume, about the hook frame's origin.</summary>
public readonly record struct MassMoments(double MassKg, Vector3D MassMomentKgM, double VolumeM3, Vector3D VolumeMomentM4)
{
    /// <summary>Sums the elements of parts, their air as left after a soak.</summary>
    /// <param name="soakS">Seconds under water; positive infinity is soaked through.</param>
    public static MassMoments Of(IEnumerable<BodyPart> parts, double soakS)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double mass = 0, volume = 0;
        Vector3D massMoment = default, volumeMoment = default;
        foreach (BodyPart part in parts)
        {
            foreach (MassElement e in part.Masses)
            {
                mass += e.MassKg;
                massMoment += e.MassKg * e.PositionM;
            }

            foreach (VolumeElement e in part.Solids)
            {
                volume += e.VolumeM3;
                volumeMoment += e.VolumeM3 * e.PositionM;
            }

            foreach (AirElement e in part.Air)
            {
                double air = e.VolumeM3(soakS);
                volume += air;
                volumeMoment += air * e.PositionM;
            }
        }

        return new MassMoments(mass, massMoment, volume, volumeMoment);
    }

    public Vector3D MassCenterM => MassMomentKgM / MassKg;

    /// <summary>The mass center when nothing is displaced: buoyancy then acts nowhere.</summary>
    public Vector3D CenterOfBuoyancyM => VolumeM3 > 0 ? VolumeMomentM4 / VolumeM3 : MassCenterM;

    /// <summary>M - ρV, kg.</summary>
    public double WetMassKg(double densityKgM3) => MassKg - densityKgM3 * VolumeM3;

    /// <summary>Σ (m - ρV)(r - p), kg·m: what enters every equation.</summary>
    public Vector3D WetMomentKgM(double densityKgM3, Vector3D aboutM) =>
        MassMomentKgM - densityKgM3 * VolumeMomentM4 - WetMassKg(densityKgM3) * aboutM;

    /// <summary>
    /// So little weight is left in water, no more than 5 % of it, that what is divided by it runs away to infinity: balance point and keel height are then not
    /// told.
    /// </summary>
    public bool IsNearNeutral(double densityKgM3) => Math.Abs(WetMassKg(densityKgM3)) <= 0.05 * MassKg;

    /// <summary>The balance point, or null near neutral buoyancy.</summary>
    public Vector3D? BalancePointM(double densityKgM3) => IsNearNeutral(densityKgM3)
        ? null
        : (MassMomentKgM - densityKgM3 * VolumeMomentM4) / WetMassKg(densityKgM3);
}

/// <summary>Standard values.</summary>
public static class Standard
{
    /// <summary>Standard acceleration of gravity, m/s² (CGPM 1901).</summary>
    public const double GravityMS2 = 9.80665;
}
