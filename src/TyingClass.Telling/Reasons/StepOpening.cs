namespace TyingClass.Telling.Reasons;

/// <summary>The first sentence on one step of an argument.</summary>
public static class StepOpening
{
    public const string HowArgumentsGo =
        "In an argument each step stands on those before it. What goes wrong is the one step that does not follow, or is not so; those after it may only "
        + "repeat its mistake.";

    /// <summary>An argument that no fly can be held against.</summary>
    public static string OfNoFly() => "Hold each step against a fly in the hand: its parts, its eye, its knot, and the water.";

    /// <summary>The step is found and its reason is not: nothing of the reason.</summary>
    public static string OfFound(Thing? about) =>
        $"You have the step: ask what it takes for granted about {(about is null ? "the hook and its parts" : $"the {about.Word}")}.";

    /// <summary>A step that sets two figures side by side: "The bead is heavier than the hook."</summary>
    /// <param name="holds">The step, where it is one that holds; else null.</param>
    /// <param name="after">What was done to the fly; null where the argument is about the fly as it is.</param>
    public static string OfTwoFigures(string quantity, (Thing Thing, double Si) one, (Thing Thing, double Si) other, ReasonShare? after, int? holds)
    {
        (Thing more, Thing less) = one.Si > other.Si ? (one.Thing, other.Thing) : (other.Thing, one.Thing);
        string has = DegreeWords.Of(quantity).Say(larger: true);
        if (more.IsPlural) has = has.Replace("is ", "are ", StringComparison.Ordinal).Replace("has ", "have ", StringComparison.Ordinal);
        string than = $"the {more.Word} {has} than the {less.Word}.", said = after is null ? than : $"{TurnedWords.Of(after)}, {than}";
        return holds is { } step ? $"Step {step} holds: {said}" : Grammar.Capital(said);
    }
}
