using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>The water past each place of a fly, four places at once.</summary>
internal interface ILocalFlow
{
    /// <summary>No water moves past it anywhere.</summary>
    bool IsStill { get; }

    Triple At(in Triple arm);

    /// <summary>1/|w|.</summary>
    Vector256<double> PerSpeed(in Triple flow);
}

/// <summary>The same everywhere: the fly does not turn.</summary>
internal readonly struct UniformFlow : ILocalFlow
{
    private readonly Triple _flow;
    private readonly Vector256<double> _perSpeed;

    public UniformFlow(Vector3D flowMS)
    {
        double speed = flowMS.Length;
        (_flow, _perSpeed, IsStill) = (Triple.Of(flowMS), Vector256.Create(1 / speed), speed == 0);
    }

    public bool IsStill { get; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Triple At(in Triple arm) => _flow;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> PerSpeed(in Triple flow) => _perSpeed;
}

/// <summary>Of a fly that moves and turns: w - ω × r.</summary>
internal readonly struct TurningFlow : ILocalFlow
{
    private static readonly Vector256<double> Least = Vector256.Create(1e-12);
    private readonly Triple _flow, _turn;

    /// <param name="flowMS">Past the point that arms are counted from.</param>
    /// <param name="turnRadS">The fly's own turning, hook frame.</param>
    public TurningFlow(Vector3D flowMS, Vector3D turnRadS)
    {
        (_flow, _turn, IsStill) = (Triple.Of(flowMS), Triple.Of(turnRadS), flowMS == Vector3D.Zero && turnRadS == Vector3D.Zero);
    }

    public bool IsStill { get; }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Triple At(in Triple arm) => _flow + Triple.Cross(arm, _turn);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> PerSpeed(in Triple flow) => Vector256<double>.One / Vector256.Max(Vector256.Sqrt(Triple.Dot(flow, flow)), Least);
}
