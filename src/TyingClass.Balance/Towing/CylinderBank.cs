using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>
/// The cylinders of a drag field, four side by side in a vector register. One array to each figure; the last four are filled up with cylinders that drag
/// nothing.
/// </summary>
internal sealed class CylinderBank
{
    private const int Lanes = 4;

    private readonly double[] _axisX, _axisY, _axisZ, _armX, _armY, _armZ, _normal, _reynoldsPerSpeed, _friction, _blunt;

    public CylinderBank(List<CylinderTerm> terms)
    {
        Count = terms.Count;
        int padded = (Count + Lanes - 1) / Lanes * Lanes;
        double[] Row() => new double[padded];
        (_axisX, _axisY, _axisZ, _armX, _armY, _armZ) = (Row(), Row(), Row(), Row(), Row(), Row());
        (_normal, _reynoldsPerSpeed, _friction, _blunt) = (Row(), Row(), Row(), Row());
        // Keeps a filled-up place within the table at any usual speed; its drag is nothing times that.
        Array.Fill(_reynoldsPerSpeed, 100);
        for (int i = 0; i < Count; i++) this[i] = terms[i];
    }

    public int Count { get; }

    public CylinderTerm this[int i]
    {
        get => new(
            new Vector3D(_armX[i], _armY[i], _armZ[i]), new Vector3D(_axisX[i], _axisY[i], _axisZ[i]), _normal[i], _reynoldsPerSpeed[i], _friction[i],
            _blunt[i]);
        set
        {
            (_armX[i], _armY[i], _armZ[i]) = (value.Arm.X, value.Arm.Y, value.Arm.Z);
            (_axisX[i], _axisY[i], _axisZ[i]) = (value.Axis.X, value.Axis.Y, value.Axis.Z);
            (_normal[i], _reynoldsPerSpeed[i], _friction[i], _blunt[i]) = (value.Normal, value.ReynoldsPerSpeed, value.Friction, value.Blunt);
        }
    }

    /// <summary>Force and moment in a flow. Allocates nothing.</summary>
    public Wrench At<TFlow>(TFlow past)
        where TFlow : struct, ILocalFlow
    {
        DragTable table = DragTable.Cylinder;
        Triple force = default, moment = default;
        for (int i = 0; i < _normal.Length; i += Lanes)
        {
            Triple axis = new(Load(_axisX, i), Load(_axisY, i), Load(_axisZ, i)), arm = new(Load(_armX, i), Load(_armY, i), Load(_armZ, i));
            Triple flow = past.At(arm);
            Vector256<double> along = Triple.Dot(flow, axis);
            Triple across = Triple.Add(flow, -along, axis);
            Vector256<double> speed = Vector256.Sqrt(Triple.Dot(across, across)), speedAlong = Vector256.Abs(along);
            Vector256<double> normal = Load(_normal, i) * table.At(speed * Load(_reynoldsPerSpeed, i)) * speed;
            Vector256<double> tangential = along * (Load(_friction, i) * Vector256.Sqrt(speedAlong) + Load(_blunt, i) * speedAlong);
            Triple f = Triple.Add(normal * across, tangential, axis);
            force += f;
            moment += Triple.Cross(arm, f);
        }

        return new Wrench(force.Sum(), moment.Sum());
    }

    /// <summary>As <see cref="At"/>, and how both change as the flow changes along two directions.</summary>
    /// <remarks>With n = w - (w·a)a and C(Re) at |n|: d(C |n| n) = C |n| dn + (C + Re C′)(n·dw) n/|n|, and d(√|u| u) = 3/2 √|u| du, d(|u| u) = 2 |u| du along
    /// the axis.</remarks>
    public (Wrench Here, Wrench ByFirst, Wrench BySecond) Differentiate(Vector3D flowMS, Vector3D first, Vector3D second)
    {
        DragTable table = DragTable.Cylinder;
        Triple flow = Triple.Of(flowMS), one = Triple.Of(first), two = Triple.Of(second);
        Triple force = default, moment = default, force1 = default, moment1 = default, force2 = default, moment2 = default;
        for (int i = 0; i < _normal.Length; i += Lanes)
        {
            Triple axis = new(Load(_axisX, i), Load(_axisY, i), Load(_axisZ, i)), arm = new(Load(_armX, i), Load(_armY, i), Load(_armZ, i));
            Vector256<double> along = Triple.Dot(flow, axis);
            Triple across = Triple.Add(flow, -along, axis);
            Vector256<double> speed = Vector256.Sqrt(Triple.Dot(across, across)), speedAlong = Vector256.Abs(along), root = Vector256.Sqrt(speedAlong);
            Vector256<double> strength = Load(_normal, i), coefficient = table.At(speed * Load(_reynoldsPerSpeed, i), out Vector256<double> growth);
            Vector256<double> normal = strength * coefficient * speed;
            // Along the axis there is no cross-flow, and so no direction for it to grow in.
            Vector256<double> rise = Vector256.ConditionalSelect(
                Vector256.GreaterThan(speed, Vector256<double>.Zero), strength * (coefficient + growth) / speed, Vector256<double>.Zero);
            Vector256<double> friction = Load(_friction, i) * root, blunt = Load(_blunt, i) * speedAlong;
            Vector256<double> steepness = Vector256.Create(1.5) * friction + Vector256.Create(2.0) * blunt;

            Triple f = Triple.Add(normal * across, along * (friction + blunt), axis);
            force += f;
            moment += Triple.Cross(arm, f);
            Triple f1 = Change(one, axis, across, normal, rise, steepness);
            force1 += f1;
            moment1 += Triple.Cross(arm, f1);
            Triple f2 = Change(two, axis, across, normal, rise, steepness);
            force2 += f2;
            moment2 += Triple.Cross(arm, f2);
        }

        return (new Wrench(force.Sum(), moment.Sum()), new Wrench(force1.Sum(), moment1.Sum()), new Wrench(force2.Sum(), moment2.Sum()));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Triple Change(in Triple d, in Triple axis, in Triple across, Vector256<double> normal, Vector256<double> rise, Vector256<double> steepness)
    {
        Vector256<double> dAlong = Triple.Dot(d, axis);
        return Triple.Add(Triple.Add(normal * d, rise * Triple.Dot(across, d), across), (steepness - normal) * dAlong, axis);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Load(double[] row, int at) => Triple.Load(row, at);
}

/// <summary>One cylinder with its constants multiplied out.</summary>
internal readonly record struct CylinderTerm(Vector3D Arm, Vector3D Axis, double Normal, double ReynoldsPerSpeed, double Friction, double Blunt);
