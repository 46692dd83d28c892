using System.Collections.Immutable;
using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Yaml;

/// <summary>Collects what is wrong with one lesson file.</summary>
internal sealed class AuthorErrors(string file)
{
    private readonly List<AuthorError> _all = [];

    public string File => file;

    /// <summary>Addresses met on the way.</summary>
    public List<LessonLink> Links { get; } = [];

    public int Count => _all.Count;

    public void Add(int line, int column, string text) => _all.Add(new AuthorError(file, line, column, text));

    public void Add(YamlNode node, string text) => Add(node.Line, node.Column, text);

    public void Add(AuthorError error) => _all.Add(error);

    public ImmutableArray<AuthorError> InOrder() => [.. _all.OrderBy(e => e.File, StringComparer.Ordinal).ThenBy(e => e.Line).ThenBy(e => e.Column).Distinct()];
}
