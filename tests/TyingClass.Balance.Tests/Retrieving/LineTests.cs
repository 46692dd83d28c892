using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Retrieving;
using Xunit;

namespace TyingClass.Balance.Tests.Retrieving;

/// <summary>The line by itself, both ends held, against closed forms.</summary>
public sealed class LineTests(ITestOutputHelper output)
{
    // A catenary: 2a sinh(D/2a) = L, sag a (cosh(D/2a) - 1), level pull w a (Huygens, Leibniz and Bernoulli 1691; any text). In water it comes to rest.
    [Fact]
    public void Line_HungByBothEnds_IsACatenary()
    {
        const double length = 2, apart = 1.5, massKgM = 5e-3, diameter = 1e-3;
        double a = Solve(x => 2 * x * Math.Sinh(apart / 2 / x) - length, 0.3, 5), sag = a * (Math.Cosh(apart / 2 / a) - 1);
        double weight = 9.80665 * (massKgM - 998.2041 * Math.PI / 4 * diameter * diameter);
        LineChain line = Between(new Vector3D(0, 0, -5), new Vector3D(apart, 0, -5), length, 40, new LinePiece(0, massKgM, diameter, 1e3) { FrictionNSM2 = 0 });
        Settle(line, default, 60, 0.02);
        double lowest = -5 - line.PositionM.Min(p => p.Z), level = line.PullN * Math.Abs(line.AwayFromEye.X);
        output.WriteLine($"sag {lowest:F4} m, closed form {sag:F4}; level pull {1e3 * level:F3} mN, closed form {1e3 * weight * a:F3}");
        Assert.Equal(1, lowest / sag, 0.01);
        Assert.Equal(1, level / (weight * a), 0.01);
    }

    // A neutrally buoyant line in a stream that only loads it across itself, R sin²φ per length: its pull T is the same all along and T dφ = -R sin²φ ds, so
    // s = (T/R) cot φ, upstream (T/R)(1/sin φ - 1), up (T/R) ln cot(φ/2), counted from its lower end, where it lies square to the stream (Pode, DTMB Rep. 687,
    // 1951, no friction).
    // The line is as thick as keeps its drag coefficient within 2 % of 0.89 (Wieselsberger 1922: 0.886 at Re 2270) from φ = 90° to 35°.
    [Fact]
    public void Line_InAStream_HasTheShapeOfPode()
    {
        const double reach = 1, diameter = 5e-3, speed = 0.6, phi = 35 * Math.PI / 180;
        double length = reach / Math.Tan(phi), x = reach * (1 / Math.Sin(phi) - 1), y = reach * Math.Log(1 / Math.Tan(phi / 2));
        double loading = 0.5 * 998.2041 * 0.89 * diameter * speed * speed;
        LinePiece like = new(0, 998.2041 * Math.PI / 4 * diameter * diameter, diameter, 3e3) { FrictionNSM2 = 0 };
        LineChain line = Between(new Vector3D(0, 0, -2), new Vector3D(x, 0, -2 - y), length, 40, like);
        Settle(line, new Vector3D(-speed, 0, 0), 40, 0.02);
        double half = Math.Atan(1 / (length / 2 / reach));
        Vector3D middle = line.PositionM[20] - line.PositionM[40];
        output.WriteLine($"middle {middle}, pull {line.PullN:F3} N, closed form {loading * reach:F3}");
        Assert.Equal(-reach * (1 / Math.Sin(half) - 1), middle.X, 0.01);
        Assert.Equal(reach * Math.Log(1 / Math.Tan(half / 2)), middle.Z, 0.01);
        Assert.Equal(1, line.PullN / (loading * reach), 0.04);
    }

    // A stretched string swings to and fro in 2L √(m/H) (Mersenne 1636; any text). In water it moves its own displacement too, ρπd²/4 a length (Lamb,
    // Hydrodynamics, art. 68), so m + ρA takes the place of m.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Line_StretchedAndPlucked_SwingsInItsPeriod(bool inWater)
    {
        const double length = 2, diameter = 3e-3, stiffness = 2e4, step = 2e-4, pluck = 5e-4;
        double area = Math.PI / 4 * diameter * diameter, mass = 998.2041 * area, moved = inWater ? 998.2041 * area : 0;
        LinePiece like = new(0, mass, diameter, stiffness) { FrictionNSM2 = 0 };
        Water water = inWater ? Rig.Fresh : new Water(1e-6, 1e-9);
        LineChain line = new([.. Enumerable.Repeat(like with { RestM = length / 1.0005 / 40 }, 40)], water, null);
        double pull = stiffness * 0.0005, period = 2 * length * Math.Sqrt((mass + moved) / pull);
        for (int i = 0; i <= 40; i++) line.PositionM[i] = new Vector3D(i / 40.0 * length, pluck * Math.Sin(Math.PI * i / 40), -5);
        List<double> crossings = [];
        double last = pluck, time = 0;
        while (time < 2.2 * period)
        {
            Settle(line, default, step, step);
            time += step;
            double now = line.PositionM[20].Y;
            if (now * last < 0) crossings.Add(time - step * now / (now - last));
            last = now;
        }

        double measured = 2 * (crossings[^1] - crossings[0]) / (crossings.Count - 1);
        output.WriteLine($"{measured:F5} s, closed form {period:F5} s");
        Assert.True(crossings.Count >= 4);
        Assert.Equal(1, measured / period, 0.02);
    }

    private static LineChain Between(Vector3D from, Vector3D to, double lengthM, int pieces, LinePiece like)
    {
        LineChain line = new([.. Enumerable.Repeat(like with { RestM = lengthM / pieces }, pieces)], Rig.Fresh, null);
        // A bow downward, so that what is slack falls the way it will lie.
        for (int i = 0; i <= pieces; i++)
        {
            double share = i / (double)pieces;
            line.PositionM[i] = from + share * (to - from) + new Vector3D(0, 0, -0.1 * Math.Sin(Math.PI * share));
        }

        return line;
    }

    // Both ends drift through the water at a steady speed; places are told beside the first.
    private static void Settle(LineChain line, Vector3D drift, double seconds, double stepS)
    {
        int last = line.Count;
        Vector3D[] speeds = new Vector3D[last + 1];
        for (int step = 0; step < seconds / stepS; step++)
        {
            Array.Copy(line.VelocityMS, speeds, last + 1);
            line.Begin();
            for (int i = 1; i < last; i++) line.PositionM[i] += stepS * line.VelocityMS[i];
            (line.PositionM[0], line.PositionM[last]) = (line.PositionM[0] + stepS * drift, line.PositionM[last] + stepS * drift);
            bool agreed = false;
            for (int i = 0; i < 20 && !agreed; i++)
            {
                line.Eliminate(stepS, speeds, 1e-6);
                agreed = line.Substitute(stepS, default, 1e-6);
            }
        }
    }

    private static double Solve(Func<double, double> f, double low, double high)
    {
        double sign = Math.Sign(f(low));
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Math.Sign(f(middle)) == sign ? (middle, high) : (low, middle);
        }

        return low;
    }
}
