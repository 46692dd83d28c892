using System.Collections.Immutable;
using TyingClass.Recipes.Parts;
using TyingClass.Telling;

namespace TyingClass.Web.Editing;

/// <summary>Fields that belong together, with the line they make when folded away.</summary>
/// <param name="Of">What they are of, for those who cannot see what stands above: "hook".</param>
/// <param name="Folds">False where they always stand open.</param>
public sealed record FieldFold(string Of, ImmutableArray<FieldView> Fields, bool Folds)
{
    /// <summary>Where an exercise says nothing of any of these, they wait in a fold for whoever wants them.</summary>
    public bool MayStandAside { get; init; }

    public bool IsAside => MayStandAside && !Folds && Fields.Any() && Fields.All(f => f.IsAside && !f.Locked);

    /// <summary>A kind that cannot be changed stands in the part's title already.</summary>
    public IEnumerable<FieldView> Usual => Fields.Where(f => !f.Rare && !(f.Locked && IsKind(f)));

    public IEnumerable<FieldView> Rare => Fields.Where(f => f.Rare);

    public bool HasRare => Rare.Any();

    public bool RareOpen => Rare.Any(f => f.Value.Length > 0 || !f.Errors.IsEmpty);

    /// <summary>Nothing to mend is ever folded away, nor what has still to be filled in.</summary>
    public bool MustOpen => Fields.Any(f => !f.Errors.IsEmpty) || (!IsAside && Fields.Any(f => !f.IsNote) && Filled.All(IsProposed));

    /// <summary>As on a recipe card: "brass, size 3 mm, from 3 mm".</summary>
    public string Line => Filled.Any() ? string.Join(Filled.All(f => f.IsNote) ? "; " : ", ", Filled.Select(Said))
        : Fields.All(f => f.IsNote) ? "none yet"
        : HasUsual ? "nothing filled in: drawn with what is usual"
        : "nothing filled in yet";

    // A part of a known kind has usual sizes and a usual place, and fishing a usual way; a hook must be given.
    private bool HasUsual => Of == "fishing" || Fields.Any(f => IsKind(f) && KindsOfPart.Find(f.Value) is not null);

    private IEnumerable<FieldView> Filled => Fields.Where(f => f.Value.Length > 0 && !IsKind(f));

    private static bool IsKind(FieldView field) => field.Path.EndsWith("].part", StringComparison.Ordinal);

    // A part just tied in is given a free place and its side, and nothing else.
    private static bool IsProposed(FieldView field) =>
        field.Path.EndsWith("].at", StringComparison.Ordinal) || field.Path.EndsWith("].side", StringComparison.Ordinal);

    private static string Said(FieldView field) => field.IsNote ? Grammar.WithoutStop(field.Value)
        : field.Path.EndsWith(".material", StringComparison.Ordinal) ? field.Value
        : $"{char.ToLowerInvariant(field.Label[0])}{field.Label[1..]} {field.Value}";
}
