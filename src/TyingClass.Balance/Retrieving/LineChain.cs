using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Retrieving;

/// <summary>
/// Line and leader as a chain of straight pieces that stretch as their material does and never push. The first node is the rod tip and the last the eye; both
/// are moved by others.
/// </summary>
/// <remarks>
/// An implicit Euler stage of length k, solved by Newton's method: M (V - V₀)/k = W + D(V) + Σ T u, x = x₀ + k V, each pull T = EA (|d|/l - 1), or none where
/// the piece is slack. The pull counts as an unknown of its own: what bends the matrix is the pull last solved for, not the one the guessed places would have.
/// Nodes couple with their neighbors only, so the matrix is block tridiagonal. docs/formulas.md#the-line
/// </remarks>
internal sealed class LineChain
{
    /// <summary>Rounds the surface off, m: a floating line lies half in it.</summary>
    private const double SurfaceM = 0.01;

    private readonly LineNode[] _nodes;
    private readonly double[] _stretchPerN, _solvedN;
    private readonly bool[] _taut;
    private readonly Vector3D[] _u, _rest, _change;
    private readonly double[] _elasticN;
    private readonly Symmetric3[] _pullStiffness, _inverse;
    private readonly Water _water;
    private readonly ImmutableArray<LinePiece> _pieces;
    private readonly Bed? _bed;

    public LineChain(ImmutableArray<LinePiece> pieces, Water water, Bed? bed)
    {
        (_pieces, _water, _bed) = (pieces, water, bed);
        Count = pieces.Length;
        RestM = [.. pieces.Select(p => p.RestM)];
        _stretchPerN = [.. pieces.Select(p => p.RestM / p.StiffnessN)];
        PositionM = new Vector3D[Count + 1];
        VelocityMS = new Vector3D[Count + 1];
        (_solvedN, _elasticN, _taut) = (new double[Count], new double[Count], new bool[Count]);
        (_u, _pullStiffness) = (new Vector3D[Count], new Symmetric3[Count]);
        (_rest, _change, _inverse) = (new Vector3D[Count + 1], new Vector3D[Count + 1], new Symmetric3[Count + 1]);
        _nodes = new LineNode[Count + 1];
        Lump();
    }

    /// <summary>Pieces left outside the rod.</summary>
    public int Count { get; private set; }

    public Vector3D[] PositionM { get; }

    public Vector3D[] VelocityMS { get; }

    /// <summary>m; the first grows shorter as line is stripped.</summary>
    public double[] RestM { get; }

    /// <summary>Pull of the last piece on the eye, N.</summary>
    public double PullN => _solvedN[Count - 1];

    /// <summary>From the eye along the last piece.</summary>
    public Vector3D AwayFromEye => -_u[Count - 1];

    /// <summary>What the last piece resists the eye's moving with, and the force on the eye with the rest of the line eliminated.</summary>
    public (Symmetric3 Resistance, Vector3D ForceN) AtEye { get; private set; }

    /// <summary>Joins the first two pieces when little of the first is left outside the rod.</summary>
    public void TakeIn()
    {
        if (Count < 2 || RestM[0] >= 0.3 * RestM[1]) return;
        RestM[1] += RestM[0];
        for (int i = 0; i + 1 < Count; i++)
        {
            (RestM[i], _solvedN[i], _taut[i], _u[i]) = (RestM[i + 1], _solvedN[i + 1], _taut[i + 1], _u[i + 1]);
        }

        for (int i = 1; i < Count; i++) (PositionM[i], VelocityMS[i]) = (PositionM[i + 1], VelocityMS[i + 1]);
        Count--;
        Lump();
    }

    /// <summary>Readies a stage: what is taken from where the nodes stand and is not iterated on.</summary>
    public void Begin()
    {
        for (int s = 0; s < Count; s++) _stretchPerN[s] = RestM[s] / Piece(s).StiffnessN;
        for (int i = 1; i < Count; i++)
        {
            ref LineNode node = ref _nodes[i];
            Vector3D along = PositionM[i + 1] - PositionM[i - 1];
            double length = along.Length;
            if (length > 1e-6) node.Tangent = along / length;
            node.Under = Math.Clamp(0.5 - PositionM[i].Z / (2 * SurfaceM), 0, 1);
            node.MassMatrix = Symmetric3.About(node.Tangent, node.MassKg + node.Under * node.WaterKg, node.MassKg);
            node.BendingN = default;
        }

        Bend();
    }

    /// <summary>One Newton step, as far as the eye: its neighbors eliminated from the rod tip on.</summary>
    /// <param name="baseMS">Speeds at the start of the stage.</param>
    public void Eliminate(double stageS, Vector3D[] baseMS, double toleranceN)
    {
        for (int s = 0; s < Count; s++)
        {
            Vector3D d = PositionM[s + 1] - PositionM[s];
            double length = d.Length;
            _u[s] = length > 1e-9 ? d / length : _u[s];
            _elasticN[s] = (length - RestM[s]) / _stretchPerN[s];
            if (!_taut[s] && _elasticN[s] > toleranceN) (_taut[s], _solvedN[s]) = (true, 0);
            _pullStiffness[s] = _taut[s]
                ? Symmetric3.About(_u[s], stageS * _solvedN[s] / Math.Max(length, 1e-6), stageS / _stretchPerN[s])
                : default;
            if (!_taut[s]) _elasticN[s] = 0;
        }

        Vector3D carried = default;
        Symmetric3 taken = default;
        for (int i = 1; i < Count; i++)
        {
            (Vector3D force, Symmetric3 resistance) = Loads(i, stageS);
            ref LineNode node = ref _nodes[i];
            Vector3D left = force + _elasticN[i] * _u[i] - _elasticN[i - 1] * _u[i - 1] - node.MassMatrix * (VelocityMS[i] - baseMS[i]) / stageS;
            Symmetric3 matrix = (1 / stageS) * node.MassMatrix + resistance + _pullStiffness[i - 1] + _pullStiffness[i] - taken;
            _inverse[i] = matrix.Inverse();
            _rest[i] = left + carried;
            carried = _pullStiffness[i] * (_inverse[i] * _rest[i]);
            taken = Symmetric3.Between(_pullStiffness[i], _inverse[i]);
        }

        int last = Count - 1;
        AtEye = (_pullStiffness[last] - taken, carried - _elasticN[last] * _u[last] + _nodes[Count].BendingN);
    }

    /// <summary>The rest of the Newton step, once it is known how the eye's velocity changes.</summary>
    /// <returns>Whether the pieces agree about which are taut, and their pulls with their lengths.</returns>
    public bool Substitute(double stageS, Vector3D eyeChange, double toleranceN)
    {
        _change[Count] = eyeChange;
        for (int i = Count - 1; i >= 1; i--)
        {
            _change[i] = _inverse[i] * (_rest[i] + _pullStiffness[i] * _change[i + 1]);
            VelocityMS[i] += _change[i];
            PositionM[i] += stageS * _change[i];
        }

        bool agreed = true;
        for (int s = 0; s < Count; s++)
        {
            Vector3D change = _change[s + 1] - _change[s];
            if (!_taut[s]) continue;
            double pull = _elasticN[s] + stageS * Vector3D.Dot(_u[s], change) / _stretchPerN[s];
            double aside = stageS * stageS * change.LengthSquared / (2 * Math.Max(RestM[s], 1e-6) * _stretchPerN[s]);
            agreed &= aside < toleranceN;
            if (pull < 0)
            {
                (_taut[s], pull) = (false, 0);
                agreed &= _solvedN[s] < toleranceN;
            }

            _solvedN[s] = pull;
        }

        for (int s = 0; s < Count && agreed; s++)
        {
            agreed = _taut[s] || (PositionM[s + 1] - PositionM[s]).Length <= RestM[s] + toleranceN * _stretchPerN[s];
        }

        return agreed;
    }

    private (Vector3D ForceN, Symmetric3 Resistance) Loads(int i, double stageS)
    {
        ref LineNode node = ref _nodes[i];
        Vector3D velocity = VelocityMS[i];
        double along = Vector3D.Dot(velocity, node.Tangent);
        Vector3D across = velocity - along * node.Tangent;
        double speed = across.Length;
        double coefficient = DragTable.Cylinder.One(speed * node.ReynoldsPerSpeed).Coefficient;
        double normal = node.Under * node.NormalPerSpeed2 * coefficient * speed;
        double friction = node.Under * node.LengthM * node.FrictionNSM2;
        // Cross-flow drag grows as the square: twice as fast along the cross-flow as across it.
        Symmetric3 resistance = Symmetric3.About(node.Tangent, normal, friction);
        if (speed > 0) resistance += Symmetric3.About(across / speed, 0, normal);
        double z = PositionM[i].Z, lift = Math.Clamp(0.5 - z / (2 * SurfaceM), 0, 1);
        Vector3D force = -normal * across - friction * along * node.Tangent + node.BendingN
            + Standard.GravityMS2 * (lift * node.WaterKg - node.MassKg) * Vector3D.UnitZ;
        if (lift is > 0 and < 1) resistance += new Symmetric3(0, 0, stageS * Standard.GravityMS2 * node.WaterKg / (2 * SurfaceM), 0, 0, 0);
        if (_bed is { } bed && z < bed.LevelM)
        {
            (Vector3D push, Symmetric3 held) = bed.On(node.MassKg, z, velocity, stageS);
            (force, resistance) = (force + push, resistance + held);
        }

        return (force, resistance);
    }

    // Discrete bending: energy ½ EI |q|² · 2/(l₁ + l₂), q the change of direction over the joint.
    private void Bend()
    {
        _nodes[Count].BendingN = default;
        for (int i = 1; i < Count; i++)
        {
            double stiffness = Math.Min(Piece(i - 1).BendingNM2, Piece(i).BendingNM2);
            if (stiffness == 0) continue;
            double before = RestM[i - 1], after = RestM[i];
            Vector3D q = (PositionM[i + 1] - PositionM[i]) / after - (PositionM[i] - PositionM[i - 1]) / before;
            Vector3D f = 2 * stiffness / (before + after) * q;
            _nodes[i - 1].BendingN -= f / before;
            _nodes[i].BendingN += f / before + f / after;
            _nodes[i + 1].BendingN -= f / after;
        }
    }

    // Pieces leave the rod's end of the list as they are taken in.
    private LinePiece Piece(int s) => _pieces[_pieces.Length - Count + s];

    private void Lump()
    {
        double kinematic = _water.ViscosityPaS / _water.DensityKgM3;
        for (int i = 1; i <= Count; i++)
        {
            LinePiece before = Piece(i - 1), after = Piece(Math.Min(i, Count - 1));
            double l1 = RestM[i - 1] / 2, l2 = i < Count ? RestM[i] / 2 : 0, length = l1 + l2;
            double diameter = (l1 * before.DiameterM + l2 * after.DiameterM) / length;
            double section = Math.PI / 4 * (l1 * before.DiameterM * before.DiameterM + l2 * after.DiameterM * after.DiameterM);
            _nodes[i] = new LineNode
            {
                LengthM = length,
                MassKg = l1 * before.MassKgM + l2 * after.MassKgM,
                WaterKg = _water.DensityKgM3 * section,
                NormalPerSpeed2 = _water.DensityKgM3 / 2 * diameter * length,
                ReynoldsPerSpeed = diameter / kinematic,
                FrictionNSM2 = (l1 * before.FrictionNSM2 + l2 * after.FrictionNSM2) / length,
                Tangent = _nodes[i].Tangent == default ? Vector3D.UnitX : _nodes[i].Tangent,
            };
        }
    }

    /// <summary>Half of each neighboring piece.</summary>
    private struct LineNode
    {
        public double LengthM, MassKg, WaterKg, NormalPerSpeed2, ReynoldsPerSpeed, FrictionNSM2, Under;
        public Vector3D Tangent, BendingN;
        public Symmetric3 MassMatrix;
    }
}
