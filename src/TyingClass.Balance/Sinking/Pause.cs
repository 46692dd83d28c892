using System.Collections.Immutable;

namespace TyingClass.Balance.Sinking;

/// <summary>A fall from rest along one line, the line's leader drawn down behind: (m + m′ s) dv/dt = drive - drag(v) - pull(v, s), s what is gone.</summary>
/// <remarks>The first moments by Runge and Kutta; once the fly has its speed, that speed follows the growing length of leader, and only s is stepped
/// (Heun).</remarks>
public sealed class Pause
{
    private const double SettledShare = 1e-3;

    /// <param name="massKg">m.</param>
    /// <param name="driveN">What pulls it along its way.</param>
    /// <param name="dragN">Against speed, m/s.</param>
    public Pause(double massKg, double driveN, Func<double, double> dragN)
    {
        (MassKg, DriveN, DragN) = (massKg, driveN, dragN);
    }

    public double MassKg { get; }

    public double DriveN { get; }

    public Func<double, double> DragN { get; }

    /// <summary>What holds the fly back of the leader it has drawn down, N, against speed, m/s, and length, m.</summary>
    public Func<double, double, double> LeaderN { get; init; } = (_, _) => 0;

    /// <summary>m′: leader that falls with it, kg/m.</summary>
    public double LeaderKgM { get; init; }

    /// <summary>Way gone at equal times, m, the first at 0.</summary>
    /// <param name="terminalMS">Its speed with no leader.</param>
    /// <param name="enoughM">Goes on past the last time, but no more than tenfold, until this is gone; nothing more is reported of it than when.</param>
    public (ImmutableArray<double> GoneM, double? EnoughAfterS) Run(double terminalMS, double untilS, int points, double enoughM)
    {
        ImmutableArray<double>.Builder gone = ImmutableArray.CreateBuilder<double>(points + 1);
        gone.Add(0);
        double step = untilS / points, scale = MassKg * terminalMS / DriveN, speed = 0, at = 0;
        double? enoughAfterS = null;
        bool settled = false;
        for (int i = 1; i <= points || (i <= 10 * points && enoughAfterS is null && double.IsFinite(enoughM)); i++)
        {
            double before = at;
            if (settled)
            {
                Drift(ref speed, ref at, step, terminalMS);
            }
            else
            {
                settled = Fall(ref speed, ref at, step, scale, terminalMS);
            }

            if (i <= points)
            {
                gone.Add(at);
            }

            if (enoughAfterS is null && at >= enoughM)
            {
                enoughAfterS = step * (i - 1 + (at > before ? (enoughM - before) / (at - before) : 1));
            }
        }

        return (gone.ToImmutable(), enoughAfterS);
    }

    private bool Fall(ref double speed, ref double at, double seconds, double scale, double terminalMS)
    {
        int steps = (int)Math.Ceiling(seconds / (0.2 * scale));
        double h = seconds / steps;
        for (int i = 0; i < steps; i++)
        {
            if (Math.Abs(Rate(speed, at)) * scale < SettledShare * terminalMS)
            {
                Drift(ref speed, ref at, seconds - i * h, terminalMS);
                return true;
            }

            double k1 = Rate(speed, at), s2 = speed + h / 2 * k1, k2 = Rate(s2, at + h / 2 * speed);
            double s3 = speed + h / 2 * k2, k3 = Rate(s3, at + h / 2 * s2), s4 = speed + h * k3, k4 = Rate(s4, at + h * s3);
            at += h / 6 * (speed + 2 * s2 + 2 * s3 + s4);
            speed += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }

        return false;
    }

    private void Drift(ref double speed, ref double at, double seconds, double terminalMS)
    {
        double first = Steady(speed, at, terminalMS), second = Steady(first, at + seconds * first, terminalMS);
        at += seconds * (first + second) / 2;
        speed = second;
    }

    private double Rate(double speed, double at) => (DriveN - (speed > 0 ? DragN(speed) + LeaderN(speed, at) : 0)) / (MassKg + LeaderKgM * at);

    // The speed at which all is in balance with this much leader: secant steps, which stay positive because drag grows with speed.
    private double Steady(double from, double at, double terminalMS)
    {
        double a = Math.Max(from, 0.01 * terminalMS), fa = Left(a);
        double b = fa > 0 ? 1.02 * a : 0.98 * a, fb = Left(b);
        for (int i = 0; i < 20 && Math.Abs(fb) > 1e-9 * DriveN && fb != fa; i++)
        {
            double c = Math.Clamp(b - fb * (b - a) / (fb - fa), 0.5 * b, 2 * b);
            (a, fa) = (b, fb);
            (b, fb) = (c, Left(c));
        }

        return b;

        double Left(double v) => DriveN - DragN(v) - LeaderN(v, at);
    }
}
