using System.Collections.Immutable;

namespace TyingClass.Lessons.Exercises;

/// <summary>The kinds as lessons write them.</summary>
public static class ExerciseKinds
{
    private static readonly ImmutableArray<(string Word, ExerciseKind Kind)> All =
    [
        ("predict", ExerciseKind.Predict), ("measure", ExerciseKind.Measure), ("repair", ExerciseKind.Repair), ("compose", ExerciseKind.Compose),
        ("sort", ExerciseKind.Sort), ("explain", ExerciseKind.Explain), ("tub test", ExerciseKind.TubTest),
    ];

    public static ImmutableArray<string> Words { get; } = [.. All.Select(k => k.Word)];

    public static string Word(ExerciseKind kind) => All.First(k => k.Kind == kind).Word;

    public static bool TryParse(string word, out ExerciseKind kind)
    {
        kind = All.FirstOrDefault(k => k.Word == word).Kind;
        return Words.Contains(word);
    }
}
