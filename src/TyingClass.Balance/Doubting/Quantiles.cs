namespace TyingClass.Balance.Doubting;

/// <summary>Order statistics of draws, of which NaN marks those that have no such figure.</summary>
internal static class Quantiles
{
    private const double Low = 0.05, High = 0.95, MostMustHaveOne = 0.9;

    /// <summary>Null when fewer than nine in ten have one.</summary>
    public static Interval? Interval(double[] draws)
    {
        double[] known = [.. draws.Where(double.IsFinite).Order()];
        return known.Length == 0 || known.Length < MostMustHaveOne * draws.Length ? null : new Interval(At(known, Low), At(known, High));
    }

    /// <summary>Linear between order statistics, whose i-th of n stands at (i - ½)/n (Hyndman and Fan, Am. Stat. 50 (1996) 361, definition 5).</summary>
    public static double At(double[] ordered, double share)
    {
        double place = Math.Clamp(share * ordered.Length - 0.5, 0, ordered.Length - 1);
        int i = (int)place;
        return i + 1 < ordered.Length ? ordered[i] + (place - i) * (ordered[i + 1] - ordered[i]) : ordered[i];
    }

    /// <summary>0 when either does not vary.</summary>
    public static double SquaredCorrelation(double[] causes, double[] effects)
    {
        double n = 0, meanX = 0, meanY = 0, xx = 0, xy = 0, yy = 0;
        for (int i = 0; i < effects.Length; i++)
        {
            if (!double.IsFinite(effects[i])) continue;
            n++;
            // Welford's running sums, Technometrics 4 (1962) 419: no digits are lost where the mean is far from zero.
            double dx = causes[i] - meanX, dy = effects[i] - meanY;
            meanX += dx / n;
            meanY += dy / n;
            xx += dx * (causes[i] - meanX);
            xy += dx * (effects[i] - meanY);
            yy += dy * (effects[i] - meanY);
        }

        double scaleX = 1e-24 * n * meanX * meanX, scaleY = 1e-24 * n * meanY * meanY;
        return xx > scaleX && yy > scaleY ? xy * xy / (xx * yy) : 0;
    }
}
