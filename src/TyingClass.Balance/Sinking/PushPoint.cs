using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Sinking;

/// <summary>Where the push of the water acts on a soaked fly that is held level and sinks straight down, the way up it is meant to ride.</summary>
/// <remarks>Many small forces, and one line along which their sum acts: taken where that line crosses the height of the balance point. Ahead of the balance
/// point it turns the nose up, behind it down (statics). Let go, the fly turns until the line passes through the balance point, and the two are one.</remarks>
public static class PushPoint
{
    private const double FirstMS = 0.3;
    private const int Rounds = 30;

    /// <returns>How far behind the front of the shank, m; null for a fly that does not sink.</returns>
    public static double? BehindFrontM(FlyBody body, FishingConditions conditions, Intent intent)
    {
        ArgumentNullException.ThrowIfNull(body);
        MassMoments moments = MassMoments.Of(body.Parts, double.PositiveInfinity);
        double density = conditions.Water.DensityKgM3, wetKg = moments.WetMassKg(density);
        if (!(wetKg > 0)) return null;
        Vector3D balance = moments.MassCenterM + moments.WetMomentKgM(density, moments.MassCenterM) / wetKg;
        DragField drag = new(body.Parts, conditions.Water, balance);
        Vector3D up = new(0, 0, intent == Intent.PointUp ? -1 : 1);
        double speed = FirstMS;
        Wrench push = drag.At(speed * up);
        // Drag grows as about the square of speed.
        for (int i = 0; i < Rounds; i++)
        {
            double held = Vector3D.Dot(push.ForceN, up);
            if (!(held > 0)) return null;
            speed *= Math.Sqrt(wetKg * Standard.GravityMS2 / held);
            push = drag.At(speed * up);
        }

        return balance.X - push.MomentNM.Y / push.ForceN.Z;
    }
}
