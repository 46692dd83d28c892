using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds.Compose;

internal sealed class ComposeKind : RecipeKind
{
    public static ComposeKind Instance { get; } = new();

    public override string Word => "compose";

    public override string Invitation => "Build a fly that does what is asked.";

    public override double Minutes => 6;

    internal override ImmutableArray<string> Keys => ["goals", "parts box", "hook", "fishing", "intent"];

    internal override ExerciseTask? Read(TaskReading reading) => new ComposeTask
    {
        PartsBox = AllowReader.Box(reading.Fields),
        Fixed = AllowReader.Fixed(reading.Fields),
        Goals = GoalReader.ReadRequired(reading.Fields, hasStart: reading.Given is not null),
    };

    public override IEnumerable<(string Path, string Text)> Violations(Exercise exercise, Recipe? given, Recipe answer) =>
        BoxCheck.Violations(answer, (ComposeTask)exercise.Task);

    internal override ConditionScope Scope(ExerciseTask task, Recipe? given) => base.Scope(task, given) with { HasFly = true };
}
