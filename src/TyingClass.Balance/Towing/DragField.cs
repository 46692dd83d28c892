using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>A force and its moment about the origin of the field that gave it, hook frame.</summary>
public readonly record struct Wrench(Vector3D ForceN, Vector3D MomentNM)
{
    public static Wrench operator +(Wrench a, Wrench b) => new(a.ForceN + b.ForceN, a.MomentNM + b.MomentNM);

    public static Wrench operator -(Wrench a, Wrench b) => new(a.ForceN - b.ForceN, a.MomentNM - b.MomentNM);

    public static Wrench operator *(double s, Wrench a) => new(s * a.ForceN, s * a.MomentNM);

    public static Wrench operator /(Wrench a, double s) => new(a.ForceN / s, a.MomentNM / s);
}

/// <summary>Drag and side force of a set of elements, laid out for speed: constants multiplied out once, streamers summed into one.</summary>
/// <remarks>
/// Per cylinder, with w the flow at the fly, u_t = w·a along its axis and w_n = w - u_t a across it (cross-flow principle, Hoerner 1965, ch. 3):
/// F = ½ρ κ C_n(Re_d) d ℓ |w_n| w_n + ½ρ C_f(Re_L) π d ℓ |u_t| u_t a + ½ρ C_b β (π/4) d² |u_t| u_t a.
/// Per sphere F = ½ρ C(Re_d) (π/4) d² |w| w; per streamer F = ½ρ C_s A |w| w. Side forces: <see cref="SideBank"/>, <see cref="PlateTerm"/>. Derivations and
/// sources: docs/formulas.md.
/// </remarks>
public sealed class DragField
{
    private readonly CylinderBank _cylinders;
    private readonly SideBank _sides;
    private readonly PlateTerm[] _plates;
    private readonly Term[] _spheres;
    private double _streamer;
    private Vector3D _streamerMoment;

    /// <param name="parts">Drag and side force elements in the hook frame.</param>
    /// <param name="originM">The point moments are taken about, hook frame, m.</param>
    public DragField(IEnumerable<BodyPart> parts, Water water, Vector3D originM)
    {
        ArgumentNullException.ThrowIfNull(parts);
        IReadOnlyCollection<BodyPart> all = parts as IReadOnlyCollection<BodyPart> ?? [.. parts];
        SideForceElement[] sides = [.. all.SelectMany(p => p.SideForces)];
        _sides = new SideBank([.. sides.Where(e => e.Shape == SideForceShape.Round && e.SectionStepM2 != 0)
            .Select(e => SideTerm.Of(e, water.DensityKgM3, e.PositionM - originM))]);
        _plates = [.. sides.Where(e => e.Shape == SideForceShape.Plate && e.LengthM * e.WidthM > 0).Select(e => PlateTerm.Of(e, water, e.PositionM - originM))];
        List<CylinderTerm> cylinders = [];
        List<Term> spheres = [];
        double halfDensity = water.DensityKgM3 / 2, kinematic = water.ViscosityPaS / water.DensityKgM3;
        foreach (DragElement e in all.SelectMany(p => p.Drag))
        {
            // Nothing for the water to push on; a Reynolds number of 0 has no coefficient.
            if (e.Shape != DragShape.Streamer && (e.DiameterM == 0 || (e.Shape == DragShape.Cylinder && e.LengthM == 0)))
            {
                continue;
            }

            Vector3D arm = e.PositionM - originM;
            switch (e.Shape)
            {
                case DragShape.Cylinder:
                    double reference = double.IsFinite(e.SlendernessRatio) ? e.SlendernessRatio * e.DiameterM : e.LengthM;
                    cylinders.Add(new CylinderTerm(
                        arm,
                        e.Axis,
                        Normal: halfDensity * CylinderDrag.FiniteLengthShare(e.SlendernessRatio) * e.DiameterM * e.LengthM,
                        ReynoldsPerSpeed: e.DiameterM / kinematic,
                        Friction: reference > 0
                            ? halfDensity * SkinFriction.Blasius(reference / kinematic) * Math.PI * e.DiameterM * e.LengthM
                            : 0,
                        Blunt: halfDensity * CylinderDrag.BluntEnd * e.BluntShare * Math.PI / 4 * e.DiameterM * e.DiameterM));
                    break;
                case DragShape.Sphere:
                    spheres.Add(new Term
                    {
                        Arm = arm,
                        Normal = halfDensity * Math.PI / 4 * e.DiameterM * e.DiameterM,
                        ReynoldsPerSpeed = e.DiameterM / kinematic,
                    });
                    break;
                case DragShape.Streamer:
                    _streamer += halfDensity * e.StreamerAreaM2;
                    _streamerMoment += halfDensity * e.StreamerAreaM2 * arm;
                    break;
                default:
                    throw new ArgumentException($"No law of drag for {e.Shape}.", nameof(parts));
            }
        }

        _cylinders = new CylinderBank(cylinders);
        _spheres = [.. spheres];
    }

    /// <summary>Force and moment in a uniform flow. Allocates nothing.</summary>
    /// <param name="flowMS">Velocity of the water past the fly, hook frame, m/s.</param>
    public Wrench At(Vector3D flowMS)
    {
        UniformFlow flow = new(flowMS);
        return At(_cylinders.At(flow) + _sides.At(flow), flowMS, Vector3D.Zero);
    }

    /// <summary>The same of a fly that turns as it goes: each element meets the water at its own speed. Allocates nothing.</summary>
    /// <param name="flowMS">Past the origin.</param>
    /// <param name="turnRadS">The fly's turning, hook frame, rad/s.</param>
    public Wrench At(Vector3D flowMS, Vector3D turnRadS)
    {
        TurningFlow flow = new(flowMS, turnRadS);
        return At(_cylinders.At(flow) + _sides.At(flow), flowMS, turnRadS);
    }

    // A plate meets the water at the speed of its middle; supple stuff, all of it together, at that of the middle of where it is tied.
    private Wrench At(Wrench all, Vector3D flowMS, Vector3D turnRadS)
    {
        foreach (ref readonly PlateTerm plate in _plates.AsSpan())
        {
            all += plate.At(flowMS + Vector3D.Cross(plate.Arm, turnRadS));
        }

        Vector3D force = all.ForceN, moment = all.MomentNM;
        if (_streamer > 0)
        {
            Vector3D flow = flowMS + Vector3D.Cross(_streamerMoment / _streamer, turnRadS), streaming = flow.Length * flow;
            force += _streamer * streaming;
            moment += Vector3D.Cross(_streamerMoment, streaming);
        }

        DragTable table = DragTable.Sphere;
        foreach (ref readonly Term t in _spheres.AsSpan())
        {
            Vector3D flow = flowMS + Vector3D.Cross(t.Arm, turnRadS);
            double speed = flow.Length;
            double k = speed > 0 ? t.Normal * table.At(speed * t.ReynoldsPerSpeed) : 0;
            Vector3D f = k * (speed * flow);
            force += f;
            moment += Vector3D.Cross(t.Arm, f);
        }

        return new Wrench(force, moment);
    }

    /// <summary>Force and moment in a uniform flow, and their derivatives as the flow changes along two directions. Allocates nothing.</summary>
    /// <param name="first">Any vectors, hook frame; the derivatives are per unit of them.</param>
    public (Wrench Here, Wrench ByFirst, Wrench BySecond) Differentiate(Vector3D flowMS, Vector3D first, Vector3D second)
    {
        (Wrench here, Wrench one, Wrench two) = _cylinders.Differentiate(flowMS, first, second);
        if (_sides.Count > 0)
        {
            (Wrench side, Wrench side1, Wrench side2) = _sides.Differentiate(flowMS, first, second);
            here += side;
            one += side1;
            two += side2;
        }

        foreach (ref readonly PlateTerm plate in _plates.AsSpan())
        {
            here += plate.At(flowMS);
            one += plate.Change(flowMS, first);
            two += plate.Change(flowMS, second);
        }

        double speed = flowMS.Length;
        Vector3D streaming = speed * flowMS, streaming1 = default, streaming2 = default;
        double first1 = Vector3D.Dot(flowMS, first), second1 = Vector3D.Dot(flowMS, second);
        if (speed > 0)
        {
            streaming1 = speed * first + first1 / speed * flowMS;
            streaming2 = speed * second + second1 / speed * flowMS;
        }

        here += new Wrench(_streamer * streaming, Vector3D.Cross(_streamerMoment, streaming));
        one += new Wrench(_streamer * streaming1, Vector3D.Cross(_streamerMoment, streaming1));
        two += new Wrench(_streamer * streaming2, Vector3D.Cross(_streamerMoment, streaming2));
        foreach (ref readonly Term t in _spheres.AsSpan())
        {
            (double coefficient, double growth) = DragTable.Sphere.One(speed * t.ReynoldsPerSpeed);
            double k = t.Normal * coefficient, rise = speed > 0 ? t.Normal * growth / speed : 0;
            here += Acting(t.Arm, k * streaming);
            one += Acting(t.Arm, k * streaming1 + rise * first1 * flowMS);
            two += Acting(t.Arm, k * streaming2 + rise * second1 * flowMS);
        }

        return (here, one, two);

        static Wrench Acting(Vector3D arm, Vector3D force) => new(force, Vector3D.Cross(arm, force));
    }

    /// <summary>
    /// Copies the terms of <paramref name="source"/> into this field from the given places on, each moved as one rigid piece: the tolerance sampler's way to
    /// shift a part without building anything.
    /// </summary>
    internal void CopyMoved(DragField source, ref Cursor at, double cosClock, double sinClock, Vector3D originM, Vector3D shiftM)
    {
        for (int i = 0; i < source._cylinders.Count; i++, at.Cylinder++)
        {
            CylinderTerm t = source._cylinders[i];
            _cylinders[at.Cylinder] = t with { Arm = Move(t.Arm), Axis = Spin(t.Axis) };
        }

        for (int i = 0; i < source._sides.Count; i++, at.Side++)
        {
            SideTerm t = source._sides[i];
            _sides[at.Side] = t with { Arm = Move(t.Arm), Axis = Spin(t.Axis) };
        }

        for (int i = 0; i < source._plates.Length; i++, at.Plate++)
        {
            PlateTerm t = source._plates[i];
            _plates[at.Plate] = t with { Arm = Move(t.Arm), Axis = Spin(t.Axis), Normal = Spin(t.Normal) };
        }

        for (int i = 0; i < source._spheres.Length; i++, at.Sphere++)
        {
            Term t = source._spheres[i];
            t.Arm = Move(t.Arm);
            _spheres[at.Sphere] = t;
        }

        _streamer += source._streamer;
        // Moment arm of the streamers is already multiplied by their strength, so shift and origin are too.
        _streamerMoment += Spin(source._streamerMoment + source._streamer * originM) + source._streamer * (shiftM - originM);

        Vector3D Spin(Vector3D v) => new(v.X, cosClock * v.Y - sinClock * v.Z, sinClock * v.Y + cosClock * v.Z);
        Vector3D Move(Vector3D arm) => Spin(arm + originM) - originM + shiftM;
    }

    internal void ClearStreamers()
    {
        _streamer = 0;
        _streamerMoment = Vector3D.Zero;
    }

    internal struct Cursor
    {
        public int Cylinder;
        public int Side;
        public int Plate;
        public int Sphere;
    }

    private struct Term
    {
        public Vector3D Arm;
        public double Normal;
        public double ReynoldsPerSpeed;
    }
}
