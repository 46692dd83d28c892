using System.Collections.Immutable;
using Microsoft.Extensions.Caching.Memory;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Bench;

/// <summary>A recipe text read and solved, or what keeps it from being solved.</summary>
public sealed record Solved(SolvedFly? Fly, ImmutableArray<AnswerProblem> Problems);

/// <summary>Solves for the bench, with a small store of its own: what is compared with, undone and redone was solved before.</summary>
public sealed class BenchSolver : IDisposable
{
    private const int MostKept = 128;

    private static readonly MemoryCacheEntryOptions One = new() { Size = 1 };

    private readonly MemoryCache _cache = new(new MemoryCacheOptions { SizeLimit = MostKept });

    /// <param name="soakS">Seconds in the water of a state reported beside fresh and soaked; 0 for none.</param>
    public Solved Solve(string text, double soakS)
    {
        if (_cache.TryGetValue((text, soakS), out Solved? known)) return known!;
        ReportOptions options = ReportOptions.Default with { PartlySoakedS = soakS > 0 ? soakS : null };
        // Another time in the water needs another report, but no other fly.
        Solved solved =
            _cache.TryGetValue(text, out Solved? before) && before!.Fly is { } built ? before with { Fly = built.With(options) } : Fresh(text, options);
        _cache.Set(text, solved, One);
        return _cache.Set((text, soakS), solved, One);
    }

    /// <summary>The fly as built for whatever was asked of it last; built anew when that is long ago. Null when none can be built.</summary>
    public (Recipe Recipe, BuiltFly Fly)? Built(string text)
    {
        if (_cache.TryGetValue(text, out Solved? known)) return known!.Fly is { } fly ? (fly.Recipe, fly.Built) : null;
        if (RecipeParser.Parse(text).Value is not { } recipe) return null;
        try
        {
            return (recipe, FlyBuilder.Build(recipe));
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    public void Dispose() => _cache.Dispose();

    private static Solved Fresh(string text, ReportOptions options)
    {
        ParseResult<Recipe> parsed = RecipeParser.Parse(text);
        if (!parsed.Success) return new Solved(null, [.. parsed.Errors.Select(e => new AnswerProblem(e.Line, e.Column, e.Path, e.Text))]);
        try
        {
            return new Solved(SolvedFly.Solve(parsed.Value, options), []);
        }
        catch (ArgumentException e)
        {
            return new Solved(null, [new AnswerProblem(0, 0, null, e.Message)]);
        }
    }
}
