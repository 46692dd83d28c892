using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>The sum where something is done to a fly: from the figure before to the figure after.</summary>
internal static class WorkedChange
{
    /// <summary>The last row is the figure after. Empty where it is found by no sum.</summary>
    public static IEnumerable<WorkedRow> Rows(QuantityQuery query, FlyFigures before, FlyFigures after, Paper paper)
    {
        if (query.Of(before) is not { } from) return [];
        double ratio = SumRows.DensityOf(after) / SumRows.DensityOf(before);
        if (query.Quantity.Name == "wet weight" && ratio is < 0.9999 or > 1.0001) return InOtherWater(before, from, ratio, paper);
        WorkedRow[] sum = [.. SumRows.Of(query, after, paper)];
        return sum.Length == 0 ? [] : sum.Prepend(new WorkedRow(WorkedWords.BeforeChange, "", from, query.Say(from, paper.Units)));
    }

    /// <summary>Of a predicted change: how the figure comes about where a sum tells, what it was, what it is, and what lies between.</summary>
    public static WorkedSum? Of(Exercise exercise, string answerText, UnitSystem units)
    {
        QuantityQuery query = PredictKey.Query(exercise);
        AskedFlies flies = AskedFlies.Of(exercise, null);
        if (flies.Other is not { } other || query.Of(flies.Fly) is not { } from || query.Of(other) is not { } to) return null;
        ImmutableArray<WorkedRow> sum = WorkedSum.OnPaper(paper => Rows(query, flies.Fly, other, paper), query, units);
        if (query.Quantity.SayApart(units, [from, to]) is not [var before, var after]) return null;
        ImmutableArray<WorkedRow> ends = !sum.IsEmpty ? sum : [new(WorkedWords.BeforeChange, "", from, before), new(WorkedWords.AfterChange, "", to, after)];
        // As finely as the ends are told, and finer only where nothing would be left of it.
        string difference = query.Quantity.SayApart(units, [0, to - from])[1];
        WorkedRow between = new(WorkedWords.Difference, $"{after} − {(from < 0 ? $"({before})" : before)}", to - from, difference);
        double least = query.Quantity.NoticeableSi;
        bool adds = Numbers.Adds([after, from < 0 ? before[1..] : $"−{before}"], difference);
        return new WorkedSum([.. ends, between], PredictGrader.Chosen(exercise, answerText) ?? "",
            WorkedWords.Noticed(query.SayStated(least, units), Math.Abs(to - from) >= least) + (adds ? "" : WorkedWords.EachRounded));
    }

    // What the fly weighs in the hand does not change, nor the space it takes.
    private static IEnumerable<WorkedRow> InOtherWater(FlyFigures before, double left, double ratio, Paper paper)
    {
        double mass = before.Body.Parts.Sum(SumRows.MassKg), pushed = mass - left, other = ratio * pushed;
        PaperFigure dry = paper.Write(mass, Magnitudes.Mass), first = paper.Write(left, Magnitudes.WetWeight),
            aside = paper.Write(dry.Si - first.Si, Magnitudes.WetWeight), denser = paper.Number(ratio, 3),
            then = paper.Write(aside.Si * denser.Si, Magnitudes.WetWeight);
        return
        [
            new WorkedRow(WorkedWords.DryFly, "", mass, dry.Text), new WorkedRow(WorkedWords.LeftBefore, "", left, first.Text),
            new WorkedRow(WorkedWords.PushedBefore, $"{dry.Text} − {first.Text}", pushed, aside.Text),
            new WorkedRow(WorkedWords.PushedAfter, $"{aside.Text} × {denser.Text}", other, then.Text),
            new WorkedRow(WorkedWords.LeftAfter, $"{dry.Text} − {then.Text}", mass - other, Magnitudes.WetWeight.Say(dry.Si - then.Si, paper.Units)),
        ];
    }
}
