using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Repair;

/// <summary>Only what is allowed may change; the note says how far, and what was given.</summary>
internal sealed class RepairRules(RepairTask task, RecipeDraft given) : EditRules
{
    public override ImmutableArray<string> KindsToAdd => task.Allow.Any(a => a.Path == "parts") ? KindsOfPart.Words : [];

    public override bool IsLocked(string path, string value) =>
        path != "recipe" && Allowed(path) is null && (given.Get(path) ?? "") == value;

    public override string? NoteOn(string path, string value)
    {
        if (path == "recipe") return null;
        string was = given.Get(path) ?? "";
        string before = was.Length == 0 ? "was left open" : $"was {was}";
        return Allowed(path) switch
        {
            null => $"{before}; this exercise does not let it change",
            { Said: "anything" } => was == value ? null : before,
            // What may be chosen stands in the list.
            { Words.Length: > 1 } rule when rule.Path == path => before,
            { } rule => $"{rule.Said}; {before}",
        };
    }

    public override bool SpeaksOf(string path) => Allowed(path) is not null;

    public override ImmutableArray<string> ChoicesFor(string path) => Allowed(path) is { } rule && rule.Path == path ? rule.Words : [];

    private AllowedChange? Allowed(string path) => task.Allow.FirstOrDefault(a =>
        path == a.Path
        || path.StartsWith(a.Path + ".", StringComparison.Ordinal)
        || (a.Path == "parts" && path.StartsWith("parts[", StringComparison.Ordinal)));
}
