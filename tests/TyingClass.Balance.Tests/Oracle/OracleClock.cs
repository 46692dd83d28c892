namespace TyingClass.Balance.Tests.Oracle;

/// <summary>
/// Steps y' = f(y) through time: Bogacki and Shampine's embedded pair of orders 3 and 2 (Applied Mathematics Letters 2 (1989) 321), step by step error kept in
/// bounds.
/// </summary>
internal sealed class OracleClock(int size, Action<double[], double[]> derivative, double[] tolerance)
{
    private readonly double[] _k1 = new double[size], _k2 = new double[size], _k3 = new double[size], _k4 = new double[size];
    private readonly double[] _trial = new double[size];
    private double _step = 1e-4;

    /// <summary>Advances <paramref name="y"/> by a time; <paramref name="project"/> runs after each step (keeps a quaternion of unit length).</summary>
    public void Advance(double[] y, double duration, Action<double[]> project)
    {
        double left = duration;
        derivative(y, _k1);
        while (left > 0)
        {
            double h = Math.Min(_step, left);
            Blend(y, h, (_k1, 0.5), default, default);
            derivative(_trial, _k2);
            Blend(y, h, (_k2, 0.75), default, default);
            derivative(_trial, _k3);
            Blend(y, h, (_k1, 2.0 / 9), (_k2, 1.0 / 3), (_k3, 4.0 / 9));
            derivative(_trial, _k4);
            double error = 0;
            for (int i = 0; i < size; i++)
            {
                double e = h * (-5.0 / 72 * _k1[i] + _k2[i] / 12 + _k3[i] / 9 - _k4[i] / 8);
                error = Math.Max(error, Math.Abs(e) / tolerance[i]);
            }

            if (error <= 1)
            {
                Array.Copy(_trial, y, size);
                Array.Copy(_k4, _k1, size);
                project(y);
                left -= h;
            }

            double wanted = h * Math.Clamp(0.9 * Math.Pow(Math.Max(error, 1e-9), -1.0 / 3), 0.2, 4);
            if (error > 1 || h == _step || wanted < _step) _step = wanted;
            if (_step < 1e-9) throw new InvalidOperationException("The oracle's step ran down to nothing.");
        }
    }

    private void Blend(double[] y, double h, (double[] K, double Share) a, (double[] K, double Share) b, (double[] K, double Share) c)
    {
        for (int i = 0; i < size; i++)
        {
            double slope = a.Share * a.K[i];
            if (b.K is not null) slope += b.Share * b.K[i] + c.Share * c.K[i];
            _trial[i] = y[i] + h * slope;
        }
    }
}
