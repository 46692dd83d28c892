using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Sinking;

/// <summary>How a fly sinks on a slack line once it has settled.</summary>
/// <param name="Up">Up in the hook frame.</param>
/// <param name="FlowMS">Water past the fly, hook frame, m/s.</param>
/// <param name="IsIndifferent">Nothing turns it either way, as nothing turns a ball: it sinks at this rate in any attitude.</param>
public readonly record struct SteadySink(Vector3D Up, Vector3D FlowMS, bool IsStable, bool IsIndifferent = false)
{
    /// <summary>Vertical rate, m/s, positive down.</summary>
    public double RateMS => Vector3D.Dot(FlowMS, Up);

    public double PitchRad => Math.Asin(Math.Clamp(-Up.X, -1, 1));

    public double LeanRad(Intent intent)
    {
        double roll = Math.Abs(Math.Atan2(Up.Y, Up.Z));
        return intent == Intent.PointDown ? roll : Math.PI - roll;
    }
}
