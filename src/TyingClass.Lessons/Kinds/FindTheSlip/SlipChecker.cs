using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>Proves by the engine what can be proved of an argument: the wrong step is false, every other one true, and neither hangs on a hair.</summary>
internal static class SlipChecker
{
    public static IEnumerable<CheckComplaint> Check(Exercise exercise)
    {
        SlipKey key = SlipKey.Of(exercise);
        FlyFigures? fly = SlipKey.Fly(exercise, null);
        Others? others = fly is null ? null : new Others(fly);
        int complaints = 0;
        for (int n = 1; n <= key.Claims.Length; n++)
        {
            if (Complaint(key, n, others) is not { } text) continue;
            complaints++;
            ArgumentStep step = key.Task.Steps[n - 1];
            yield return new CheckComplaint("steps", "kind", text) { Place = (step.Line, step.Column) };
        }

        if (complaints == 0 && key.Step(fly) is null)
            yield return new CheckComplaint("steps", "kind",
                "The engine does not find just one claim false. Say with “slip:” which step goes wrong, or mend the claims.");
    }

    private static string? Complaint(SlipKey key, int step, Others? others)
    {
        if (others is null || key.Holds(step, others.Fly) is not { } holds) return null;
        string claim = key.Task.Steps[step - 1].Claim!;
        if (key.Task.Slip is { } slip && holds == (step == slip))
            return holds ? $"Step {step} is the slip, yet the engine finds that {claim}."
                : $"Step {step} should hold, but the engine does not find that {claim}.";
        int agree = KeyClearance.Agreeing(others.Tied.Select(tied => key.Holds(step, tied) == holds));
        return KeyClearance.Enough(agree)
            ? KeyClearance.ModelComplaint(
                others.Drawn.Select(drawn => drawn is null ? null : (bool?)(key.Holds(step, drawn) == holds)),
                $"The engine {(holds ? "finds" : "does not find")} that {claim}")
            : $"Of {KeyClearance.Flies} flies tied alike only {agree} say the same of “{claim}”: too near its threshold to argue about.";
    }

    // Tied and drawn once for all steps: what one step asks of a fly the next may ask again.
    private sealed class Others(FlyFigures fly)
    {
        public FlyFigures Fly => fly;

        public ImmutableArray<FlyFigures> Tied { get; } = [.. TiedLike(fly)];

        public ImmutableArray<FlyFigures?> Drawn { get; } = DrawnFlies.Of(fly);

        // The fly before and after a change is one fly, with one set of errors.
        private static IEnumerable<FlyFigures> TiedLike(FlyFigures fly)
        {
            ImmutableArray<FlyBody> now = TiedFlies.Of(fly.Body, TyingAccuracy.Practiced, KeyClearance.Flies);
            ImmutableArray<FlyBody> before = fly.Start is { } start ? TiedFlies.Of(start.Body, TyingAccuracy.Practiced, KeyClearance.Flies) : [];
            return now.Select((body, i) => fly.Tied(body, fly.Start?.Tied(before[i], null)));
        }
    }
}
