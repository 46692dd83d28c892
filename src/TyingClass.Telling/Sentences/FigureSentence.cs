using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>Figures of a fly, named and told.</summary>
public static class FigureSentence
{
    /// <summary>"The keel height is 0.4 mm and the pitch is 5°."</summary>
    public static string Of(IEnumerable<(string Phrase, string Said)> figures) =>
        Grammar.Capital(Grammar.And(figures.Select(f => $"the {f.Phrase} is {f.Said}"))) + ".";

    /// <summary>"By the engine, the keel height is 0.4 mm."</summary>
    public static string ByTheEngine(IEnumerable<(string Phrase, string Said)> figures) =>
        $"By the engine, {Grammar.And(figures.Select(f => $"the {f.Phrase} is {f.Said}"))}.";

    /// <summary>"By the engine, the change takes the keel height from 0.4 mm to 0.2 mm."</summary>
    /// <param name="changes">As <see cref="Change"/> says them.</param>
    public static string WithTheChange(IEnumerable<string> changes) => $"By the engine, with the change {Grammar.And(changes)}.";

    /// <summary>Beside a figure of the way a fly was meant to ride, where it is drawn riding otherwise.</summary>
    public static string HeldAsMeant(Intent intent) =>
        $"That is with the fly held {FlyWords.Way(intent)}, the way it was meant to ride, not as it settles.";

    /// <summary>"the keel height goes from 0.4 mm to 0.2 mm", "the pitch stays 5°": no capital, no full stop.</summary>
    public static string Change(string phrase, string was, string now) => was == now ? $"the {phrase} stays {now}" : $"the {phrase} goes from {was} to {now}";

    /// <summary>" at 2 ft/s": how fast, to stand after a figure's name.</summary>
    public static string At(double speedMS, UnitSystem units) => $" at {Stated.Say(speedMS, Dimension.Speed, units)}";

    public static string After(double pauseS, UnitSystem units) => $" after {Stated.Say(pauseS, Dimension.Duration, units)}";
}
