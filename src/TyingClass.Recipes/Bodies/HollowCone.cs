using TyingClass.Balance.Shapes;

namespace TyingClass.Recipes.Bodies;

/// <summary>A bored cone with a straight hole let into its rear: volume, centroid and second moments by difference.</summary>
/// <param name="outline">Bored right through for the wire.</param>
internal readonly struct HollowCone(BoredFrustum outline, double holeWidthM, double holeDepthM)
{
    // A bore as wide as the hole leaves nothing more to take away.
    private readonly double _boreM = Math.Min(outline.BoreM, holeWidthM);

    public double VolumeM3 => outline.VolumeM3 - HoleM3;

    /// <summary>From the front, m.</summary>
    public double CentroidM => (outline.VolumeM3 * outline.CentroidM - HoleM3 * HoleCentroidM) / VolumeM3;

    public Spread SpreadM2
    {
        get
        {
            double middle = CentroidM, body = outline.CentroidM - middle, gone = HoleCentroidM - middle;
            Spread hole = Cylinders.SpreadOf(holeWidthM, holeDepthM, _boreM);
            return new Spread(
                (outline.VolumeM3 * (outline.SpreadM2.AlongM2 + body * body) - HoleM3 * (hole.AlongM2 + gone * gone)) / VolumeM3,
                (outline.VolumeM3 * outline.SpreadM2.AcrossM2 - HoleM3 * hole.AcrossM2) / VolumeM3);
        }
    }

    private double HoleM3 => Cylinders.VolumeM3(holeWidthM, holeDepthM) - Cylinders.VolumeM3(_boreM, holeDepthM);

    private double HoleCentroidM => outline.LengthM - holeDepthM / 2;
}
