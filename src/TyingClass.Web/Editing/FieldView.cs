using System.Collections.Immutable;

namespace TyingClass.Web.Editing;

/// <summary>One field of the recipe form.</summary>
/// <param name="Path">As errors and recipes name it: "parts[0].size".</param>
public sealed record FieldView(string Path, string Label)
{
    private const int UsualCharacters = 14;

    public string Value { get; init; } = "";

    /// <summary>For a choice; the value is always among them.</summary>
    public ImmutableArray<string> Options { get; init; } = [];

    /// <summary>May be chosen too, but seldom is: offered after the others.</summary>
    public ImmutableArray<string> OtherOptions { get; init; } = [];

    /// <summary>What stands for an empty choice.</summary>
    public string WhenEmpty => Needed is not null ? "choose one" : Usual is { } usual ? $"as usual: {usual}" : "as usual";

    /// <summary>What is taken where nothing is filled in; null where that is not known.</summary>
    public string? Usual { get; init; }

    /// <summary>What must be filled in here, where nothing is taken for granted; null where it may stay empty.</summary>
    public string? Needed { get; init; }

    /// <summary>Shown in an empty field.</summary>
    public string Prompt => IsNote ? Example
        : Needed is { } needed ? $"needed: {needed}"
        : Usual is { } usual ? $"usual: {usual}"
        : Example.Length > 0 ? $"such as {Example}" : "";

    /// <summary>Offered while typing; anything else may be typed too.</summary>
    public ImmutableArray<string> Suggestions { get; init; } = [];

    public string Example { get; init; } = "";

    /// <summary>A remark under the field: how far it may change, what was given.</summary>
    public string? Note { get; init; }

    public ImmutableArray<string> Errors { get; init; } = [];

    /// <summary>Shown, not to be changed.</summary>
    public bool Locked { get; init; }

    /// <summary>Seldom used: folded away while empty.</summary>
    public bool Rare { get; init; }

    /// <summary>What an exercise says nothing of.</summary>
    public bool IsAside { get; init; }

    /// <summary>A sentence rather than a measure.</summary>
    public bool IsNote { get; init; }

    /// <summary>Too long to be read whole in a field of the usual width.</summary>
    public bool IsLong => Options.IsEmpty && (IsNote || Value.Length > UsualCharacters);

    public string Name => AnswerPost.FieldPrefix + Path;

    public string Id => IdOf(Path);

    public string? DescribedBy => (Errors.IsEmpty, Note) switch
    {
        (true, null) => null,
        (true, _) => $"{Id}-note",
        (false, null) => $"{Id}-error",
        _ => $"{Id}-error {Id}-note",
    };

    /// <summary>Where somebody is led who has to mend what stands at a path; a list of parts is mended by tying one in.</summary>
    public static string LinkTo(string path) => path == "parts" ? "add-kind" : IdOf(path);

    public static string IdOf(string path) => "f-" + string.Concat(path.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
}

/// <param name="Kind">As typed, known or not.</param>
public sealed record PartView(int Index, string Kind, FieldView KindField, ImmutableArray<FieldView> Fields, ImmutableArray<string> Errors)
{
    public string Title => string.IsNullOrWhiteSpace(Kind) ? "part of no kind" : Kind;
}

/// <summary>A recipe as a form.</summary>
public sealed record RecipeFormView
{
    public required ImmutableArray<FieldView> Top { get; init; }

    public required ImmutableArray<FieldView> Hook { get; init; }

    public required ImmutableArray<PartView> Parts { get; init; }

    public required ImmutableArray<FieldView> Fishing { get; init; }

    /// <summary>The tying notes, and an empty field for the next.</summary>
    public required ImmutableArray<FieldView> Steps { get; init; }

    /// <summary>Keys no recipe has, kept so that they can be seen and mended.</summary>
    public required ImmutableArray<FieldView> Unknown { get; init; }

    /// <summary>Kinds that may be added; empty when the list of parts is fixed.</summary>
    public required ImmutableArray<string> KindsToAdd { get; init; }

    public bool PartsMayChange => !KindsToAdd.IsEmpty;
}
