using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>The pitch at which a fly, held in the plane of its bend, balances.</summary>
public static class SymmetricAttitude
{
    private const double SearchStepRad = 3 * Math.PI / 180;
    private const double PitchToleranceRad = 1e-13;

    /// <summary>
    /// The balanced pitch reached by letting the fly go from a given one: the moment falls through zero there, so it is stable in pitch. Always exists, since
    /// the moment is periodic in pitch and not of one sign; false if the search meets a number that is not finite or a moment of one sign all round (a fly that
    /// tumbles).
    /// </summary>
    /// <param name="fromPitchRad">Positive nose up.</param>
    public static bool TryFindPitch(TowedFly fly, Intent intent, double speedMS, double fromPitchRad, out double pitchRad)
    {
        ArgumentNullException.ThrowIfNull(fly);
        double here = fromPitchRad, moment = NoseUpMomentNM(fly, intent, speedMS, here);
        double direction = Math.Sign(moment);
        for (double turned = 0; turned < 2 * Math.PI && double.IsFinite(moment); turned += SearchStepRad)
        {
            if (moment == 0)
            {
                pitchRad = here;
                return true;
            }

            double next = here + direction * SearchStepRad;
            double there = NoseUpMomentNM(fly, intent, speedMS, next);
            if (direction * there <= 0)
            {
                pitchRad = Polish(fly, intent, speedMS, new(here, moment), new(next, there));
                return true;
            }

            (here, moment) = (next, there);
        }

        pitchRad = double.NaN;
        return false;
    }

    /// <summary>Moment about the tow point that turns the nose up, N·m.</summary>
    public static double NoseUpMomentNM(TowedFly fly, Intent intent, double speedMS, double pitchRad)
    {
        ArgumentNullException.ThrowIfNull(fly);
        Attitude attitude = Attitude.Symmetric(intent, pitchRad);
        return Vector3D.Dot(fly.At(attitude, speedMS).MomentNM, attitude.Across);
    }

    private readonly record struct Try(double PitchRad, double MomentNM);

    // Regula falsi with the Illinois weight (Dowell and Jarratt, BIT 11 (1971) 168): keeps the bracket, converges faster than a straight line.
    private static double Polish(TowedFly fly, Intent intent, double speedMS, Try from, Try to)
    {
        (double a, double fa) = from;
        (double b, double fb) = to;
        for (int i = 0; i < 100 && fb != 0 && Math.Abs(b - a) > PitchToleranceRad; i++)
        {
            double c = b - fb * (b - a) / (fb - fa);
            double fc = NoseUpMomentNM(fly, intent, speedMS, c);
            if (fc * fb <= 0)
            {
                (a, fa) = (b, fb);
            }
            else
            {
                fa /= 2;
            }

            bool settled = Math.Abs(c - b) < PitchToleranceRad;
            (b, fb) = (c, fc);
            if (settled)
            {
                break;
            }
        }

        return b;
    }
}
