using System.Collections.Immutable;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.FindTheSlip;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Kinds.Sort;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>Whether the answer to an exercise stands above it in the same lesson, where whoever reads on has just read it.</summary>
internal static partial class AnsweredAbove
{
    // A figure this near the key, in shares of the tolerance, is the key rounded. Estimate.
    private const double NearKey = 0.3;

    // Of the words that carry a sentence, this share makes it the same sentence. Estimate.
    private const double SameSentence = 0.8;

    // Fewer such words make no sentence to recognize. Estimate.
    private const int FewestWords = 5;

    public static IEnumerable<AuthorError> Check(Lesson lesson)
    {
        List<string> above = [];
        foreach (LessonBlock block in lesson.Blocks)
        {
            switch (block)
            {
                case ProseBlock prose:
                    above.AddRange(Passages(prose.Html));
                    break;
                case FlyBlock fly:
                    above.Add(fly.Caption);
                    break;
                case FigureBlock figure:
                    above.Add(figure.Caption);
                    break;
                case ExerciseBlock { Exercise: var exercise }:
                    if (Found(exercise, above) is { } passage) yield return At(lesson, exercise, passage);
                    above.AddRange(Passages(exercise.PromptHtml));
                    break;
            }
        }
    }

    private static AuthorError At(Lesson lesson, Exercise exercise, string passage)
    {
        (int line, int column) = exercise.Place.Of("prompt");
        string quoted = Spaces().Replace(passage, " ").Trim();
        return new AuthorError(lesson.File, line, column,
            $"{exercise.Id}: its answer stands above it, in “{(quoted.Length > 110 ? quoted[..110] + "…" : quoted)}”. "
            + "Ask before telling: move the exercise up, or ask it of another fly or figure.");
    }

    private static string? Found(Exercise exercise, List<string> above) => exercise.Task switch
    {
        MeasureTask task => Figure(exercise, task, above),
        PredictTask task => Choice(exercise, task, above),
        SortTask task => above.FirstOrDefault(p => task.Items.All(i => Names(p, i.Name)) && TellsOf(p, QuantityQuery.Known(task.Quantity), task.Items.Length)),
        FindTheSlipTask task => Same(task.Reasons[task.RightReason - 1], above),
        _ => null,
    };

    // Its figure, where the fly is named or the quantity is.
    private static string? Figure(Exercise exercise, MeasureTask task, List<string> above)
    {
        FlyFigures fly = MeasureTask.Measured(exercise);
        if (task.Query.Of(fly) is not { } key || task.Query.Quantity.Dimension is not { } dimension) return null;
        return above.FirstOrDefault(p => (Names(p, fly.Recipe.Name) || Names(p, Plain(task.Query)))
            && Figures(p, dimension).Any(f => Math.Abs(f - key) <= NearKey * task.ToleranceSi));
    }

    private static string? Choice(Exercise exercise, PredictTask task, List<string> above)
    {
        if (Prediction.Answer(exercise)?.Choice is not { } key) return null;
        string name = GivenFly.Of(exercise.RecipeText!).Name;
        return task.Question switch
        {
            WhichHasMore more => above.FirstOrDefault(p => Names(p, more.FirstName) && Names(p, more.SecondName) && TellsOf(p, PredictKey.Query(exercise), 2)),
            WhichWayUp or WhereTheNosePoints => above.SelectMany(Sentences)
                .FirstOrDefault(s => Names(s, name) && Names(s, key) && !Names(s, "meant") && !Names(s, "should") && !Names(s, "?")),
            ChangeIn => above.SelectMany(Sentences).FirstOrDefault(s => Names(s, name) && Names(s, Plain(PredictKey.Query(exercise)))
                && Ways(key).Any(way => Carrying(s).Contains(way)) && !Names(s, "?")),
            OwnChoices => Same(key, above),
            _ => null,
        };
    }

    private static ImmutableArray<string> Ways(string key) => key switch
    {
        ChangeIn.Rises => ["grows", "rises", "larger", "greater", "more", "deeper", "faster"],
        ChangeIn.Falls => ["shrinks", "falls", "smaller", "less", "shallower", "slower"],
        _ => ["unchanged", "same"],
    };

    // A passage that names the quantity and gives as many figures of it as there are flies.
    private static bool TellsOf(string passage, QuantityQuery query, int flies) =>
        query.Quantity.Dimension is { } dimension && Names(passage, Plain(query)) && Figures(passage, dimension).Count() >= flies;

    private static string Plain(QuantityQuery query) => query.Part is { } part ? $"{query.Quantity.Name} the {part}" : query.Quantity.Name.Split(',')[0];

    private static string? Same(string sentence, List<string> above)
    {
        HashSet<string> words = Carrying(sentence);
        return words.Count < FewestWords ? null : above.SelectMany(Sentences).FirstOrDefault(s =>
        {
            HashSet<string> said = Carrying(s);
            return words.Count(said.Contains) >= SameSentence * words.Count;
        });
    }

    private static HashSet<string> Carrying(string sentence) => [.. Words().Matches(sentence).Select(m => m.Value.ToLowerInvariant()).Where(w => w.Length > 2)];

    private static bool Names(string passage, string words) => passage.Contains(words, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<double> Figures(string passage, Dimension dimension)
    {
        foreach (Match match in FigureWithUnit().Matches(passage))
        {
            if (Units.TryParse(match.Value.Replace('−', '-').Trim(), dimension, out double si, out _)) yield return si;
        }
    }

    private static IEnumerable<string> Sentences(string passage) => SentenceEnd().Split(passage);

    // Paragraphs, items and whole tables.
    private static ImmutableArray<string> Passages(string html)
    {
        IElement? body = new HtmlParser().ParseDocument(html).Body;
        return body is null ? []
            : [.. body.QuerySelectorAll("p, li, table").Where(e => e.Closest("li, table") == e || e.Closest("li, table") is null)
                .Select(e => string.Join(' ', Texts(e)))];
    }

    // Cells of a table stand apart.
    private static IEnumerable<string> Texts(IElement element) =>
        element.LocalName == "table" ? element.QuerySelectorAll("th, td").Select(cell => cell.TextContent) : [element.TextContent];

    [GeneratedRegex(@"[−-]?\d+(?:\.\d+)?\s?(?:mm³|cm³|mN|m/s|mm|cm|m|mg|g|kg|°|s|%)(?![\w·/])")]
    private static partial Regex FigureWithUnit();

    [GeneratedRegex(@"(?<=[.!?:])\s+")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"[\p{L}]+")]
    private static partial Regex Words();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
