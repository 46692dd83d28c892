using System.Collections.Immutable;
using TyingClass.Lessons.Reference;

namespace TyingClass.Web.Hosting;

/// <summary>The formulas as pages, read once: from the repository's docs when the program runs inside it, else as built in.</summary>
public sealed class FormulaShelf(IWebHostEnvironment environment)
{
    private readonly Lazy<ImmutableArray<FormulaPage>> _pages = new(() =>
        !ProjectFolder.IsInstalled
            && ProjectFolder.Above(environment.ContentRootPath).Select(folder => Path.Combine(folder, "docs"))
            .FirstOrDefault(docs => File.Exists(Path.Combine(docs, "formulas.md"))) is { } docs
            ? FormulaBook.Read(docs)
            : FormulaBook.AsBuilt);

    public ImmutableArray<FormulaPage> Pages => _pages.Value;
}
