namespace TyingClass.Balance.Tying;

/// <summary>Standard normal deviates, the same for the same seed on every machine.</summary>
internal static class NormalDeviates
{
    /// <summary>Box and Muller, Ann. Math. Stat. 29 (1958) 610.</summary>
    public static double[] Of(int count, int seed)
    {
        Random random = new(seed);
        double[] deviates = new double[count];
        for (int i = 0; i < count; i += 2)
        {
            double radius = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
            (double sin, double cos) = Math.SinCos(2 * Math.PI * random.NextDouble());
            deviates[i] = radius * cos;
            if (i + 1 < count)
            {
                deviates[i + 1] = radius * sin;
            }
        }

        return deviates;
    }
}
