namespace TyingClass.Telling.Sentences;

/// <summary>What differs between two recipes, in the words of the bench.</summary>
public static class ChangeWords
{
    public static string NewPart(string part) => $"a new part, {part}";

    public static string Part(string part) => $"the {part}";

    /// <summary>"the size of the cone: 4.8 mm → 5.6 mm"; "taken out" and "put in" of a whole part, which is named beside.</summary>
    /// <param name="said">"the size of the cone".</param>
    /// <param name="before">As the recipe stated it; null when it did not.</param>
    public static string Line(string said, string? before, string? after, bool wholePart) => (wholePart, before, after) switch
    {
        (true, _, null) => "taken out",
        (true, null, _) => "put in",
        (_, null, _) => $"{said}: now {after}, before left open",
        (_, _, null) => $"{said}: was {before}, now left open",
        _ => $"{said}: {before} → {after}",
    };
}
