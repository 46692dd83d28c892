using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Progress;

/// <summary>The kinds of exercise as a student meets them.</summary>
public static class KindWords
{
    public static string Name(ExerciseKind kind) => kind switch
    {
        ExerciseKind.Predict => "Predict",
        ExerciseKind.Measure => "Measure",
        ExerciseKind.Repair => "Repair",
        ExerciseKind.Compose => "Compose",
        ExerciseKind.Sort => "Put in order",
        ExerciseKind.Explain => "Explain",
        _ => "Tub test",
    };

    public static string Invitation(ExerciseKind kind) => kind switch
    {
        ExerciseKind.Predict => "Say what will happen, then see what the engine says.",
        ExerciseKind.Measure => "Work out a figure.",
        ExerciseKind.Repair => "A fly that does not swim as asked: mend it.",
        ExerciseKind.Compose => "Build a fly that does what is asked.",
        ExerciseKind.Sort => "Put these in order.",
        ExerciseKind.Explain => "Say why, in your own words. A person reads it.",
        _ => "Tie it, hang it, drop it, and write down what it did.",
    };

    public static string Attempts(int count) => count == 1 ? "1 attempt" : FormattableString.Invariant($"{count} attempts");

    public static string Times(int count) => count switch { 1 => "once", 2 => "twice", _ => FormattableString.Invariant($"{count} times") };
}
