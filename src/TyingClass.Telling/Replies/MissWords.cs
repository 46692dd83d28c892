using Humanizer;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Reasons;

namespace TyingClass.Telling.Replies;

/// <summary>A figure that was asked for, as a clause may speak of it.</summary>
/// <param name="Name">"keel height", without its circumstances.</param>
/// <param name="Phrase">With them.</param>
/// <param name="Part">For "mass of bead": the part; null for the fly's own.</param>
/// <param name="What">Null for a plain count.</param>
/// <param name="Low">Of what was asked; infinite where it has no such end.</param>
public sealed record AskedGoal(string Name, string Phrase, string? Part, Magnitude? What, double Low, double High)
{
    /// <summary>"fresh, ", where it is asked of the fly as it comes from the cast, or asked of both.</summary>
    public string State { get; init; } = "";
}

/// <summary>By how much a goal is missed, or what was reached, as a clause.</summary>
public static class MissWords
{
    internal const string By = ", by ";

    private const string HasItsCenter = "has its mass center";

    /// <summary>"it sinks too fast, by 0.03 m/s".</summary>
    public static string Of(AskedGoal goal, double si, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(goal);
        bool large = si > goal.High;
        double over = large ? si - goal.High : goal.Low - si;
        switch (goal.Name)
        {
            case "changes": return $"it makes {Count(over)} change{(Math.Round(over) == 1 ? "" : "s")} too {(large ? "many" : "few")}";
            case "parts": return $"it has {Count(over)} part{(Math.Round(over) == 1 ? "" : "s")} too {(large ? "many" : "few")}";
            case "added mass" when large: return $"it gets heavier than it may{By}{Amount(goal, over, units)}";
        }

        if (goal.What?.Dimension == Dimension.Share)
            return large ? $"{goal.State}{Flies(goal.Name, si)}, and only {Hundred(goal.High)} may"
                : $"{goal.State}{(si > 0 ? "only " : "")}{Flies(goal.Name, si)}";
        string too = DegreeWords.Of(goal.Name).Too(large);
        string subject = "it";
        if (goal.Part is { } part)
        {
            subject = $"the {part}";
            if (KindsOfPart.FindByName(part) is { IsPlural: true }) too = too.Replace("is ", "are ", StringComparison.Ordinal);
        }

        if (too.StartsWith(HasItsCenter, StringComparison.Ordinal)) (subject, too) = ("its mass center", $"lies{too[HasItsCenter.Length..]}");
        return $"{goal.State}{subject} {too}{By}{Amount(goal, over, units)}";
    }

    /// <summary>"97 flies in a hundred ride as intended", "the keel height is 0.6 mm".</summary>
    public static string Reached(AskedGoal goal, double si, string said)
    {
        ArgumentNullException.ThrowIfNull(goal);
        return goal.What?.Dimension == Dimension.Share ? Flies(goal.Name, si) : $"the {goal.Phrase} is {said}";
    }

    /// <summary>"fresh, fewer flies ride as intended than before, 71 → 0".</summary>
    public static string Worse(AskedGoal goal, double fromSi, double toSi, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(goal);
        string moved = MoveWords.Of(goal.Name).Say(toSi > fromSi);
        (string from, string to) = goal.What switch
        {
            { Dimension: Dimension.Share } => (Hundred(fromSi), Hundred(toSi)),
            { } what => what.SayApart(units, fromSi, toSi) is [var was, var now] ? (was, now) : ("", ""),
            null => (Numbers.Write(fromSi, 2), Numbers.Write(toSi, 2)),
        };
        return $"{goal.State}{moved} than before, {from} → {to}";
    }

    /// <summary>Beside one that got worse.</summary>
    public static string NoBetter(AskedGoal goal)
    {
        ArgumentNullException.ThrowIfNull(goal);
        return goal.State.Length > 0 ? $"{goal.State}no better" : $"the {goal.Phrase} is no better";
    }

    /// <summary>Where the fly has no such figure.</summary>
    public static string None(AskedGoal goal, VerdictKind verdict)
    {
        ArgumentNullException.ThrowIfNull(goal);
        if (goal is { Name: "mass of", Part: { } part })
            return KindsOfPart.FindByName(part) is { IsPlural: true } ? $"it has no {part}" : $"it has no {part} on it";
        return verdict switch
        {
            VerdictKind.Hangs => "it hangs rather than rides",
            VerdictKind.Floats => "it floats",
            _ => $"the {goal.Phrase} cannot be told",
        };
    }

    /// <summary>All stay as they lie, and the cast decides how that is.</summary>
    public const string LeftToTheCast = "the cast decides which way up it lands";

    private static string Flies(string name, double share)
    {
        string does = name switch { "leans" => "lean", "flips" => "flip", _ => "ride as intended" };
        return share <= 0 ? $"no flies {does}" : $"{Hundred(share)} flies in a hundred {does}";
    }

    // However small it is, it is not nothing.
    private static string Amount(AskedGoal goal, double over, UnitSystem units) =>
        goal.What?.SayAgainst(over, 0, units) ?? Numbers.Write(over, 2);

    private static string Count(double over) => Math.Max(1, (int)Math.Round(over)).ToWords();

    private static string Hundred(double share) => Numbers.Write(100 * share, 0);
}
