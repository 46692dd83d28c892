using Microsoft.Extensions.Caching.Memory;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Practice;

namespace TyingClass.Web.Practice;

/// <summary>
/// Practice problems, each drawn once and kept for a while, and the likely next ones drawn ahead while the student thinks. Safe for many threads.
/// </summary>
public sealed class PracticeDraws : IDisposable
{
    private const int MostKept = 1000;

    private readonly MemoryCache _kept = new(new MemoryCacheOptions { SizeLimit = MostKept });

    // One at a time: drawing ahead must never crowd out a page somebody waits for.
    private readonly SemaphoreSlim _ahead = new(1, 1);

    /// <summary>Null when these ranges gave no fair problem for the seed.</summary>
    public Exercise? Draw(PracticeSet set, int seed, int levelHundredths)
    {
        ArgumentNullException.ThrowIfNull(set);
        return _kept.GetOrCreate((set.Template.Version, set.Slug, seed, levelHundredths), entry =>
        {
            entry.Size = 1;
            return new Lazy<Exercise?>(() => PracticeProblems.Draw(set, seed, levelHundredths / 100.0));
        })!.Value;
    }

    /// <summary>Begins to draw these in the background and returns at once; does nothing while others are being drawn ahead.</summary>
    public Task DrawAhead(params IReadOnlyList<(PracticeSet Set, int Seed, int LevelHundredths)> likely)
    {
        if (!_ahead.Wait(0)) return Task.CompletedTask;
        return Task.Run(() =>
        {
            try
            {
                foreach ((PracticeSet set, int seed, int level) in likely) Draw(set, seed, level);
            }
            finally
            {
                _ahead.Release();
            }
        });
    }

    // The gate stays: a draw under way still has to release it.
    public void Dispose() => _kept.Dispose();
}
