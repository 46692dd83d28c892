using System.Collections.Immutable;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>What the line hand does: “strip 30 cm in 0.5 s, pause 1.5 s”, a name, or a list of steps.</summary>
internal static class RetrieveText
{
    public const string Forms = "“strip 30 cm in 0.5 s, pause 1.5 s”";
    public const int MostSteps = 24;

    private static readonly Limit Strip = new(Dimension.Length, "1 cm", "2 m", "30 cm");
    private static readonly Limit StripTime = new(Dimension.Duration, "0.05 s", "60 s", "0.5 s");
    private static readonly Limit Pause = new(Dimension.Duration, "0.1 s", "300 s", "1.5 s");

    private static IEnumerable<string> Names => RetrieveScale.Named.Select(n => n.Name);

    /// <summary>A sentence or a name.</summary>
    public static string? TryRead(string text, ref RetrieveSpec retrieve)
    {
        string plain = WordList.Plain(text);
        if (RetrieveScale.Find(plain) is { } named)
        {
            retrieve = retrieve with { Round = named, Name = plain };
            return null;
        }

        string[] pieces = plain.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        ImmutableArray<RetrieveStep>.Builder round = ImmutableArray.CreateBuilder<RetrieveStep>();
        foreach (string piece in pieces)
        {
            if (TryStep(piece, out RetrieveStep step) is { } error)
            {
                return piece.StartsWith("strip ", StringComparison.Ordinal) || piece.StartsWith("pause ", StringComparison.Ordinal)
                    ? error
                    : $"{WordList.Quote(text)} is no retrieve.{Nearest.Hint(plain, Names)} Write what the hand does, {Forms}, or a name: {WordList.Or(Names)}.";
            }

            round.Add(step);
        }

        if (Check(round.Count) is { } wrong) return wrong;
        retrieve = retrieve with { Round = round.ToImmutable(), Name = null };
        return null;
    }

    /// <summary>A list of “strip: 30 cm” with “in: 0.5 s”, and “pause: 1.5 s”.</summary>
    public static ImmutableArray<RetrieveStep> Read(YamlList list, MapReader fishing)
    {
        ImmutableArray<RetrieveStep>.Builder round = ImmutableArray.CreateBuilder<RetrieveStep>();
        foreach (YamlNode item in list.Items)
        {
            if (item is YamlSpoiled) continue;
            if (Sentence(item) is not { } sentence)
            {
                fishing.Errors.Add(item, fishing.PathOf("retrieve"),
                    "Fishing, retrieve: each step reads “- strip: 30 cm” with “in: 0.5 s” below it, or “- pause: 1.5 s”.");
            }
            else if (TryStep(sentence, out RetrieveStep step) is { } error)
            {
                fishing.Errors.Add(item, fishing.PathOf("retrieve"), $"Fishing, retrieve: {error}");
            }
            else
            {
                round.Add(step);
            }
        }

        if (Check(list.Items.Length) is { } wrong) fishing.Complain("retrieve", wrong);
        return round.ToImmutable();
    }

    /// <summary>The list in one line, for a form; null where a step is not laid out as one.</summary>
    public static string? InOneLine(YamlList list)
    {
        string?[] steps = [.. list.Items.Select(Sentence)];
        return steps.Length > 0 && steps.All(s => s is not null) ? string.Join(", ", steps) : null;
    }

    public static string? Write(RetrieveSpec retrieve) => retrieve.Round.IsEmpty ? null
        : retrieve.Name ?? string.Join(", ", retrieve.Round.Select(Write));

    public static string Write(RetrieveStep step)
    {
        string seconds = Units.Exact(step.DurationS, Dimension.Duration, "s");
        return step.IsStrip ? $"strip {Units.Exact(step.StripM, Dimension.Length, "cm")} in {seconds}" : $"pause {seconds}";
    }

    private static string? TryStep(string text, out RetrieveStep step)
    {
        step = default;
        double stripM = 0, seconds;
        string? error;
        if (text.StartsWith("pause ", StringComparison.Ordinal))
        {
            error = Pause.TryRead(text["pause ".Length..], out seconds);
        }
        else
        {
            int at = text.LastIndexOf(" in ", StringComparison.Ordinal);
            if (!text.StartsWith("strip ", StringComparison.Ordinal) || at < "strip ".Length)
                return $"{WordList.Quote(text)} does not say what the hand does and how long it takes. Write {Forms}.";
            error = Strip.TryRead(text["strip ".Length..at], out stripM);
            string? wrong = StripTime.TryRead(text[(at + " in ".Length)..], out seconds);
            error ??= wrong;
        }

        if (error is null) step = new RetrieveStep(stripM, seconds);
        return error;
    }

    private static string? Check(int steps) => steps is >= 1 and <= MostSteps ? null
        : $"A round has 1 to {MostSteps} steps; this one has {steps}. It is made over and over: write it once, {Forms}, and “repeat: 8” beside it.";

    private static string? Sentence(YamlNode item) => item is not YamlMap map ? null
        : map.Entries is [{ Key: "pause", Value: YamlText pause }] ? $"pause {pause.Value}"
        : map.Entries.Length == 2 && map.Find("strip") is YamlText strip && map.Find("in") is YamlText seconds ? $"strip {strip.Value} in {seconds.Value}"
        : null;
}
