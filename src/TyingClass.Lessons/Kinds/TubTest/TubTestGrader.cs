using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Replies;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.TubTest;

/// <summary>Tub test: what the tied fly really did, one "name: value" to a line. Kept beside the prediction; never wrong.</summary>
internal static class TubTestGrader
{
    private const string DryMass = "mass";
    private const string WetMass = "mass with held water";

    // A kitchen scale may be this far off and no more. Estimate.
    private const double LeastWet = 0.97;

    public static GradeResult Grade(Exercise exercise, string answerText, GradeOptions options)
    {
        TubTestTask task = (TubTestTask)exercise.Task;
        FlyFigures fly = new(GivenFly.Of(exercise.RecipeText!), null, options.Report);
        List<AnswerProblem> problems = [];
        List<Observation> seen = [];
        string[] lines = answerText.ReplaceLineEndings("\n").Split('\n');
        for (int i = 0; i < Math.Min(lines.Length, 200); i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i])) continue;
            string[] pair = lines[i].Split(':', 2, StringSplitOptions.TrimEntries);
            if (pair.Length == 2 && pair[1].Length == 0) continue;
            if (Read(task, fly, pair, options.Units, out string error) is { } observation) seen.Add(observation);
            else problems.Add(
                new AnswerProblem(i + 1, 1, pair.Length == 2 ? pair[0] : null,
                    pair.Length == 2 && task.Record.Contains(pair[0], StringComparer.OrdinalIgnoreCase) ? $"{Grammar.Capital(pair[0])}: {error}" : error));
        }

        if (WetAndDry(seen, options.Units) is { } question) problems.Add(new AnswerProblem(0, 0, WetMass, question));
        if (problems.Count > 0) return GradeResult.Refused([.. problems]);
        if (seen.Count == 0) return GradeResult.Refused($"Write down at least one thing you saw. You can record {Grammar.And(task.Record)}.");
        AnswerReason reason = TubTestReason.Of(seen, fly, options.Units);
        return new GradeResult
        {
            AwaitsReview = true,
            Why = reason.Reasons,
            ExerciseVersion = exercise.Version,
            Observations = [.. seen],
            Figures = [.. seen.Select(s => new GradedFigure(s.Quantity, s.PredictedSi))],
            Feedback = new Feedback
            {
                Reply = InShort([.. seen]),
                First = reason.First,
                Picture = reason.Picture,
                WhatItWouldDo = $"{VerdictSentence.Of(fly.Report, options.Units)} So the model says.",
                Goals = [.. seen.Select(s => new GoalResult($"{s.Quantity}: predicted {s.Predicted}", Compared(s, options.Units), Met: true))],
                Why = "The bath tub has the last word. Where the two disagree, look at the fly first (is it tied as the recipe says?), then at what the "
                    + "model leaves out.",
                WhereToLook =
                    "Keep the fly. If a figure is far off, tie the same recipe once more and drop it again: two flies that agree with each other and not "
                    + "with the engine say that the model is off.",
                Cautions = [.. Cautions.For(fly.Recipe).Select(c => c.Text)],
            },
        };
    }

    private static Observation? Read(TubTestTask task, FlyFigures fly, string[] pair, UnitSystem units, out string error)
    {
        string? name = pair.Length == 2 ? task.Record.FirstOrDefault(r => string.Equals(r, pair[0], StringComparison.OrdinalIgnoreCase)) : null;
        if (name is null)
        {
            error = "Begin each line with what you watched and a "
                + $"colon: {Grammar.And(task.Record)}.{(pair.Length == 2 ? Nearest.Hint(pair[0], task.Record) : "")}";
            return null;
        }

        if (name == TubTestRecord.WhichWayUp)
        {
            string? way = TubTestRecord.Ways.FirstOrDefault(w => string.Equals(w, pair[1], StringComparison.OrdinalIgnoreCase));
            error = $"For which way up write {string.Join(", ", TubTestRecord.Ways)}.";
            return way is null ? null : new Observation(name, null, null, WayWords.Of(fly.Report.Intent, fly.Report.Verdict.Kind), way);
        }

        if (TubTestRecord.MayNeverBe(name) && string.Equals(pair[1], TubTestRecord.Never, StringComparison.OrdinalIgnoreCase))
        {
            error = "";
            QuantityQuery never = QuantityQuery.Known(name);
            double? model = never.Of(fly);
            return new Observation(name, model, null, model is null ? TubTestRecord.Never : never.Say(model, units), TubTestRecord.Never);
        }

        if (!QuantityQuery.TryParse(name, out QuantityQuery query, out error) || !GoalReader.TryRead(query.Quantity, pair[1], out double si, out error))
            return null;
        if (Plausible.Question(query, si, pair[1], units) is { } question)
        {
            error = question;
            return null;
        }

        double? predicted = query.Of(fly);
        return new Observation(name, predicted, si, query.Say(predicted, units), query.SayStated(si, units));
    }

    // Water adds mass: a wet fly that has less of it was misread, or the two were exchanged.
    private static string? WetAndDry(List<Observation> seen, UnitSystem units)
    {
        return Of(WetMass) is { } wet && Of(DryMass) is { } dry && wet < LeastWet * dry ? RefusalSentence.WetterIsLighter(dry, wet, units) : null;

        double? Of(string quantity) => seen.FirstOrDefault(s => s.Quantity == quantity)?.ObservedSi;
    }

    // Thirty degrees down is not less than twenty-three.
    private static string More(Quantity quantity, bool more) =>
        quantity.IsOfTheNose ? $"further nose {(more ? "up" : "down")}" : more ? "more" : "less";

    private static string InShort(Observation[] seen) => seen is [var only]
        ? SeenReply.One(only.Observed, only.Predicted, Agrees(only)) : SeenReply.Several(seen.Count(Agrees), seen.Length);

    private static bool Agrees(Observation seen) => seen is { ObservedSi: { } observed, PredictedSi: { } predicted }
        && QuantityQuery.TryParse(seen.Quantity, out QuantityQuery query, out _)
        ? Math.Abs(observed - predicted) < query.Quantity.NoticeableSi : TubTestRecord.AgreesInWords(seen);

    private static string Compared(Observation seen, UnitSystem units)
    {
        if (seen.ObservedSi is not { } observed || seen.PredictedSi is not { } predicted
            || !QuantityQuery.TryParse(seen.Quantity, out QuantityQuery query, out _))
            return seen.Observed == seen.Predicted ? $"you saw {seen.Observed}, as predicted"
                : TubTestRecord.IsOfTheCast(seen) ? $"you saw {seen.Observed}; the next cast may land otherwise" : $"you saw {seen.Observed}";
        double more = observed - predicted;
        return Math.Abs(more) < query.Quantity.NoticeableSi
            ? $"you saw {seen.Observed}, about as predicted"
            : $"you saw {seen.Observed}, {query.Say(Math.Abs(more), units)} {More(query.Quantity, more > 0)}";
    }
}
