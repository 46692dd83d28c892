using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Repair;

internal sealed class RepairKind : RecipeKind, IPracticed
{
    public static RepairKind Instance { get; } = new();

    public override string Word => "repair";

    public override string Invitation => "A fly that does not swim as asked: mend it.";

    public override double Minutes => 4;

    internal override ImmutableArray<string> Keys => ["allow", "goals"];

    internal override bool NeedsFly => true;

    internal override ExerciseTask? Read(TaskReading reading)
    {
        if (!reading.Fields.Has("allow")) reading.Fields.Missing("allow", "say what may be changed.");
        return new RepairTask(AllowReader.Allow(reading.Fields, reading.Given)) { Goals = GoalReader.ReadRequired(reading.Fields, hasStart: true) };
    }

    public override IEnumerable<(string Path, string Text)> Violations(Exercise exercise, Recipe? given, Recipe answer) =>
        Allowance.Violations(given!, answer, ((RepairTask)exercise.Task).Allow);

    internal override ConditionScope Scope(ExerciseTask task, Recipe? given) => base.Scope(task, given) with { HasStart = true };

    bool IPracticed.IsFair(Exercise problem, Recipe given) =>
        !GoalCheck.AllMet(problem, new FlyFigures(given, new FlyFigures(given))) && LastHint.Exists(problem, given);

    // A share of flies jumps from none to all: what it turns on is the keel height.
    (QuantityQuery, double[])? IPracticed.TurnsOn(ExerciseTask task)
    {
        Goal first = ((RepairTask)task).Goals[0];
        QuantityQuery query = GoalCheck.Query(first);
        return query.Quantity.Dimension == Dimension.Share
            ? (QuantityQuery.Known("keel height"), [0.0])
            : (query, [.. new[] { first.LowSi, first.HighSi }.Where(double.IsFinite)]);
    }

    internal override IEnumerable<CheckComplaint> Check(Exercise exercise)
    {
        FlyFigures given = new(GivenFly.Of(exercise.RecipeText!));
        if (GoalCheck.AllMet(exercise, new FlyFigures(given.Recipe, given)))
            yield return new CheckComplaint("recipe", "file", "The fly given already meets every goal: there is nothing to repair.");
        foreach (CheckComplaint complaint in base.Check(exercise)) yield return complaint;
    }
}
