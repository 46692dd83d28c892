using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>"quantity", "tolerance" and "sum" of a measure exercise.</summary>
internal static class MeasureReader
{
    public static MeasureTask? Read(FieldReader fields, AnswerReader answers)
    {
        string? text = fields.RequiredText("quantity", "mass center, x"), tolerance = fields.RequiredText("tolerance", "0.5 mm");
        if (text is null) return null;
        bool found = QuantityQuery.TryParse(text, out QuantityQuery query, out string error);
        if (found && query.Quantity.Takes.HasFlag(Circumstances.Start))
            (found, error) = (false, $"“{query.Name}” cannot be measured: it compares with a fly given.");
        if (!found)
        {
            fields.Errors.Add(fields.At("quantity"), error);
            return null;
        }

        if (tolerance is not null && (!GoalReader.TryRead(query.Quantity, tolerance, out double si, out error) || si <= 0))
            fields.Errors.Add(fields.At("tolerance"), error.Length > 0 ? error : "The tolerance must be more than nothing.");
        return new MeasureTask(query.Name, tolerance ?? "")
        {
            Done = fields.Has("change") ? answers.Change("change") : null,
            Sum = fields.Has("sum") ? [.. fields.Pairs("sum").Select(p => SumLine.Read(p.Key, (p.Value as YamlText)?.Value ?? ""))] : [],
        };
    }
}
