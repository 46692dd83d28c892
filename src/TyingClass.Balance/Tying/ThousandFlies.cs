using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Tying;

/// <summary>Ties the same fly many times with a tyer's errors and finds how each one rides.</summary>
/// <remarks>Each tied part moves as one rigid piece: aside, along the shank and about it; its mass (and the solid volume with it) and its air vary. The hook
/// does not. Drag areas stay as designed.</remarks>
public sealed class ThousandFlies
{
    private const int ErrorsPerPart = 5;

    // A sampled fly that moves further than this from the nominal attitude is followed all the way instead.
    private const double NearRad = 0.15;

    private const int FliesBetweenLooks = 16;

    private readonly FlyBody _body;
    private readonly FishingConditions _conditions;
    private readonly double _soakS;
    private readonly TyingSpread _spread;
    private readonly Part[] _parts;
    private readonly TowedFly _work;

    public ThousandFlies(FlyBody body, FishingConditions conditions, double soakS, TyingSpread spread)
    {
        ArgumentNullException.ThrowIfNull(body);
        (_body, _conditions, _soakS, _spread) = (body, conditions, soakS, spread);
        _parts = [.. body.Parts.Select(p => new Part(p, body, conditions, soakS))];
        _work = TowedFly.From(body, conditions, soakS);
    }

    /// <summary>How many standard normal deviates one fly takes.</summary>
    public static int ErrorsPerFly(FlyBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        return ErrorsPerPart * body.Parts.Length;
    }

    /// <summary>
    /// Deviates for a batch of flies, the same for the same seed on every machine; one fly after another, its parts in order. Each part has a row of its own,
    /// drawn by its name, so that the order of the parts decides nothing.
    /// </summary>
    public static double[] Deviates(FlyBody body, int flies, int seed)
    {
        int perFly = ErrorsPerFly(body);
        ImmutableArray<string> rows = DrawNames.Of(body.Parts);
        double[] deviates = new double[perFly * flies];
        for (int part = 0; part < rows.Length; part++)
        {
            double[] row = NormalDeviates.Of(ErrorsPerPart * flies, DrawNames.Seed(rows[part], seed));
            for (int fly = 0; fly < flies; fly++)
            {
                row.AsSpan(fly * ErrorsPerPart, ErrorsPerPart).CopyTo(deviates.AsSpan(fly * perFly + part * ErrorsPerPart));
            }
        }

        return deviates;
    }

    /// <summary>Lean of each sampled fly, rad; NaN for one that does not settle.</summary>
    /// <param name="nominal">Where the fly as designed settles.</param>
    /// <param name="deviates">From <see cref="Deviates"/>.</param>
    public double[] LeansRad(Attitude nominal, double speedMS, double[] deviates)
    {
        ArgumentNullException.ThrowIfNull(deviates);
        int perFly = ErrorsPerFly(_body);
        double[] leans = new double[deviates.Length / perFly];
        for (int i = 0; i < leans.Length; i++)
        {
            if (i % FliesBetweenLooks == 0) StopSignal.Heed();
            Tie(deviates.AsSpan(i * perFly, perFly));
            leans[i] = TrySettleNear(nominal, speedMS, out Attitude at) ? at.LeanRad(_body.Intent) : double.NaN;
        }

        return leans;
    }

    private bool TrySettleNear(Attitude nominal, double speedMS, out Attitude at)
    {
        Linearized loads = _work.Linearize(nominal, speedMS);
        at = nominal;
        if (loads.Turning.IsStable && TryTurn(loads, loads.MomentNM, out Vector3D turn) && turn.Length < NearRad)
        {
            Attitude first = nominal.Turned(turn);
            if (TryTurn(loads, _work.At(first, speedMS).MomentNM, out Vector3D second) && second.Length < 0.2 * NearRad)
            {
                at = first.Turned(second);
                return true;
            }
        }

        // A little heel, so that an unstable attitude is left on the side the errors favor.
        Attitude kicked = nominal.Turned(_work.Hand * 0.01 * nominal.Flow);
        Attitude start = loads.MomentNM.Length > 1e-6 * _work.MomentScaleNM ? nominal : kicked;
        bool settled = Settling.TryFindRestOfOneOfMany(_work, speedMS, start, out Rest rest);
        if (settled && !rest.IsStable)
        {
            settled = Settling.TryFindRestOfOneOfMany(_work, speedMS, rest.Attitude.Turned(_work.Hand * 0.02 * nominal.Flow), out rest);
        }

        at = rest.Attitude;
        return settled;
    }

    private static bool TryTurn(in Linearized loads, Vector3D moment, out Vector3D turn)
    {
        bool solved = loads.Turning.TrySolve(-moment, out turn);
        return solved;
    }

    private void Tie(ReadOnlySpan<double> errors)
    {
        double density = _conditions.Water.DensityKgM3, wet = 0;
        Vector3D moment = default;
        DragField.Cursor cursor = default;
        _work.Drag.ClearStreamers();
        for (int i = 0; i < _parts.Length; i++)
        {
            Part part = _parts[i];
            ReadOnlySpan<double> e = errors.Slice(i * ErrorsPerPart, ErrorsPerPart);
            bool tied = part.IsTied;
            Vector3D shift = tied ? new Vector3D(_spread.AlongM * e[2], part.Room.Within(_work.Hand * _spread.SideM * e[0]), 0) : default;
            (double sin, double cos) = tied ? Math.SinCos(_work.Hand * _spread.ClockRad * e[1]) : (0, 1);
            double massFactor = tied ? Math.Max(0.1, 1 + _spread.MassShare * e[3]) : 1;
            double airFactor = tied ? Math.Max(0, 1 + _spread.AirShare * e[4]) : 1;
            double partWet = massFactor * part.SolidWetKg - airFactor * density * part.AirM3;
            Vector3D partMoment = massFactor * part.SolidWetMoment - airFactor * density * part.AirMoment;
            wet += partWet;
            moment += new Vector3D(
                partMoment.X, cos * partMoment.Y - sin * partMoment.Z, sin * partMoment.Y + cos * partMoment.Z) + partWet * shift;
            _work.Drag.CopyMoved(part.Drag, ref cursor, cos, sin, _body.TowPointM, shift);
        }

        _work.WetMassKg = wet;
        _work.WetMomentKgM = moment - wet * _body.TowPointM;
    }

    private sealed class Part
    {
        public Part(BodyPart part, FlyBody body, FishingConditions conditions, double soakS)
        {
            IsTied = part.IsTied;
            Room = part.Room;
            double density = conditions.Water.DensityKgM3;
            MassMoments solid = MassMoments.Of([part with { Air = [] }], soakS);
            MassMoments air = MassMoments.Of([part with { Masses = [], Solids = [] }], soakS);
            SolidWetKg = solid.WetMassKg(density);
            SolidWetMoment = solid.WetMomentKgM(density, Vector3D.Zero);
            AirM3 = air.VolumeM3;
            AirMoment = air.VolumeMomentM4;
            Drag = new DragField([part], conditions.Water, body.TowPointM);
        }

        public bool IsTied { get; }

        public SideRoom Room { get; }

        public double SolidWetKg { get; }

        public Vector3D SolidWetMoment { get; }

        public double AirM3 { get; }

        public Vector3D AirMoment { get; }

        public DragField Drag { get; }
    }
}
