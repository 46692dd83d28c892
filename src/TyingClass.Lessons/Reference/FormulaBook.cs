using System.Collections.Immutable;
using System.Reflection;

namespace TyingClass.Lessons.Reference;

/// <summary>
/// The formulas the engine uses, as docs/formulas.md and docs/formulas-body.md have them: what the page /model shows and what links such as /model#keel-height
/// point into.
/// </summary>
public static class FormulaBook
{
    private static readonly Dictionary<string, string> Prefixes = new(StringComparer.Ordinal) { ["formulas.md"] = "", ["formulas-body.md"] = "body" };
    private static readonly Lazy<ImmutableArray<FormulaPage>> BuiltIn = new(() => Write(ReadBuiltIn));

    /// <summary>The documents as they were when the program was built.</summary>
    public static ImmutableArray<FormulaPage> AsBuilt => BuiltIn.Value;

    /// <summary>The documents of a folder, each in its newest words; a missing one is taken as built.</summary>
    /// <exception cref="IOException">A document is there but cannot be read.</exception>
    public static ImmutableArray<FormulaPage> Read(string docsFolder)
    {
        ArgumentNullException.ThrowIfNull(docsFolder);
        return Write(name =>
        {
            string path = Path.Combine(docsFolder, name);
            return File.Exists(path) ? File.ReadAllText(path) : ReadBuiltIn(name);
        });
    }

    /// <summary>Whether the page of formulas has a place of that name.</summary>
    public static bool HasAnchor(string id) => id == EstimatesAnchor || AsBuilt.Any(page => page.HasAnchor(id));

    /// <summary>Where the page lists every estimate; it is no part of the documents.</summary>
    public const string EstimatesAnchor = "estimates";

    private static ImmutableArray<FormulaPage> Write(Func<string, string> text) =>
        [.. Prefixes.Select(p => FormulaWriter.Write(text(p.Key), p.Value, Prefixes))];

    private static string ReadBuiltIn(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} was not built into the program.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
