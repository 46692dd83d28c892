using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Doubting;

/// <summary>
/// Works out drawn flies one by one, each from where the fly of the table came to lie: nothing but the tow at its own speed and the sink, soaked.
/// </summary>
public sealed class DoubtCalculation
{
    // As the curve of the report.
    private const double BandS = 10;
    private const int BandTimes = 10;

    private readonly FlyBody _body;
    private readonly FishingConditions _conditions;
    private readonly Pitches _pitches;
    private readonly Vector3D _usualUp;
    private readonly Vector3D? _sinkUp;

    /// <param name="body">Of the table's own values.</param>
    public DoubtCalculation(FlyBody body, FishingConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(body);
        (_body, _conditions) = (body, conditions);
        TowedFly fly = TowedFly.From(body, conditions, double.PositiveInfinity);
        _pitches = Pitches.At(fly, conditions.SpeedMS, Pitches.At(fly, 3 * conditions.SpeedMS, null));
        Towed towed = TowCalculation.AtSpeed(fly, body.Intent, conditions.SpeedMS, _pitches);
        _usualUp = towed.Rest.Attitude.Up;
        SinkingFly sinking = new(body, conditions, double.PositiveInfinity);
        _sinkUp = sinking.TryFindStable(towed.Rest.Attitude.Up, out SteadySink steady) ? steady.Up : null;
        Usual = Of(towed, sinking);
    }

    /// <summary>The fly of the table.</summary>
    public DrawnFly Usual { get; }

    /// <summary>One drawn fly.</summary>
    public DrawnFly At(FlyBody body, FishingConditions conditions)
    {
        StopSignal.Heed();
        TowedFly fly = TowedFly.From(body, conditions, double.PositiveInfinity);
        Pitches pitches = Pitches.At(fly, conditions.SpeedMS, _pitches);
        Towed towed = TowCalculation.AtSpeed(fly, _body.Intent, conditions.SpeedMS, pitches);
        return Of(towed, new SinkingFly(body, conditions, double.PositiveInfinity));
    }

    /// <summary>The bands of the curves.</summary>
    /// <param name="draws">As for <see cref="At"/>.</param>
    /// <param name="speedsMS">Slowest first.</param>
    public DoubtBands Bands(IReadOnlyList<(FlyBody Body, FishingConditions Conditions)> draws, ImmutableArray<double> speedsMS)
    {
        ArgumentNullException.ThrowIfNull(draws);
        double[,] keels = new double[speedsMS.Length, draws.Count], pitches = new double[speedsMS.Length, draws.Count];
        double[,] depths = new double[BandTimes + 1, draws.Count];
        for (int i = 0; i < draws.Count; i++)
        {
            StopSignal.Heed();
            (FlyBody body, FishingConditions conditions) = draws[i];
            TowedFly fly = TowedFly.From(body, conditions, double.PositiveInfinity);
            Pitches? from = null;
            for (int s = speedsMS.Length - 1; s >= 0; s--)
            {
                from = Pitches.At(fly, speedsMS[s], from);
                TowReport tow = TowCalculation.AtSpeed(fly, _body.Intent, speedsMS[s], from).Report;
                (keels[s, i], pitches[s, i]) = (tow.KeelHeightMm.For(_body.Intent) ?? double.NaN, tow.PitchDeg);
            }

            Depths(body, conditions, i, depths);
        }

        return new DoubtBands(
            [.. speedsMS.Select((speed, s) => new SpeedBand(speed, Quantiles.Interval(Row(keels, s)), Quantiles.Interval(Row(pitches, s))))],
            [
                .. Enumerable.Range(0, BandTimes + 1).Select(t => (TimeS: BandS * t / BandTimes, Depth: Quantiles.Interval(Row(depths, t))))
                    .Where(t => t.Depth is not null).Select(t => new DepthBand(t.TimeS, t.Depth!.Value)),
            ]);

        static double[] Row(double[,] all, int row) => [.. Enumerable.Range(0, all.GetLength(1)).Select(i => all[row, i])];
    }

    private void Depths(FlyBody body, FishingConditions conditions, int draw, double[,] depths)
    {
        SinkingFly fly = new(body, conditions, double.PositiveInfinity);
        ImmutableArray<(double TimeS, double DepthM)> points = Sinks(fly, _usualUp) is { } steady ? fly.DepthFromRest(steady, BandS, BandTimes).Points : [];
        for (int t = 0; t <= BandTimes; t++) depths[t, draw] = t < points.Length ? points[t].DepthM : double.NaN;
    }

    /// <summary>What the draws say together.</summary>
    /// <param name="estimates">Each estimate that had a part in building the fly, with its value in each draw.</param>
    public DoubtReport Report(IReadOnlyList<DrawnFly> draws, IEnumerable<(string Name, double[] Values)> estimates)
    {
        ArgumentNullException.ThrowIfNull(draws);
        ArgumentNullException.ThrowIfNull(estimates);
        double[] keels = [.. draws.Select(d => d.KeelHeightMm ?? double.NaN)], pitches = [.. draws.Select(d => d.PitchDeg)];
        Interval? keel = Quantiles.Interval(keels);
        double[] told = keel is null ? pitches : keels;
        return new DoubtReport
        {
            Draws = draws.Count,
            KeelHeightMm = Usual.KeelHeightMm is null ? null : keel,
            PitchDeg = Quantiles.Interval(pitches) ?? new Interval(Usual.PitchDeg, Usual.PitchDeg),
            SinkRateMS = Usual.SinkRateMS is null ? null : Quantiles.Interval([.. draws.Select(d => d.SinkRateMS ?? double.NaN)]),
            SameVerdict = draws.Count == 0 ? 1 : draws.Count(d => d.Verdict == Usual.Verdict) / (double)draws.Count,
            Shares =
            [
                .. estimates.Select(e => new EstimateShare(e.Name, Quantiles.SquaredCorrelation(e.Values, told)))
                    .OrderByDescending(s => s.Share).ThenBy(s => s.Estimate, StringComparer.Ordinal),
            ],
        };
    }

    private DrawnFly Of(Towed towed, SinkingFly sinking) => new(
        towed.Report.KeelHeightMm.For(_body.Intent), towed.Report.PitchDeg,
        // Where the fly of the table finds no way to sink no interval is told, and a search in vain takes longest.
        _sinkUp is not null && Sinks(sinking, towed.Rest.Attitude.Up) is { } steady ? steady.RateMS : null, towed.Report.Verdict);

    // From the way the fly of the table sinks, or else from how it was fished.
    private SteadySink? Sinks(SinkingFly fly, Vector3D fishedUp)
    {
        if (_sinkUp is { } up && fly.TryFindSteady(up, out SteadySink steady) && steady.IsStable) return steady;
        return fly.TryFindStable(fishedUp, out steady) ? steady : null;
    }
}
