using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Tests.Grading;

/// <summary>Exercises and answers the grading tests share.</summary>
internal static class Flies
{
    public static string Darter { get; } = Repo.Recipe("recipes/reed-darter.fly.yaml")!;

    public static string DarterOnTop { get; } = Darter.Replace("at: 2 mm\n    side: under", "at: 2 mm\n    side: top", StringComparison.Ordinal);

    public static string HeavierDarter { get; } = Darter.Replace("size: 4 mm", "size: 4.4 mm", StringComparison.Ordinal);

    public static string LighterDarter { get; } = Darter.Replace("size: 4 mm", "size: 3.6 mm", StringComparison.Ordinal);

    public static Exercise Repair { get; } = Repo.Exercise("""
        id: r-1
        kind: repair
        title: R
        concepts: [keel side, mass center]
        prompt: Mend it.
        file: recipes/reed-darter.fly.yaml
        allow:
          - parts[0].side: [top, under]
          - parts[0].size: 3.2 mm … 5.6 mm
        goals:
          - rides as intended: at least 90 %
          - added mass: at most 0.05 g
        hints: [First hint., Second hint.]
        misreadings:
          - when: dumbbell eyes heavier and parts[0].side unchanged
            concept: mass center
            say: More weight on the wrong side.
        model answer:
          parts[0].side: top
        """);

    public static Exercise Measure { get; } = Repo.Exercise("""
        id: m-1
        kind: measure
        title: M
        concepts: [mass center]
        prompt: Where?
        file: recipes/slate-minnow.fly.yaml
        quantity: mass center, x
        tolerance: 0.5 mm
        hints: [First hint.]
        misreadings:
          - when: answer is near 12 mm
            say: That is the plain average.
        """);

    public static Exercise Compose { get; } = Repo.Exercise("""
        id: c-1
        kind: compose
        title: C
        concepts: [mass center]
        prompt: Tie it.
        parts box:
          - part: bead
            material: [brass, tungsten]
            size: 2 mm … 4 mm
            at most: 1
          - part: body
            material: floss
        hook:
          size: 8
          eye: [straight, down]
        goals:
          - sink rate: at least 0.5 m/s
          - mass: at most 0.6 g
        model answer: |
          recipe: Deep Fry
          intent: point down
          hook:
            size: 8
          parts:
            - part: bead
              material: tungsten
              size: 3 mm
              at: 0 mm
        """);

    public static Exercise Sort { get; } = Repo.Exercise("""
        id: s-1
        kind: sort
        title: S
        concepts: [mass center]
        prompt: Order!
        flies:
          - file: recipes/slate-minnow.fly.yaml
          - file: recipes/slate-minnow-tail-heavy.fly.yaml
          - recipe: Bare Hook
            intent: point down
            hook:
              size: 10
        by: mass
        hints: [Weigh them.]
        """);
}
