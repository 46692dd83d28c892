using MathNet.Numerics.LinearAlgebra;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>A rigid fly as the oracle sees it: sums over the elements, and the drag of all of them together.</summary>
internal sealed class OracleFly
{
    public const double Gravity = 9.80665;

    private readonly DragElement[] _drag;
    private readonly OracleVector[] _dragAt;
    private readonly SideForceElement[] _sides;
    private readonly MassElement[] _masses;
    private readonly OracleVector _massMoment;
    private readonly OracleVector _volumeMoment;

    public OracleFly(FlyBody body, FishingConditions conditions, bool soaked)
    {
        Body = body;
        Conditions = conditions;
        Water water = conditions.Water;
        (Rho, Mu) = (water.DensityKgM3, water.ViscosityPaS);
        _drag = [.. body.Parts.SelectMany(p => p.Drag)];
        _dragAt = [.. _drag.Select(d => OracleVector.Of(d.PositionM))];
        _sides = [.. body.Parts.SelectMany(p => p.SideForces)];
        _masses = [.. body.Parts.SelectMany(p => p.Masses)];
        foreach (MassElement m in _masses)
        {
            Mass += m.MassKg;
            _massMoment += m.MassKg * OracleVector.Of(m.PositionM);
        }

        // Air left: V0 exp(-t/τ) at t = 0 and as t → ∞.
        foreach ((double volume, OracleVector at) in body.Parts.SelectMany(p => p.Solids).Select(v => (v.VolumeM3, OracleVector.Of(v.PositionM)))
            .Concat(body.Parts.SelectMany(p => p.Air).Where(a => !soaked || double.IsPositiveInfinity(a.SoakTimeS))
                .Select(a => (a.FreshVolumeM3, OracleVector.Of(a.PositionM)))))
        {
            Volume += volume;
            _volumeMoment += volume * at;
        }
    }

    public FlyBody Body { get; }

    public FishingConditions Conditions { get; }

    public double Rho { get; }

    public double Mu { get; }

    public double Mass { get; }

    public double Volume { get; }

    public OracleVector MassCenter => (1 / Mass) * _massMoment;

    /// <summary>(M - ρV) g, N.</summary>
    public double WetWeight => (Mass - Rho * Volume) * Gravity;

    /// <summary>Moment of weight and buoyancy about a point, N·m.</summary>
    public OracleVector WeightMoment(OracleVector about, OracleVector up)
    {
        OracleVector first = _massMoment - Rho * _volumeMoment - (Mass - Rho * Volume) * about;
        return OracleVector.Cross(first, -Gravity * up);
    }

    /// <summary>Drag of all elements: force, and moment about a point, when the body turns at ω about that point.</summary>
    /// <param name="w">Water's velocity past the point, hook frame, m/s.</param>
    public (OracleVector Force, OracleVector Moment) Drag(OracleVector w, OracleVector omega, OracleVector about)
    {
        OracleVector force = default, moment = default;
        for (int i = 0; i < _drag.Length; i++)
        {
            OracleVector arm = _dragAt[i] - about;
            OracleVector f = OracleForces.Drag(_drag[i], w - OracleVector.Cross(omega, arm), Rho, Mu);
            force += f;
            moment += OracleVector.Cross(arm, f);
        }

        foreach (SideForceElement side in _sides)
        {
            OracleVector arm = OracleVector.Of(side.PositionM) - about;
            (OracleVector f, OracleVector own) = OracleForces.Side(side, w - OracleVector.Cross(omega, arm), Rho, Mu);
            force += f;
            moment += OracleVector.Cross(arm, f) + own;
        }

        return (force, moment);
    }

    /// <summary>
    /// Rotary inertia about a point, kg·m², with a tenth of its trace added evenly: a stand-in for the water carried along, and no attitude of rest depends on
    /// it.
    /// </summary>
    public Matrix<double> Inertia(OracleVector about)
    {
        Matrix<double> inertia = Matrix<double>.Build.Dense(3, 3);
        foreach (MassElement m in _masses)
        {
            OracleVector r = OracleVector.Of(m.PositionM) - about;
            Vector<double> v = Vector<double>.Build.Dense([r.X, r.Y, r.Z]);
            inertia += m.MassKg * (OracleVector.Dot(r, r) * Matrix<double>.Build.DenseIdentity(3) - v.OuterProduct(v));
        }

        return inertia + 0.1 * inertia.Trace() * Matrix<double>.Build.DenseIdentity(3);
    }
}
