using System.Collections.Immutable;

namespace TyingClass.Lessons.Reference;

/// <summary>One document of formulas, ready to stand on a page beside others.</summary>
/// <param name="Html">Cleaned. Its title is a heading of the second rank, its sections of the third.</param>
/// <param name="Headings">Title and sections in reading order.</param>
public sealed record FormulaPage(string Html, ImmutableArray<FormulaHeading> Headings)
{
    /// <summary>True when a link such as /model#keel-height would find its place here.</summary>
    public bool HasAnchor(string id) => Html.Contains($"id=\"{id}\"", StringComparison.Ordinal);
}

/// <param name="Rank">2 the document's title, 3 a section, 4 a part of one.</param>
/// <param name="Id">What a link names after #; unique over all documents.</param>
public sealed record FormulaHeading(int Rank, string Id, string Text);
