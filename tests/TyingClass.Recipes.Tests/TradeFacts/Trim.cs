using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// How a fly trims in its plane of symmetry, soaked, on the recipe's knot, and what its keel height is made of. Depths are plumb below the eye.
/// </summary>
/// <remarks>On a loop knot the keel height is exactly the depth of the balance point below the line from the eye through the center of the fly's resistance to
/// yaw: K = W'(h - s x), with h and x the balance point's depth and distance behind the eye and s that line's slope, M_x/M_z when the fly yaws.</remarks>
/// <param name="PitchDeg">Positive nose up; past 90 it hangs back beyond the plumb line.</param>
/// <param name="KeelMm">At any steepness; NaN when it does not settle in yaw.</param>
/// <param name="BelowLevelMm">Depth of the balance point below a level line through the eye.</param>
/// <param name="LineDropMm">How far the line of resistance has dropped where the balance point is.</param>
/// <param name="LineAngleDeg">Of the leader above the horizontal at the eye.</param>
internal sealed record Trim(
    Attitude Attitude, double PitchDeg, double KeelMm, double BelowLevelMm, double LineDropMm, double DragMN, double LiftMN, double LineAngleDeg)
{
    public static Trim Of(Recipe recipe, double speedMS)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        return Of(built.Body, built.Conditions, speedMS);
    }

    public static Trim Of(FlyBody body, FishingConditions conditions, double speedMS)
    {
        TowedFly fly = TowedFly.From(body, conditions, double.PositiveInfinity);
        // From fast to slow, as the engine does: at speed there is one pitch, near level.
        double pitch = 0;
        foreach (double speed in (ReadOnlySpan<double>)[3 * speedMS, speedMS])
        {
            if (!SymmetricAttitude.TryFindPitch(fly, body.Intent, speed, pitch, out pitch)) throw new InvalidOperationException($"It tumbles at {speed} m/s.");
        }

        Attitude at = Attitude.Symmetric(body.Intent, pitch);
        Linearized loads = fly.Linearize(at, speedMS);
        RollStiffness? stiffness = Keel.TryStiffness(at, loads);
        Vector3D balance = fly.WetMomentKgM / fly.WetMassKg;
        Vector3D yawed = loads.Turning * at.Up + Vector3D.Cross(at.Up, loads.MomentNM);
        double slope = Vector3D.Dot(yawed, at.Flow) / Vector3D.Dot(yawed, at.Up);
        double drag = Vector3D.Dot(loads.DragN, at.Flow), lift = Vector3D.Dot(loads.DragN, at.Up);
        return new Trim(
            at,
            pitch / Bench.Degree,
            stiffness is { } k ? 1e3 * k.StiffnessNM / fly.WetWeightN : double.NaN,
            -1e3 * Vector3D.Dot(balance, at.Up),
            1e3 * slope * Vector3D.Dot(balance, at.Flow),
            1e3 * drag,
            1e3 * lift,
            Math.Atan2(fly.WetWeightN - lift, drag) / Bench.Degree);
    }

    /// <summary>
    /// The least value, within a 10⁻⁴ part of the range, at which something that fails at <paramref name="low"/> holds; <paramref name="low"/> when it holds
    /// there already, NaN when it still fails at <paramref name="high"/>.
    /// </summary>
    public static double Least(double low, double high, Func<double, bool> holds)
    {
        if (holds(low)) return low;
        if (!holds(high)) return double.NaN;
        double width = high - low;
        while (high - low > 1e-4 * width)
        {
            double middle = (low + high) / 2;
            if (holds(middle)) high = middle;
            else low = middle;
        }

        return high;
    }
}
