using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Reports;

namespace TyingClass.Recipes.Advice;

/// <summary>One change that reaches the goal.</summary>
/// <param name="Change">What was changed, and by how many steps.</param>
/// <param name="AddedMassG">In air, dry, g; negative when it gets lighter.</param>
public sealed record Proposal(Adjustable Change, int Steps, double AddedMassG, ReportOptions? Options = null)
{
    private SolvedFly? _solved;

    /// <summary>What the tyer is to do.</summary>
    public Advised Advised => Change.Advise(Steps);

    public string Path => Change.Path;

    public Recipe Recipe { get; } = Places.Settle(Change.At(Steps));

    /// <summary>The changed fly, solved in full, tolerance included: worked out when first asked for, as most of what is found is never told.</summary>
    public SolvedFly Solved => _solved ??= SolvedFly.Solve(Recipe, Options);
}

/// <summary>
/// How far keel height, pitch and sink rate move for one step of a change: a central difference, half of what lies between a step this way and a step back,
/// where both exist; else the step alone. Null where a figure is undefined at either end.
/// </summary>
public sealed record Sensitivity(Advised Step, double? KeelHeightMm, double PitchDeg, double? SinkRateMS);

/// <summary>Looks for the smallest single change of each kind that makes a fly do what is asked.</summary>
/// <remarks>Each change runs on a grid of steps; the first step that reaches the goal is bracketed by doubling and found by halving on the solved fly itself,
/// never by scaling a derivative, and the result is solved again in full before it is proposed.</remarks>
public static class Adviser
{
    private const int FliesWhileSearching = 100;
    private const int FewSteps = 12;

    /// <summary>The proposals, least added mass first.</summary>
    /// <param name="reached">What is asked of a fly, judged under the options given: while searching with a smaller sample of flies. Nothing is assumed of it.
    /// A question that needs no full report is answered without one: most of a search is such questions.</param>
    /// <param name="allowed">Which changes may be made; null for all.</param>
    /// <param name="budget">How much may be looked at; null for all there is.</param>
    public static ImmutableArray<Proposal> Propose(
        Recipe recipe, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool>? allowed = null, ReportOptions? options = null,
        AdviceBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(reached);
        return [.. Found(recipe, reached, allowed ?? Anything, options ?? ReportOptions.Default, budget)
            .OrderBy(p => p.AddedMassG).ThenBy(p => p.Path, StringComparer.Ordinal)];
    }

    /// <summary>The proposals one by one, in no order: stop when one is enough.</summary>
    public static IEnumerable<Proposal> Search(
        Recipe recipe, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool>? allowed = null, ReportOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(reached);
        return Found(recipe, reached, allowed ?? Anything, options ?? ReportOptions.Default, budget: null);
    }

    private static bool Anything(Adjustable change, int steps) => true;

    private static IEnumerable<Proposal> Found(
        Recipe recipe, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool> allowed, ReportOptions options, AdviceBudget? budget)
    {
        if (reached(recipe, options)) yield break;
        double startKg = MassKg(recipe);
        ImmutableArray<Adjustable> changes = Adjustables.Of(recipe);
        // Hook, knot and hand first: where not everything can be tried, those are few and bring much.
        foreach (Adjustable change in budget is null ? changes : budget.Of(changes))
        {
            if (!TryFindSmallest(change, budget is null ? reached : budget.Counting(reached), allowed, options, out int steps)) continue;
            yield return new Proposal(change, steps, 1e3 * (MassKg(change.At(steps)) - startKg), options);
        }
    }

    private static double MassKg(Recipe recipe) => MassMoments.Of(FlyBuilder.Build(Places.Settle(recipe)).Body.Parts, double.PositiveInfinity).MassKg;

    /// <summary>What one step of every change does.</summary>
    public static ImmutableArray<Sensitivity> Sensitivities(Recipe recipe, ReportOptions? options = null)
    {
        options = (options ?? ReportOptions.Default) with { Flies = 1, SoakTimesS = [] };
        StateReport here = SolvedFly.Solve(recipe, options).Report.Soaked;
        (Adjustable Change,
            StateReport There)[] steps = [.. Adjustables.Of(recipe).Where(c => c.Advise(1) is not AdvisedRetrieve)
                .Select(change => (change, SolvedFly.Solve(change.At(1), options).Report.Soaked))];
        return [.. steps.Select(step =>
        {
            StateReport[] back = [.. steps.Where(s => s.Change.Path == step.Change.Path && s.Change.Kind != step.Change.Kind).Select(s => s.There)];
            (StateReport from, double share) = back.Length == 1 ? (back[0], 0.5) : (here, 1);
            return new Sensitivity(
                step.Change.Advise(1),
                share * (Keel(step.There) - Keel(from)),
                share * (step.There.AtFishingSpeed.PitchDeg - from.AtFishingSpeed.PitchDeg),
                share * (step.There.Sink?.RateMS - from.Sink?.RateMS));
        })];

        double? Keel(StateReport state) => state.AtFishingSpeed.KeelHeightMm.For(recipe.Intent);
    }

    private static bool TryFindSmallest(
        Adjustable change, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool> allowed, ReportOptions options, out int steps)
    {
        ReportOptions quick = options with { Flies = Math.Min(options.Flies, FliesWhileSearching), SoakTimesS = [] };
        int low = 0, high = 1;
        // Few steps are tried one by one: what is asked for may be reached at one of them and lost again at the next.
        while (!change.IsEven && change.Steps <= FewSteps && high < change.Steps && !(allowed(change, high) && reached(change.At(high), quick))) low = high++;
        while (true)
        {
            if (allowed(change, high) && reached(change.At(high), quick))
            {
                break;
            }

            (low, steps) = (high, high);
            if (high == change.Steps)
            {
                return false;
            }

            high = Math.Min(2 * high, change.Steps);
        }

        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = allowed(change, middle) && reached(change.At(middle), quick) ? (low, middle) : (middle, high);
        }

        // A hundred flies may flatter a change that a thousand do not: step on until the full sample agrees.
        for (steps = high; steps <= Math.Min(change.Steps, high + 8); steps++)
        {
            if (!allowed(change, steps) || !reached(change.At(steps), options)) continue;
            // Or they may slight a smaller one: what is called the smallest is one whose next smaller fails.
            while (steps > 1 && allowed(change, steps - 1) && reached(change.At(steps - 1), options)) steps--;
            return true;
        }

        return false;
    }
}
