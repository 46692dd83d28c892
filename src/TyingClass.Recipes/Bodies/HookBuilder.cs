using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Bends the wire: ring, eye leg, shank, bend, spear. The point's taper and the barb are left out.</summary>
internal sealed class HookBuilder
{
    private PartDraft _draft = new("hook eye");
    private readonly ResolvedHook _hook;
    private readonly int _refinement;
    private readonly double _sectionM2;
    private readonly double _massPerVolumeKgM3;
    private readonly double _massScale;
    private readonly double _slenderness;

    private HookBuilder(ResolvedHook hook, double? weighedKg, int refinement)
    {
        _hook = hook;
        _refinement = refinement;
        _sectionM2 = Cylinders.SectionM2(hook.WireM);
        _massPerVolumeKgM3 = HookScale.WireDensity.Value;
        double wireM = WireLengthM(hook);
        // A hook weighed heavier than drawn has that much more steel in it, so its volume grows with its mass.
        _massScale = weighedKg is { } massKg ? massKg / (_massPerVolumeKgM3 * _sectionM2 * wireM) : 1;
        _slenderness = wireM / hook.WireM;
    }

    /// <summary>Length of wire in the whole hook, m.</summary>
    public static double WireLengthM(ResolvedHook hook) =>
        2 * Math.PI * hook.RingRadiusM + hook.EyeLegM + hook.ShankM + hook.SpearM
        + Bend(hook, WirePiece.Arc, 8).Sum(piece => piece.LengthM);

    /// <param name="bareRunsM">Stretches of shank that no part hides from the water.</param>
    public static BodyPart Build(ResolvedHook hook, double? weighedKg, IEnumerable<(double FrontM, double RearM)> bareRunsM, int refinement)
    {
        HookBuilder builder = new(hook, weighedKg, refinement);
        builder.AddRing();
        builder.AddStraight(hook.EyeLegM * hook.EyeDirection, Vector3D.Zero);
        BodyPart eye = builder.Finish("shank");
        builder.AddStraightMass(Vector3D.Zero, At(hook.ShankM, 0));
        foreach ((double frontM, double rearM) in bareRunsM) builder.AddStraightDrag(At(frontM, 0), At(rearM, 0));
        BodyPart shank = builder.Finish("bend");
        builder.AddBend();
        builder.AddStraight(At(hook.ShankM, -hook.GapeM), hook.PointM);
        ImmutableArray<BodyPart> pieces = [eye, shank, builder.Finish("")];
        return new BodyPart("hook")
        {
            Masses = [.. pieces.SelectMany(p => p.Masses)],
            Solids = [.. pieces.SelectMany(p => p.Solids)],
            Drag = [.. pieces.SelectMany(p => p.Drag)],
            Pieces = pieces,
            IsTied = false,
        };
    }

    private BodyPart Finish(string nextPiece)
    {
        BodyPart piece = _draft.ToPart(isTied: false);
        _draft = new PartDraft(nextPiece);
        return piece;
    }

    private delegate IEnumerable<WirePiece> Cut(Vector3D centerM, Vector3D semiU, Vector3D semiV, double fromRad, double toRad, int pieces);

    /// <summary>The bend from the shank's end round to the spear.</summary>
    /// <param name="pieces">For half a turn; even.</param>
    private static IEnumerable<WirePiece> Bend(ResolvedHook hook, Cut cut, int pieces)
    {
        double half = hook.GapeM / 2;
        if (hook.Bend != BendKind.Square)
        {
            return cut(At(hook.ShankM, -half), At(hook.BendDepthM, 0), At(0, half), Math.PI / 2, -Math.PI / 2, pieces);
        }

        double r = hook.BendDepthM;
        Vector3D u = At(r, 0), v = At(0, r);
        WirePiece straight = new(At(hook.ShankM + r, -half), -Vector3D.UnitZ, hook.GapeM - 2 * r);
        return
        [
            .. cut(At(hook.ShankM, -r), u, v, Math.PI / 2, 0, pieces / 2),
            straight,
            .. cut(At(hook.ShankM, r - hook.GapeM), u, v, 0, -Math.PI / 2, pieces / 2),
        ];
    }

    private static Vector3D At(double x, double z) => new(x, 0, z);

    private void AddRing()
    {
        double radiusM = _hook.RingRadiusM;
        Vector3D center = _hook.TowPointM, along = _hook.EyeDirection, axis = Vector3D.Cross(along, Vector3D.UnitY);
        AddMass(2 * Math.PI * radiusM, center, axis, Torus.SpreadOf(radiusM, _hook.WireM / 2));
        // Opposite pieces lie alike to the water and pull alike, so each pair stands as one at the center: the ring's ten directions for the price of five.
        foreach (WirePiece piece in WirePiece.Arc(center, radiusM * along, radiusM * Vector3D.UnitY, 0, Math.PI, 5 * _refinement))
        {
            AddPieceDrag(piece with { CentroidM = center, LengthM = 2 * piece.LengthM });
        }
    }

    private void AddBend()
    {
        // Mass is cut finer than drag: it costs nothing when the fly is towed, and its inertia is then right within a percent.
        foreach (WirePiece piece in Bend(_hook, WirePiece.Arc, 16 * _refinement))
        {
            AddMass(piece.LengthM, piece.CentroidM, piece.Direction, Cylinders.SpreadOf(_hook.WireM, piece.LengthM));
        }

        foreach (WirePiece piece in Bend(_hook, WirePiece.ArcForDrag, 2 * _refinement)) AddPieceDrag(piece);
    }

    private void AddStraight(Vector3D fromM, Vector3D toM)
    {
        AddStraightMass(fromM, toM);
        AddStraightDrag(fromM, toM);
    }

    private void AddStraightMass(Vector3D fromM, Vector3D toM)
    {
        double lengthM = (toM - fromM).Length;
        if (lengthM > 0) AddMass(lengthM, (fromM + toM) / 2, toM - fromM, Cylinders.SpreadOf(_hook.WireM, lengthM));
    }

    private void AddStraightDrag(Vector3D fromM, Vector3D toM) =>
        _draft.AddStraightDrag(fromM, toM, _hook.WireM, _slenderness, _refinement);

    private void AddPieceDrag(WirePiece piece) =>
        _draft.AddDrag(DragElement.Cylinder(piece.CentroidM, piece.Direction, piece.LengthM, _hook.WireM, 0, _slenderness));

    private void AddMass(double lengthM, Vector3D centroidM, Vector3D axis, Spread spread)
    {
        double volumeM3 = _massScale * _sectionM2 * lengthM;
        _draft.AddSolid(_massPerVolumeKgM3 * volumeM3, volumeM3, centroidM, axis, spread);
    }
}
