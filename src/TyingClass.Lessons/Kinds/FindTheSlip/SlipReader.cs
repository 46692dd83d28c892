using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>"steps", "slip", "reasons", "instead" and "change" of an exercise in finding the slip.</summary>
internal static class SlipReader
{
    private const int FewestSteps = 3;
    private const int MostSteps = 8;

    public static FindTheSlipTask? Read(TaskReading reading)
    {
        FieldReader fields = reading.Fields;
        int before = fields.Errors.Count;
        ImmutableArray<YamlText>.Builder claims = ImmutableArray.CreateBuilder<YamlText>();
        ImmutableArray<ArgumentStep> steps = Steps(fields, claims);
        (ImmutableArray<string> reasons, int right) = ReasonsReader.Read(fields, "what may be wrong with the step");
        // A step that could not be read has been complained about; the number may be right all the same.
        int? slip = fields.WholeNumber("slip", 1, fields.Errors.Count > before ? MostSteps : steps.Length);
        if (!fields.Has("slip") && claims.Count == 0 && fields.Errors.Count == before)
            fields.Missing("slip", "say which step goes wrong, as in “slip: 3”, or give that step a “claim” that the engine finds false.");
        string? proposed = Proposed(reading);
        FindTheSlipTask task = new(steps, slip, reasons, right) { Instead = fields.Text("instead"), Proposed = proposed };
        bool flyIsSpoiled = reading.Given is null && (fields.Has("recipe") || fields.Has("file"));
        if (flyIsSpoiled || (fields.Has("change") && proposed is null)) return null;
        ConditionScope scope = FindTheSlipKind.Instance.ClaimScope(task, reading.Given);
        foreach (YamlText claim in claims) ConditionReader.Check(claim, scope, fields.Errors);
        return fields.Errors.Count == before ? task : null;
    }

    private static ImmutableArray<ArgumentStep> Steps(FieldReader fields, ImmutableArray<YamlText>.Builder claims)
    {
        ImmutableArray<ArgumentStep>.Builder steps = ImmutableArray.CreateBuilder<ArgumentStep>();
        ImmutableArray<YamlNode> items = fields.Items("steps");
        foreach (YamlNode item in items)
        {
            if (item is YamlText { Value: var said } && !string.IsNullOrWhiteSpace(said))
                steps.Add(new ArgumentStep(said.Trim(), null, item.Line, item.Column));
            else if (item is YamlMap map) ReadStep(new FieldReader(map, "a step", fields.Errors));
            else fields.Errors.Add(item, "Each step is a sentence, or has “say” (the sentence) and “claim” (what it states of the fly, as a condition).");
        }

        if (!fields.Has("steps")) fields.Missing("steps", "list the argument, a sentence each.");
        else if (items.Length is < FewestSteps or > MostSteps)
            fields.Errors.Add(fields.At("steps"), $"An argument has {FewestSteps} to {MostSteps} steps; this one has {items.Length}.");
        return steps.ToImmutable();

        void ReadStep(FieldReader step)
        {
            step.CheckKeys("say", "claim");
            string? claim = step.Text("claim");
            if (step.RequiredText("say", "A bigger bead has more mass.") is not { } say) return;
            YamlNode place = step.At(claim is null ? "say" : "claim");
            steps.Add(new ArgumentStep(say, claim, place.Line, place.Column));
            if (step.Node("claim") is YamlText node && claim is not null) claims.Add(node);
        }
    }

    private static string? Proposed(TaskReading reading)
    {
        FieldReader fields = reading.Fields;
        if (!fields.Has("change")) return null;
        if (fields.Node("change") is YamlMap change) return reading.Given is null ? null : reading.Answers.Changed(change);
        fields.Errors.Add(fields.At("change"), "Say what the tyer proposes, as in “change:” and moved in below it “parts[0].size: 4.8 mm”.");
        return null;
    }
}
