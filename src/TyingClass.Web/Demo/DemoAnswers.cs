using System.Collections.Concurrent;
using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.TubTest;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Demo;

/// <summary>What students might send in: the author's model answer, and what the author expects to go wrong.</summary>
internal sealed class DemoAnswers(Exercise exercise)
{
    // The key is computed: asked for once an exercise, however many students answer it.
    private static readonly ConcurrentDictionary<Exercise, string?> Keys = new(ReferenceEqualityComparer.Instance);

    private static readonly ImmutableArray<string> Explanations =
    [
        "I think the weight is too far from the line. When it pulls, the heavy part wants to be below, so it turns until it is.",
        "Because the bead goes around the shank it pushes evenly, so it does not know which way up to be. Something has to be on one side.",
        "The balance point has to be under the hinge line. Here it is not, so it rolls over.",
        "More lead makes it go down and that is all I can say about it.",
    ];

    /// <param name="failed">How many fell short before: a prediction goes on with a fresh fly.</param>
    public string? Right(Random chance, int failed) => exercise switch
    {
        { Task: TubTestTask tub } => Observed(tub, chance),
        { Kind.IsMarkedByPerson: true } => Explained(chance.Next(Explanations.Length)),
        _ when failed > 0 => exercise.Kind.After(exercise, failed).Right,
        _ => Key,
    };

    public string? Wrong(Random chance, int failed)
    {
        if (failed > 0 && exercise.Kind.After(exercise, failed).Wrong is { } again) return again;
        string[] wrong = [.. exercise.WrongAnswers.Select(w => w.Answer), .. exercise.Kind.WrongAnswers(exercise, Key)];
        return wrong.Length == 0 ? null : wrong[chance.Next(wrong.Length)];
    }

    /// <summary>The answer that shows the author's first misreading.</summary>
    public string? Misread => exercise.WrongAnswers.FirstOrDefault(w => w.FindingNamed == "misreading 1")?.Answer;

    /// <summary>Says so little that it came back.</summary>
    public static bool IsThin(string explanation) => explanation == Explanations[^1] || !explanation.Contains(". ", StringComparison.Ordinal);

    // Those are of a fly that turns over; what is asked of no fly is answered with the half of the author's own answer, or its first sentence.
    private string Explained(int which)
    {
        if (exercise.RecipeText is not null || exercise.ModelAnswer is not { } model) return Explanations[which];
        string[] sentences = model.ReplaceLineEndings(" ").Split(". ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        int said = which == Explanations.Length - 1 ? 1 : (sentences.Length + 1) / 2;
        return string.Join(". ", sentences[..said]).TrimEnd('.') + ".";
    }

    private string? Key => Keys.GetOrAdd(exercise, e => e.Kind.RightAnswer(e));

    /// <summary>The prediction, off by what hands and rulers are off by.</summary>
    private string? Observed(TubTestTask task, Random chance)
    {
        List<string> lines = [];
        FlyFigures? fly = exercise.RecipeText is { } text && RecipeParser.Parse(text).Value is { } recipe ? new FlyFigures(recipe) : null;
        foreach (string name in task.Record)
        {
            if (QuantityQuery.TryParse(name, out QuantityQuery query, out _))
            {
                if (fly is not null && query.Of(fly) is { } predicted)
                    lines.Add($"{name}: {query.Say(predicted * (0.88 + 0.24 * chance.NextDouble()), UnitSystem.Metric)}");
            }
            else
            {
                lines.Add($"{name}: {(chance.NextDouble() < 0.5 ? "point down" : "point up")}");
            }
        }

        return lines.Count == 0 ? null : string.Join('\n', lines);
    }
}
