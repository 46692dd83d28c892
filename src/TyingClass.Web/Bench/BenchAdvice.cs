using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Figures;

namespace TyingClass.Web.Bench;

/// <param name="Packed">The whole recipe with the change made, for a button to bring back.</param>
public sealed record Advised(string Text, string Effect, string Packed);

/// <summary>One step of one change, and what it moves.</summary>
public sealed record OneStep(string Text, string Keel, string Pitch, string Sink);

/// <summary>What would mend the fly; and, mended or not, what one step of each change does.</summary>
public sealed record BenchAdvice(bool NothingToMend, ImmutableArray<Advised> Proposals, ImmutableArray<OneStep> Steps)
{
    public static BenchAdvice Of(SolvedFly fly, UnitSystem units)
    {
        bool fine = Rides(fly);
        ImmutableArray<Proposal> found = fine ? [] : Adviser.Propose(fly.Recipe, Rides, (change, steps) => CanBeTyped(change.At(steps)));
        return new BenchAdvice(
            fine,
            [.. found.Select(p => new Advised(Capital(p.Text), Effect(p, units), Bench.Packed.Pack(RecipeWriter.Write(p.Recipe))))],
            [.. Adviser.Sensitivities(fly.Recipe).Select(s => new OneStep(Capital(s.Step), Moves("Mm", s.KeelHeightMm, units), Moves("Deg", s.PitchDeg, units), Moves("MS", s.SinkRateMS, units)))]);
    }

    private static bool Rides(SolvedFly fly) => fly.Report.Verdict.Kind == VerdictKind.RidesAsIntended;

    private static bool CanBeTyped(Recipe recipe) => RecipeParser.Parse(RecipeWriter.Write(recipe)).Success;

    private static string Effect(Proposal p, UnitSystem units)
    {
        string mass = Math.Abs(p.AddedMassG) < 0.0005 ? "It adds no mass." : $"It {(p.AddedMassG > 0 ? "adds" : "takes off")} {Units.Tell(1e-3 * Math.Abs(p.AddedMassG), Dimension.Mass, units)}.";
        return $"{mass} {FlyInWords.Verdict(p.Recipe.Intent, p.Solved.Report.Soaked, units)}";
    }

    private static string Moves(string name, double? by, UnitSystem units) => by is not { } value || !double.IsFinite(value)
        ? "cannot be told"
        : (value > 0 ? "+" : "") + FigureText.Say(new KeptFigure(name, value), units);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
