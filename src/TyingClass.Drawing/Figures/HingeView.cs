using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Figures;

/// <summary>
/// The hinge line of a towed fly: from the ring to the place that stands the keel height straight above the balance point. Held upright in the way it was meant
/// to ride, at the speed it is fished, soaked.
/// </summary>
/// <param name="PitchDeg">Of that attitude.</param>
/// <param name="KeelMm">Keel height.</param>
/// <param name="Balance">The balance point on the page of a side view, the ring at the origin.</param>
internal readonly record struct HingeView(double PitchDeg, double KeelMm, Point Balance)
{
    // Nearer than this below or above the ring the line has no direction that means anything.
    private const double NearestMm = 0.8;

    /// <summary>As drawings call it.</summary>
    public const string Name = "hinge line";

    /// <summary>How far the hinge line rises toward the tail, degrees.</summary>
    public double RiseDeg => double.RadiansToDegrees(Math.Atan2(KeelMm - Balance.Y, Balance.X));

    /// <summary>Straight above the balance point, on the hinge line.</summary>
    public Point Above => Balance + new Point(0, -KeelMm);

    /// <summary>From the ring toward the tail along the hinge line; null where it has no direction that means anything.</summary>
    public static Point? Aft(Point balance, double keelMm) => balance.X < NearestMm ? null : new Point(balance.X, balance.Y - keelMm).Unit();

    /// <exception cref="ArgumentException">The fly has no hinge line that could be drawn.</exception>
    public static HingeView Of(SolvedFly fly)
    {
        StateReport soaked = fly.Report.Soaked;
        return soaked.AtFishingSpeed.KeelHeightMm.For(fly.Report.Intent) is null || soaked.BalancePointMm is null
            ? throw new ArgumentException($"{fly.Recipe.Name} has no keel height at the speed it is fished, so no hinge line can be drawn.")
            : Find(fly, soaked)
                ?? throw new ArgumentException($"The balance point of {fly.Recipe.Name} lies right at the ring, so its hinge line has no direction.");
    }

    /// <summary>Null where the fly has none that could be drawn.</summary>
    public static HingeView? Find(SolvedFly fly, StateReport state)
    {
        TowReport tow = state.AtFishingSpeed;
        if (tow.KeelHeightMm.For(fly.Report.Intent) is not { } keel || state.BalancePointMm is not { } at)
            return null;
        Point balance = new View(Pose.Towed(tow.SymmetricPitchDeg, 0, fly.Report.Intent), fly.Report.TowPointMm, Facing.Side).At(at);
        return balance.X < NearestMm ? null : new HingeView(tow.SymmetricPitchDeg, keel, balance);
    }

    /// <summary>The fly held upright, seen from ahead along its hinge line, which is then a point.</summary>
    public View EndOn(SolvedFly fly) => new(Pose.Towed(PitchDeg + RiseDeg, 0, fly.Report.Intent), fly.Report.TowPointMm, Facing.Front);

    public View Beside(SolvedFly fly) => new(Pose.Towed(PitchDeg, 0, fly.Report.Intent), fly.Report.TowPointMm, Facing.Side);

    public string Attitude => FlyWords.Pitch(PitchDeg);
}
