using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Bench;

/// <param name="Packed">The whole recipe with the change made, for a button to bring back.</param>
public sealed record OneProposal(string Text, string Effect, string Packed);

/// <summary>One step of one change, and what it moves.</summary>
public sealed record OneStep(string Text, string Keel, string Pitch, string Sink);

/// <summary>What would mend the fly; and, mended or not, what one step of each change does.</summary>
/// <param name="LeftUntried">Says so where a fly has more changes than are tried for one page; else empty.</param>
public sealed record BenchAdvice(bool NothingToMend, string LeftUntried, ImmutableArray<OneProposal> Proposals, ImmutableArray<OneStep> Steps)
{
    public static BenchAdvice Of(SolvedFly fly, UnitSystem units)
    {
        bool fine = Rides(fly);
        AdviceBudget budget = AdviceBudget.ForAPage();
        ImmutableArray<Proposal> found =
            fine ? [] : Adviser.Propose(fly.Recipe, WouldRide, (change, steps) => CanBeTyped(change.At(steps)), budget: budget);
        return new BenchAdvice(
            fine,
            budget.RanOut ? AdviceSentence.LeftUntried(budget.Tried, budget.Changes) : "",
            [.. found.Select(p => new OneProposal(Words(p.Advised, units), Effect(p, units), Bench.Packed.Pack(RecipeWriter.Write(p.Recipe))))],
            [.. Adviser.Sensitivities(fly.Recipe).Select(
                s => new OneStep(Words(s.Step, units), Moves(Magnitudes.KeelHeight, Si.Mm(s.KeelHeightMm), units),
                    Moves(Magnitudes.Pitch, Si.Deg(s.PitchDeg), units), Moves(Magnitudes.SinkRate, s.SinkRateMS, units)))]);
    }

    private static bool Rides(SolvedFly fly) => fly.Report.Verdict.Kind == VerdictKind.RidesAsIntended;

    // Asked of hundreds of flies: without the curves of a whole report.
    private static bool WouldRide(Recipe recipe, ReportOptions how)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        return PartialReports.Verdict(built.Body, built.Conditions, WetState.Soaked, how) == VerdictKind.RidesAsIntended;
    }

    private static bool CanBeTyped(Recipe recipe) => RecipeParser.Parse(RecipeWriter.Write(recipe)).Success;

    private static string Words(Advised advised, UnitSystem units) => Grammar.Capital(AdviceSentence.Of(advised, units));

    private static string Effect(Proposal p, UnitSystem units) =>
        $"{AdviceSentence.Cost(p.Advised, p.AddedMassG, units)} {VerdictSentence.Of(p.Recipe.Intent, p.Solved.Report.Soaked, units)}";

    private static string Moves(Magnitude what, double? by, UnitSystem units) => by is not { } value || !double.IsFinite(value)
        ? Magnitude.None
        : what.SaySigned(value, units);
}
