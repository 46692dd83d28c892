using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reasons;

/// <summary>The first sentence on a fly that was watched: what was seen beside what the model says, and what to look at.</summary>
public static class SeenOpening
{
    /// <summary>"It is heavier to cast than the model says: look at the water in the wing."</summary>
    public static string Of(Reason reason, double seenSi)
    {
        ArgumentNullException.ThrowIfNull(reason);
        bool agrees = reason.ToSi is not { } model || Math.Abs(seenSi - model) < reason.NoticeableSi;
        string most = reason.Top is { } top ? $"the {top.What.Word}" : "the hook";
        string has = reason.Top?.What.Verb("has", "have") ?? "has";
        return agrees ? $"You saw what the model says, and {most} {has} the most say in it."
            : $"You saw that it {DegreeWords.Of(reason.Quantity).Say(seenSi > reason.ToSi)} than the model says: look at {most}, which {has} the most say.";
    }

    /// <summary>Which way up it was seen to ride.</summary>
    /// <param name="seen">"point up".</param>
    public static string OfWay(string seen, bool agrees, Thing? most)
    {
        string look = most is null ? "the hook" : $"the {most.Word}";
        return agrees ? $"You saw it {Rode(seen)}, as the model says, and {look} {most?.Verb("has", "have") ?? "has"} the most say in that."
            : $"You saw it {Rode(seen)}, which the model does not say: look at {look} first.";
    }

    /// <summary>It was seen to ride some way, and the model leaves which to the cast.</summary>
    public static string OfTheCast(string seen, Thing? most) =>
        $"You saw it {Rode(seen)}, and the model says it may land either way: {(most is null ? "the hook" : $"the {most.Word}")} "
            + $"{most?.Verb("has", "have") ?? "has"} the most say.";

    /// <summary>The nose was seen to point down at no time.</summary>
    public static string OfNever(bool agrees) => agrees ? "You saw its nose never point down, as the model says: the leader holds it up."
        : "You saw its nose never point down, which the model does not say: look at the leader first, which holds it.";

    private static string Rode(string seen) => seen.StartsWith("point", StringComparison.Ordinal) ? $"ride {seen}" : seen switch
    {
        WayWords.NoClearWay => "ride now one way and now the other",
        _ => $"ride {seen}",
    };
}
