using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>Roll stiffness with yaw settled, at a symmetric attitude.</summary>
/// <param name="StiffnessNM">K, N·m/rad, positive returns.</param>
/// <param name="YawPerRoll">How far the fly yaws for each radian it is heeled, so that no yawing moment is left.</param>
public readonly record struct RollStiffness(double StiffnessNM, double YawPerRoll);

/// <summary>Keel height: K over wet weight.</summary>
/// <remarks>
/// In world axes through the tow point, x with the flow and z up, let J be the derivative of the moments (M_x, M_z) by roll about x and yaw about z.
/// Yaw settles fast, so it is eliminated: yaw = -(J_zx / J_zz) roll and K = -(J_xx - J_xz J_zx / J_zz). docs/formulas.md#keel-height
/// </remarks>
public static class Keel
{
    /// <summary>The roll stiffness, or null when the fly does not settle in yaw (J_zz ≥ 0).</summary>
    public static RollStiffness? TryStiffness(in Attitude attitude, in Linearized loads)
    {
        double zx = Component(attitude.Up, attitude.Flow, attitude, loads);
        double zz = Component(attitude.Up, attitude.Up, attitude, loads);
        if (!(zz < 0))
        {
            return null;
        }

        double yawPerRoll = -zx / zz;
        return new RollStiffness(RestoringNM(attitude, loads, yawPerRoll), yawPerRoll);
    }

    /// <summary>-∂M_x along the combined turn of one radian's roll and its yaw: linear in the loads, so that the shares of parts sum to the whole.</summary>
    public static double RestoringNM(in Attitude attitude, in Linearized loads, double yawPerRoll) =>
        -(Component(attitude.Flow, attitude.Flow, attitude, loads) + yawPerRoll * Component(attitude.Flow, attitude.Up, attitude, loads));

    /// <summary>Each part's share of K, N·m/rad, and the knot's last when there is one.</summary>
    /// <param name="yawPerRoll">Of the whole fly.</param>
    public static ImmutableArray<(string Part, double StiffnessNM)> Ledger(
        FlyBody body, FishingConditions conditions, double soakS, Attitude attitude, Linearized whole, double yawPerRoll)
    {
        ArgumentNullException.ThrowIfNull(body);
        ImmutableArray<(string, double)>.Builder shares = ImmutableArray.CreateBuilder<(string, double)>();
        double sum = 0;
        FishingConditions hinged = conditions with { Knot = Knot.Loop };
        foreach (BodyPart part in body.Parts.SelectMany(p => p.Pieces.IsEmpty ? [p] : p.Pieces))
        {
            TowedFly alone = TowedFly.From(body with { Parts = [part] }, hinged, soakS);
            double share = RestoringNM(attitude, alone.Linearize(attitude, conditions.SpeedMS), yawPerRoll);
            shares.Add((part.Name, share));
            sum += share;
        }

        if (conditions.Knot == Knot.Cinched)
        {
            shares.Add(("knot", RestoringNM(attitude, whole, yawPerRoll) - sum));
        }

        return shares.ToImmutable();
    }

    /// <summary>
    /// Each part's share of the moment that heels an upright fly with yaw settled, N·m, positive to the left as it swims: M_x - (J_xz / J_zz) M_z, linear in
    /// the loads. A fly alike on both sides has none.
    /// </summary>
    public static ImmutableArray<(string Part, double HeelingNM)> Heeling(
        FlyBody body, FishingConditions conditions, double soakS, Attitude attitude, Linearized whole)
    {
        ArgumentNullException.ThrowIfNull(body);
        double zz = Component(attitude.Up, attitude.Up, attitude, whole);
        double rollPerYaw = zz < 0 ? Component(attitude.Flow, attitude.Up, attitude, whole) / zz : 0;
        FishingConditions hinged = conditions with { Knot = Knot.Loop };
        return
        [
            .. body.Parts.Select(part =>
            {
                Vector3D moment = TowedFly.From(body with { Parts = [part] }, hinged, soakS).At(attitude, conditions.SpeedMS).MomentNM;
                return (part.Name, Vector3D.Dot(moment, attitude.Flow) - rollPerYaw * Vector3D.Dot(moment, attitude.Up));
            }),
        ];
    }

    // ∂(M_world · axis)/∂(turn about turnAxis): the hook-frame derivative plus the moment carried round by the turn itself.
    private static double Component(Vector3D axis, Vector3D turnAxis, in Attitude attitude, in Linearized loads) =>
        Vector3D.Dot(axis, loads.Turning * turnAxis + Vector3D.Cross(turnAxis, loads.MomentNM));
}
