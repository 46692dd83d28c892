using TyingClass.Telling.Reasons;

namespace TyingClass.Telling.Replies;

/// <summary>On one step of an argument.</summary>
public static class StepReply
{
    private const string Elsewhere = "Look at another step.";

    /// <summary>"Step 2 holds: it does fish deeper, 2.22 m against 1.68 m. Look at another step."</summary>
    /// <param name="found">As the other methods here say it; null where the step claims no figure.</param>
    public static string Holds(int step, string? found)
    {
        string plain = $"Step {step} holds. {Elsewhere}";
        return found is null ? plain : Reply.Fit($"Step {step} holds: {found}. {Elsewhere}", $"Step {step} holds: {found}.", plain);
    }

    public static string IsTheSlip(int step) => $"Yes, step {step} is the slip, and for the reason you chose.";

    public static string HasAnotherReason(int step) => $"Step {step} is the slip, but your reason is not what is wrong with it.";

    /// <summary>"it does fish deeper, 2.22 m against 1.68 m": what the change does.</summary>
    public static string Does(string quantity, bool larger, string now, string was)
    {
        // "the fly would get heavier", said of what it does.
        string does = MoveWords.Of(quantity).SayWould(larger).Replace(" would ", " does ", StringComparison.Ordinal);
        if (does.Contains("flies does", StringComparison.Ordinal)) does = does.Replace(" does ", " do ", StringComparison.Ordinal);
        return $"{does}, {now} against {was}";
    }

    /// <summary>"the keel height stays 0.4 mm".</summary>
    public static string Stays(string phrase, string now) => $"the {phrase} stays {now}";

    /// <summary>"the mass of the bead goes from 0.3 g to 0.1 g".</summary>
    public static string Of(string phrase, string now, string was) => $"the {phrase} goes from {was} to {now}";

    /// <summary>"the mass of the bead is 0.3 g, the mass of the hook 0.2 g": two that a step sets side by side.</summary>
    public static string Beside((string Phrase, string Said) one, (string Phrase, string Said) other) =>
        $"the {one.Phrase} is {one.Said}, the {other.Phrase} {other.Said}";

    /// <summary>"it sinks nose up 41° on a loop knot", "the keel height is 0.4 mm": what a fly does, where there is a word for doing it.</summary>
    /// <param name="quantity">"pitch while sinking".</param>
    /// <param name="circumstances">" on a loop knot"; empty for none.</param>
    public static string Acts(string quantity, string circumstances, string phrase, string said)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        string? does = quantity switch
        {
            "pitch" => said == Level ? "it rides level" : $"it rides {said}",
            "pitch while sinking" => said == Level ? "it sinks level" : $"it sinks {said}",
            "pitch in the pause" => said == Level ? "in the pause its nose comes down to level" : $"in the pause it comes to {said}",
            "lean" => $"it leans {said}",
            "sink rate" => $"it sinks at {said}",
            "mass" => $"it weighs {said}",
            "mass with held water" => $"with the water it holds it weighs {said}",
            "held water" => $"it holds {said} of water",
            "wet weight" => $"in the water it weighs {said}",
            _ => null,
        };
        return does is null ? Is(phrase, said) : does + circumstances;
    }

    private const string Level = "level";

    /// <summary>"the keel height is 0.4 mm".</summary>
    public static string Is(string phrase, string said) => $"the {phrase} is {said}";
}
