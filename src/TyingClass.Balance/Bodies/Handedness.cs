namespace TyingClass.Balance.Bodies;

/// <summary>
/// To which side a lopsided fly is heavier. Whatever a search tries first, a heel, a release, a sampled error, it tries toward that side: two flies that mirror
/// each other are then asked mirrored questions and give the same figures.
/// </summary>
internal static class Handedness
{
    private const double Alike = 1e-9;

    /// <summary>1, or -1 for a fly whose mirror image has 1. A fly alike on both sides has 1.</summary>
    public static double Of(FlyBody body)
    {
        double eyeM = body.TowPointM.Y;
        double side = First(
            Sum(body.Parts.SelectMany(p => p.Masses).Select(m => (m.MassKg, m.PositionM.Y - eyeM)), body.ShankLengthM),
            Sum(body.Parts.SelectMany(p => p.Solids).Select(v => (v.VolumeM3, v.PositionM.Y - eyeM)), body.ShankLengthM),
            Sum(body.Parts.SelectMany(p => p.Air).Select(a => (a.FreshVolumeM3, a.PositionM.Y - eyeM)), body.ShankLengthM),
            Sum(body.Parts.SelectMany(p => p.Drag).Select(d => (d.DiameterM * Math.Max(d.DiameterM, d.LengthM) + d.StreamerAreaM2, d.PositionM.Y - eyeM)),
                body.ShankLengthM),
            Sum(body.Parts.SelectMany(p => p.Drag).Where(d => d.Shape == DragShape.Cylinder)
                .Select(d => (d.DiameterM * d.LengthM, d.Axis.Y * Math.Sign(d.Axis.X))), 1),
            // Legs turned about the shank balance side for side, one up and one down.
            Sum(body.Parts.SelectMany(p => p.Masses).Select(m => (m.MassKg, (m.PositionM.Y - eyeM) * m.PositionM.Z)), body.ShankLengthM * body.ShankLengthM),
            Sum(body.Parts.SelectMany(p => p.Drag).Select(d => (d.DiameterM * d.LengthM, (d.PositionM.Y - eyeM) * d.PositionM.Z)),
                body.ShankLengthM * body.ShankLengthM));
        return side < 0 ? -1 : 1;
    }

    private static double First(params ReadOnlySpan<double> sums)
    {
        foreach (double sum in sums)
        {
            if (sum != 0)
            {
                return sum;
            }
        }

        return 0;
    }

    // 0 where the two sides differ by rounding only.
    private static double Sum(IEnumerable<(double Weight, double Y)> elements, double scale)
    {
        double sum = 0, whole = 0;
        foreach ((double weight, double y) in elements)
        {
            sum += weight * y;
            whole += weight * scale;
        }

        return Math.Abs(sum) > Alike * whole ? sum : 0;
    }
}
