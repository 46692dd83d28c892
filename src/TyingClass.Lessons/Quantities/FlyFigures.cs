using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;

namespace TyingClass.Lessons.Quantities;

/// <summary>A fly whose figures are worked out when first asked for and kept. Not safe for threads: each grading makes its own.</summary>
public sealed class FlyFigures
{
    private readonly Dictionary<(WetState, double?, Knot?), TowReport> _tows;
    private readonly Dictionary<(WetState, Knot?), SinkReport?> _sinks;
    private readonly Dictionary<(double?, Knot?), BalanceReport> _reports = [];
    private readonly Dictionary<(WetState, double?, Knot?), ToleranceReport> _tolerances = [];
    private readonly Dictionary<(WetState, double?, Knot?), ImmutableArray<LedgerEntry>> _ledgers = [];
    private readonly Dictionary<double, RetrieveReport> _retrieves;
    private readonly BuiltFly _built;
    private readonly ReportOptions _options;

    /// <param name="start">The fly an exercise starts from, for what is counted against it.</param>
    public FlyFigures(Recipe recipe, FlyFigures? start = null, ReportOptions? options = null)
        : this(FlyBuilder.Build(recipe), recipe, start, options)
    {
    }

    private FlyFigures(BuiltFly built, Recipe recipe, FlyFigures? start, ReportOptions? options) =>
        (_built, Recipe, Start, _options, _tows, _sinks, _retrieves) = (built, recipe, start, options ?? ReportOptions.Default, [], [], []);

    private FlyFigures(FlyFigures other, FlyBody body, FlyFigures? start)
        : this(other._built with { Body = body }, other.Recipe, start, other._options)
    {
    }

    // How it is towed, sinks and is retrieved is of the one fly: what is asked of a sample changes nothing about it.
    private FlyFigures(FlyFigures other, ReportOptions options) =>
        (_built, Recipe, Start, _options, _tows, _sinks, _retrieves) =
        (other._built, other.Recipe, other.Start, options, other._tows, other._sinks, other._retrieves);

    /// <summary>Null where it cannot be built: between two sound flies may stand one whose parts overlap.</summary>
    internal static FlyFigures? TryBuild(Recipe recipe, FlyFigures? start = null, ReportOptions? options = null)
    {
        try
        {
            return new FlyFigures(recipe, start, options);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    public FlyBody Body => _built.Body;

    public FishingConditions Conditions => _built.Conditions;

    public Recipe Recipe { get; }

    public FlyFigures? Start { get; }

    public BalanceReport Report => FullReport(null, null);

    /// <summary>With the whole report.</summary>
    public SolvedFly Solved => new(Recipe, _built, Report);

    /// <summary>The same fly tied a little differently.</summary>
    public FlyFigures Tied(FlyBody body, FlyFigures? start) => new(this, body, start);

    /// <summary>The same fly, its sample taken otherwise.</summary>
    internal FlyFigures Sampled(ReportOptions options) => new(this, options);

    /// <summary>The same recipe, if the model's estimates were otherwise.</summary>
    public FlyFigures Drawn(BuiltFly built, FlyFigures? start) => new(built, Recipe, start, _options);

    public MassMoments Moments(WetState state) =>
        MassMoments.Of(Body.Parts, state == WetState.Soaked ? double.PositiveInfinity : 0);

    public TowReport Tow(QuantityQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return Kept(_tows, (query.State, query.SpeedMS, query.Knot), (query.SpeedMS, query.Knot), r => State(r, query.State).AtFishingSpeed,
            conditions => PartialReports.Tow(Body, conditions, query.State, _options));
    }

    public SinkReport? Sink(QuantityQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return Kept(_sinks, (query.State, query.Knot), (null, query.Knot), r => State(r, query.State).Sink,
            conditions => PartialReports.Sink(Body, conditions, query.State, _options));
    }

    /// <summary>Of the whole sample of flies tied like it.</summary>
    public ToleranceReport Tolerance(QuantityQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return Kept(_tolerances, (query.State, query.SpeedMS, query.Knot), (query.SpeedMS, query.Knot), r => State(r, query.State).Tolerance,
            conditions => PartialReports.Tolerance(Body, conditions, query.State, _options));
    }

    // Worked out once; where the whole report is there, it is in that.
    private T Kept<TKey, T>(
        Dictionary<TKey, T> kept, TKey key, (double? SpeedMS, Knot? Knot) fished, Func<BalanceReport, T> ofReport, Func<FishingConditions, T> alone)
        where TKey : notnull
    {
        if (!kept.TryGetValue(key, out T? figure))
            kept[key] = figure = _reports.TryGetValue(fished, out BalanceReport? report) ? ofReport(report) : alone(Under(fished.SpeedMS, fished.Knot));
        return figure;
    }

    public ImmutableArray<LedgerEntry> Ledger(QuantityQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return Kept(_ledgers, (query.State, query.SpeedMS, query.Knot), (query.SpeedMS, query.Knot), r => State(r, query.State).Ledger,
            conditions => PartialReports.Ledger(Body, conditions, query.State, _options));
    }

    public RollCurve Roll(QuantityQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return _reports.TryGetValue((query.SpeedMS, query.Knot), out BalanceReport? report)
            ? State(report, query.State).Roll
            : PartialReports.Roll(Body, Under(query.SpeedMS, query.Knot), query.State, _options);
    }

    /// <summary>Over the retrieve that the recipe states.</summary>
    public RetrieveReport Retrieved => Counted(null);

    /// <summary>The same, counted down for another time.</summary>
    /// <param name="countDownS">s; null for the recipe's own.</param>
    public RetrieveReport Counted(double? countDownS)
    {
        double key = countDownS ?? -1;
        if (_retrieves.TryGetValue(key, out RetrieveReport? known)) return known;
        RetrievePlan plan = RetrieveBuilder.Build(Recipe.Fishing.Retrieve, Conditions);
        if (countDownS is { } counted) plan = plan with { CountDownS = counted };
        return _retrieves[key] = RetrieveEngine.Report(Body, Conditions, plan);
    }

    private BalanceReport FullReport(double? speedMS, Knot? knot)
    {
        if (!_reports.TryGetValue((speedMS, knot), out BalanceReport? report))
        {
            report = BalanceEngine.Report(Body, Under(speedMS, knot), _options);
            _reports[(speedMS, knot)] = report;
        }

        return report;
    }

    private FishingConditions Under(double? speedMS, Knot? knot) =>
        Conditions with { SpeedMS = speedMS ?? Conditions.SpeedMS, Knot = knot ?? Conditions.Knot };

    private static StateReport State(BalanceReport report, WetState state) => state == WetState.Fresh ? report.Fresh : report.Soaked;
}
