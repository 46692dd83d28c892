using System.Runtime.CompilerServices;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Reports;

/// <summary>A recipe, the body made of it and the full report: what lessons, pages and the command line speak of.</summary>
public sealed record SolvedFly(Recipe Recipe, BuiltFly Built, BalanceReport Report)
{
    // Kept with the built fly, whatever else is worked out of it.
    private static readonly ConditionalWeakTable<BuiltFly, DoubtReport> Doubts = [];
    private static readonly ConditionalWeakTable<BuiltFly, DoubtBands> Bands = [];
    private static readonly ConditionalWeakTable<BuiltFly, RetrieveReport> Retrieves = [];
    private static readonly ConditionalWeakTable<BuiltFly, RetrieveDoubt> RetrieveDoubts = [];

    /// <summary>What it does over a whole retrieve: worked out when first asked for.</summary>
    public RetrieveReport Retrieve => Retrieves.GetValue(
        Built, built => RetrieveEngine.Report(built.Body, built.Conditions, RetrieveBuilder.Build(Recipe.Fishing.Retrieve, built.Conditions)));

    /// <summary>What the model's guesses leave open of it: worked out when first asked for.</summary>
    public RetrieveDoubt RetrieveDoubt => RetrieveDoubts.GetValue(Built, _ => Doubting.Doubt.OfRetrieve(Recipe));

    /// <summary>How far the model can be trusted with this fly: worked out when first asked for.</summary>
    public DoubtReport Doubt => Doubts.GetValue(Built, built => Doubting.Doubt.Of(Recipe, built));

    /// <summary>The bands of doubt about its curves over speed and time: worked out when first asked for.</summary>
    public DoubtBands DoubtBands =>
        Bands.GetValue(Built, built => Doubting.Doubt.Bands(Recipe, built, [.. Report.Soaked.Tow.Select(tow => tow.SpeedMS)]));

    /// <summary>Builds and solves. The same recipe and options always give the same report.</summary>
    public static SolvedFly Solve(Recipe recipe, ReportOptions? options = null)
    {
        recipe = Places.Settle(recipe);
        BuiltFly built = FlyBuilder.Build(recipe);
        return new SolvedFly(recipe, built, BalanceEngine.Report(built.Body, built.Conditions, options));
    }

    /// <summary>The same fly, already built, with other things worked out of it.</summary>
    public SolvedFly With(ReportOptions options) => this with { Report = BalanceEngine.Report(Built.Body, Built.Conditions, options) };

    /// <summary>The same fly on a leader tied so, as it lies at its own speed.</summary>
    public SolvedFly OnKnot(Knot knot) => Built.Conditions.Knot == knot ? this
        : Solve(Recipe with { Fishing = Recipe.Fishing with { Knot = knot } }, ReportOptions.AttitudeOnly);

    /// <summary>The same fly pulled so fast, as it lies at that speed.</summary>
    /// <param name="speedMS">m/s.</param>
    public SolvedFly AtSpeed(double speedMS) => Built.Conditions.SpeedMS.Equals(speedMS) ? this
        : Solve(Recipe with { Fishing = Recipe.Fishing with { SpeedMS = speedMS } }, ReportOptions.AttitudeOnly);
}
