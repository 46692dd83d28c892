using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds.Predict;

/// <param name="When">The nodes of the author's own conditions, for their places.</param>
internal sealed record ReadQuestion(Question Question, ImmutableArray<string> Choices, string? Quantity, ImmutableArray<YamlText> When);

/// <summary>What a predict exercise asks.</summary>
internal static class QuestionReader
{
    private const string Forms =
        "Write “ask: which way up”, “ask: nose”, “ask: which sinks faster”, “ask: which has more mass”, “ask: change in keel height”, or leave “ask” out "
        + "and list “choices” with “say” and “when”.";

    public static ReadQuestion? Read(FieldReader fields, Recipe? given, RecipeFinder recipes, AnswerReader answers)
    {
        string? ask = fields.Text("ask");
        if (fields.Has("choices") && ask is null) return Own(fields);
        if (fields.Has("choices")) fields.Errors.Add(fields.At("choices"), "“ask” brings its own choices. Leave one of the two out.");
        switch (ask)
        {
            case "which way up":
                return new ReadQuestion(new WhichWayUp(), WhichWayUp.Choices, null, []);
            case "nose":
                return new ReadQuestion(new WhereTheNosePoints(), WhereTheNosePoints.Choices, "pitch", []);
            case "which sinks faster":
                return More(fields, given, recipes, "sink rate");
            case { } text when text.StartsWith("which has more ", StringComparison.Ordinal):
                return More(fields, given, recipes, text["which has more ".Length..]);
            case { } text when text.StartsWith("change in ", StringComparison.Ordinal):
                return ChangeInQuantity(fields, answers, text["change in ".Length..]);
            default:
                fields.Errors.Add(fields.At("ask"),
                    ask is null ? $"A predict exercise must ask something. {Forms}" : $"“{FieldReader.Clip(ask)}” cannot be asked. {Forms}");
                return null;
        }
    }

    private static ReadQuestion? More(FieldReader fields, Recipe? given, RecipeFinder recipes, string quantity)
    {
        if (!TryQuantity(fields, quantity, out string name)) return null;
        if (fields.Node("other recipe") is not { } node)
        {
            fields.Errors.Add(fields.Map, "Two flies are compared: give the second one as “other recipe”.");
            return null;
        }

        if (recipes.Find(node) is not { } source || source.Parse(fields.Errors) is not { } other || given is null) return null;
        if (other.Name == given.Name)
        {
            fields.Errors.Add(node, $"Both flies are called {given.Name}. Give them different names, since the names are the choices.");
            return null;
        }

        return new ReadQuestion(new WhichHasMore(given.Name, other.Name, source.Text), [given.Name, other.Name, WhichHasMore.Same], name, []);
    }

    private static ReadQuestion? ChangeInQuantity(FieldReader fields, AnswerReader answers, string quantity)
    {
        if (!TryQuantity(fields, quantity, out string name)) return null;
        return answers.Change("change") is { } change ? new ReadQuestion(new ChangeIn(change), ChangeIn.Choices, name, []) : null;
    }

    private static ReadQuestion? Own(FieldReader fields)
    {
        ImmutableArray<string>.Builder choices = ImmutableArray.CreateBuilder<string>();
        ImmutableArray<YamlText>.Builder when = ImmutableArray.CreateBuilder<YamlText>();
        foreach (YamlNode item in fields.Items("choices"))
        {
            if (item is not YamlMap map)
            {
                fields.Errors.Add(item, "Each choice has “say” (what the student reads) and “when” (the condition under which it is right).");
                continue;
            }

            FieldReader choice = new(map, "a choice", fields.Errors);
            choice.CheckKeys("say", "when");
            if (choice.RequiredText("say", "it flips") is { } say && choice.RequiredText("when", "lean > 120°") is not null
                && choice.Node("when") is YamlText condition)
            {
                if (choices.Contains(say, StringComparer.OrdinalIgnoreCase)) fields.Errors.Add(choice.At("say"), "This choice is listed twice.");
                choices.Add(say);
                when.Add(condition);
            }
        }

        if (choices.Count < 2)
        {
            fields.Errors.Add(fields.At("choices"), "Give at least two choices.");
            return null;
        }

        return new ReadQuestion(new OwnChoices([.. when.Select(w => w.Value.Trim())]), choices.ToImmutable(), null, when.ToImmutable());
    }

    private static bool TryQuantity(FieldReader fields, string text, out string name)
    {
        bool found = QuantityQuery.TryParse(text, out QuantityQuery query, out string error);
        if (found && query.Quantity.Takes.HasFlag(Circumstances.Start))
            (found, error) = (false, $"“{query.Name}” cannot be asked for: it compares with a fly given.");
        if (!found) fields.Errors.Add(fields.At("ask"), error);
        name = found ? query.Name : "";
        return found;
    }
}
