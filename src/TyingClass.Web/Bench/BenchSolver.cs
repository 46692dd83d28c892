using System.Collections.Immutable;
using Microsoft.Extensions.Caching.Memory;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Bench;

/// <summary>A recipe text read and solved, or what keeps it from being solved.</summary>
public sealed record Solved(SolvedFly? Fly, Recipe? Recipe, ImmutableArray<AnswerProblem> Problems);

/// <summary>Solves for the bench, with a small store of its own: what is compared with, undone and redone was solved before.</summary>
public sealed class BenchSolver : IDisposable
{
    private const int MostKept = 64;

    private readonly MemoryCache cache = new(new MemoryCacheOptions { SizeLimit = MostKept });

    /// <param name="soakS">Seconds in the water of the first of the two states reported; the second is soaked through.</param>
    public Solved Solve(string text, double soakS) => cache.GetOrCreate((text, soakS), entry =>
    {
        entry.Size = 1;
        return Fresh(text, ReportOptions.Default with { FreshSoakS = soakS });
    })!;

    public void Dispose() => cache.Dispose();

    internal static Solved Fresh(string text, ReportOptions options)
    {
        ParseResult<Recipe> parsed = RecipeParser.Parse(text);
        if (!parsed.Success) return new Solved(null, null, [.. parsed.Errors.Select(e => new AnswerProblem(e.Line, e.Column, e.Path, e.Text))]);
        try
        {
            return new Solved(SolvedFly.Solve(parsed.Value, options), parsed.Value, []);
        }
        catch (ArgumentException e)
        {
            return new Solved(null, parsed.Value, [new AnswerProblem(0, 0, null, e.Message)]);
        }
    }
}
