using System.Runtime.Intrinsics;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>The round places of a fly that the water pushes aside, four side by side, as <see cref="CylinderBank"/> keeps its cylinders.</summary>
/// <remarks>
/// With w the flow, a the axis, u = w·a, n = w - u a and c = u/|w| = cos α: sin 2α cos(α/2) = 2 c |n|/|w| √((1 + |c|)/2), c folded past 90°. So
/// F = ρ ΔS √((1 + |c|)/2) B(c) u n, B 1 on the weather end and the rear's share on the lee end: B = (1 + s)/2 ± (1 - s)/2 σ(c), σ a rounded sign of c, +
/// where the section grows. docs/formulas.md#side-force
/// </remarks>
internal sealed class SideBank
{
    private const int Lanes = 4;
    private const double Rounding2 = SlenderBody.ChangeOver * SlenderBody.ChangeOver;
    private static readonly double SignScale = Math.Sqrt(1 + Rounding2);

    private readonly double[] _axisX, _axisY, _axisZ, _armX, _armY, _armZ, _strength, _even, _odd;

    public SideBank(List<SideTerm> terms)
    {
        Count = terms.Count;
        int padded = (Count + Lanes - 1) / Lanes * Lanes;
        double[] Row() => new double[padded];
        (_axisX, _axisY, _axisZ, _armX, _armY, _armZ) = (Row(), Row(), Row(), Row(), Row(), Row());
        (_strength, _even, _odd) = (Row(), Row(), Row());
        for (int i = 0; i < Count; i++) this[i] = terms[i];
    }

    public int Count { get; }

    public SideTerm this[int i]
    {
        get => new(new(_armX[i], _armY[i], _armZ[i]), new(_axisX[i], _axisY[i], _axisZ[i]), _strength[i], _even[i], _odd[i]);
        set
        {
            (_armX[i], _armY[i], _armZ[i]) = (value.Arm.X, value.Arm.Y, value.Arm.Z);
            (_axisX[i], _axisY[i], _axisZ[i]) = (value.Axis.X, value.Axis.Y, value.Axis.Z);
            (_strength[i], _even[i], _odd[i]) = (value.Strength, value.Even, value.Odd);
        }
    }

    /// <summary>Force and moment in a flow. Allocates nothing.</summary>
    public Wrench At<TFlow>(TFlow past)
        where TFlow : struct, ILocalFlow
    {
        if (Count == 0 || past.IsStill)
        {
            return default;
        }

        Triple force = default, moment = default;
        for (int i = 0; i < _strength.Length; i += Lanes)
        {
            Triple axis = Axis(i), arm = Arm(i), flow = past.At(arm);
            Vector256<double> along = Triple.Dot(flow, axis), cos = along * past.PerSpeed(flow);
            Shape shape = Shape.At(cos, Triple.Load(_even, i), Triple.Load(_odd, i));
            Triple f = (Triple.Load(_strength, i) * shape.Value * along) * Triple.Add(flow, -along, axis);
            force += f;
            moment += Triple.Cross(arm, f);
        }

        return new Wrench(force.Sum(), moment.Sum());
    }

    /// <summary>As <see cref="At"/>, and how both change as the flow changes along two directions.</summary>
    /// <remarks>dF = ρ ΔS [(φ′ dc u + φ du) n + φ u dn], with dc = (du - c w·dw/|w|)/|w| and φ = √((1 + |c|)/2) B.</remarks>
    public (Wrench Here, Wrench ByFirst, Wrench BySecond) Differentiate(Vector3D flowMS, Vector3D first, Vector3D second)
    {
        double speed = flowMS.Length;
        if (Count == 0 || speed == 0)
        {
            return default;
        }

        Triple flow = Triple.Of(flowMS), one = Triple.Of(first), two = Triple.Of(second);
        Vector256<double> perSpeed = Vector256.Create(1 / speed);
        Vector256<double> faster1 = Vector256.Create(Vector3D.Dot(flowMS, first) / speed), faster2 = Vector256.Create(Vector3D.Dot(flowMS, second) / speed);
        Triple force = default, moment = default, force1 = default, moment1 = default, force2 = default, moment2 = default;
        for (int i = 0; i < _strength.Length; i += Lanes)
        {
            Triple axis = Axis(i), arm = Arm(i);
            Vector256<double> strength = Triple.Load(_strength, i), along = Triple.Dot(flow, axis), cos = along * perSpeed;
            Shape shape = Shape.At(cos, Triple.Load(_even, i), Triple.Load(_odd, i));
            Triple across = Triple.Add(flow, -along, axis);
            Vector256<double> value = strength * shape.Value, rise = strength * shape.Slope * cos;

            Triple f = (value * along) * across;
            force += f;
            moment += Triple.Cross(arm, f);
            // ρΔS φ′ u/|w| (du - c d|w|) + ρΔS φ du along the cross-flow, ρΔS φ u of the change of the cross-flow itself.
            Vector256<double> along1 = Triple.Dot(one, axis), along2 = Triple.Dot(two, axis);
            Triple f1 = Triple.Add((rise * (along1 - cos * faster1) + value * along1) * across, value * along, Triple.Add(one, -along1, axis));
            force1 += f1;
            moment1 += Triple.Cross(arm, f1);
            Triple f2 = Triple.Add((rise * (along2 - cos * faster2) + value * along2) * across, value * along, Triple.Add(two, -along2, axis));
            force2 += f2;
            moment2 += Triple.Cross(arm, f2);
        }

        return (new Wrench(force.Sum(), moment.Sum()), new Wrench(force1.Sum(), moment1.Sum()), new Wrench(force2.Sum(), moment2.Sum()));
    }

    private Triple Axis(int i) => new(Triple.Load(_axisX, i), Triple.Load(_axisY, i), Triple.Load(_axisZ, i));

    private Triple Arm(int i) => new(Triple.Load(_armX, i), Triple.Load(_armY, i), Triple.Load(_armZ, i));

    /// <summary>φ(c) and its slope.</summary>
    private readonly record struct Shape(Vector256<double> Value, Vector256<double> Slope)
    {
        public static Shape At(Vector256<double> cos, Vector256<double> even, Vector256<double> odd)
        {
            Vector256<double> one = Vector256<double>.One, half = Vector256.Create(0.5);
            Vector256<double> fold = Vector256.Sqrt(half * (one + Vector256.Abs(cos)));
            Vector256<double> square = cos * cos + Vector256.Create(Rounding2), root = Vector256.Sqrt(square), scale = Vector256.Create(SignScale);
            Vector256<double> role = even + odd * (scale * cos / root);
            // d fold/dc is ¼ sign(c)/fold; the slope is only ever used times c, which takes the jump at 0 away.
            Vector256<double> sign = Vector256.ConditionalSelect(Vector256.LessThan(cos, Vector256<double>.Zero), -one, one);
            Vector256<double> slope = Vector256.Create(0.25) * sign / fold * role + fold * odd * (scale * Vector256.Create(Rounding2) / (square * root));
            return new Shape(fold * role, slope);
        }
    }
}

/// <summary>One round place with its constants multiplied out: ρ ΔS, and the even and odd halves of its roles.</summary>
internal readonly record struct SideTerm(Vector3D Arm, Vector3D Axis, double Strength, double Even, double Odd)
{
    public static SideTerm Of(SideForceElement e, double densityKgM3, Vector3D arm) => new(
        arm, e.Axis, densityKgM3 * e.SectionStepM2, (1 + e.RearShare) / 2, Math.Sign(e.SectionStepM2) * (1 - e.RearShare) / 2);
}
