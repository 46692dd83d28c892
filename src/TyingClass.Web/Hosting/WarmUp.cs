using System.Diagnostics;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Classes;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;
using TyingClass.Web.Pictures;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Once the server listens: has what the first pages need compiled before someone waits for it, by drawing a few flies and reading a class once; then works
/// out the flies that wait for a mentor or stand in a pattern book, whose pages show many at once; then opens every lesson and every exercise once, which
/// solves and draws their flies, and draws what an answer brings and is the same for everyone. It rests as long as it works: more than one of two cores is free
/// for whoever comes meanwhile.
/// </summary>
internal sealed class WarmUp(ICourseSource course, ClassStore store, IServiceScopeFactory scopes, OwnPages pages, IHostApplicationLifetime lifetime)
    : BackgroundService
{
    // As many as are kept without pushing out one another, and some seconds of one core at most.
    private const int MostWaiting = 12, MostInBooks = 40;

    // Whose next fly is drawn by lot: few miss a vote more often.
    private const int MostMissed = 2;

    // What people come in by.
    private static readonly string[] Everyones = ["/", "/sign-in", "/join", "/tonight", "/practice", "/bench", "/glossary"];

    private static readonly TimeSpan MostRest = TimeSpan.FromSeconds(1);

    // Different flies, because each material is drawn by code of its own.
    private const int Flies = 8;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        TaskCompletionSource started = new(TaskCreationOptions.RunContinuationsAsynchronously);
        await using CancellationTokenRegistration listening = lifetime.ApplicationStarted.Register(started.SetResult);
        await started.Task.WaitAsync(stoppingToken);
        string[] first = [.. course.Current.Exercises.Select(e => e.RecipeText).OfType<string>().Distinct().Take(Flies)];
        foreach (string text in first)
        {
            if (stoppingToken.IsCancellationRequested) return;
            Draw(text);
        }

        // Everything that is computed and drawn of a fly, once.
        if (first.Length > 0)
        {
            using IServiceScope scope = scopes.CreateScope();
            FlyPictures pictures = scope.ServiceProvider.GetRequiredService<FlyPictures>();
            foreach (string view in Plates.Views) pictures.Draw(first[0], view);
        }

        if (stoppingToken.IsCancellationRequested) return;
        try
        {
            ReadAClass();
            foreach ((PatternRevision asked, PatternRevision? before) in Waiting().Take(MostWaiting))
            {
                if (stoppingToken.IsCancellationRequested) return;
                using IServiceScope scope = scopes.CreateScope();
                ReviewSheets sheets = scope.ServiceProvider.GetRequiredService<ReviewSheets>();
                sheets.Of(asked.RecipeText);
                sheets.Draw(asked.RecipeText);
                if (before is not null) sheets.Pair(before, asked);
            }

            foreach (string text in InBooks().Distinct().Take(MostInBooks))
            {
                if (stoppingToken.IsCancellationRequested) return;
                using IServiceScope scope = scopes.CreateScope();
                scope.ServiceProvider.GetRequiredService<FlySheets>().Of(text);
            }
        }
        catch (Exception e) when (e is StorageException or ObjectDisposedException)
        {
            // Whoever opens a page is told what is wrong with the disk; a server that stops meanwhile needs no warming.
        }

        await OpenPagesAsync(stoppingToken);
        await AnswersAheadAsync(stoppingToken);
    }

    // The lessons before the exercises: they are opened first, and show most of the flies that the exercises show again.
    private async Task OpenPagesAsync(CancellationToken stop)
    {
        Course now = course.Current;
        IEnumerable<string> ofTheCourse = now.Lessons.Select(l => $"/lessons/{l.Slug}").Concat(now.Exercises.Select(e => $"/exercises/{e.Id}"));
        foreach (string address in Everyones.Concat(ofTheCourse))
        {
            await RestAfterAsync(() => pages.OpenAsync(address, stop), stop);
        }
    }

    // What an answer brings to a page and is the same for everyone: how the flies swim, and after a wrong vote the next fly to vote on.
    private async Task AnswersAheadAsync(CancellationToken stop)
    {
        foreach (Exercise exercise in course.Current.Exercises.Where(e => !e.Kind.AnswerIsRecipe))
        {
            await RestAfterAsync(() =>
            {
                using IServiceScope scope = scopes.CreateScope();
                FlyPictures pictures = scope.ServiceProvider.GetRequiredService<FlyPictures>();
                if (AskedRecipes.Change(exercise) is { } change)
                {
                    pictures.Pair(change.Before, change.After);
                    return Task.CompletedTask;
                }

                foreach (string text in AskedRecipes.Of(exercise)) pictures.Draw(text);
                return Task.CompletedTask;
            }, stop);
        }

        foreach (Exercise voted in course.Current.Exercises.Where(e => e.Task is PredictTask))
        {
            for (int missed = 1; missed <= MostMissed; missed++)
            {
                int number = missed;
                await RestAfterAsync(() => Task.FromResult(FreshProblem.Of(voted, number)), stop);
            }
        }
    }

    private static async Task RestAfterAsync(Func<Task> work, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        long began = Stopwatch.GetTimestamp();
        await work();
        TimeSpan took = Stopwatch.GetElapsedTime(began);
        await Task.Delay(took < MostRest ? took : MostRest, stop);
    }

    // With the revision each is compared with, the longest wait first.
    private IEnumerable<(PatternRevision Asked, PatternRevision? Before)> Waiting()
    {
        foreach (Review waiting in store.Classes.All().SelectMany(c => store.Reviews.Queue(c.Id)))
        {
            if (store.Patterns.Revision(waiting.PatternId, waiting.Revision) is { } asked)
                yield return (asked, waiting.Revision > 1 ? store.Patterns.Revision(waiting.PatternId, waiting.Revision - 1) : null);
        }
    }

    private IEnumerable<string> InBooks()
    {
        foreach (Pattern pattern in store.Classes.All().SelectMany(c => store.Patterns.Book(c.Id)))
        {
            if (store.Patterns.Revision(pattern.Id, pattern.SignedOffRevision ?? pattern.Revision) is { } revision) yield return revision.RecipeText;
        }
    }

    private static void Draw(string recipeText)
    {
        if (RecipeParser.Parse(recipeText).Value is not { } recipe) return;
        try
        {
            FlyDrawing.Side(SolvedFly.Solve(recipe, ReportOptions.AttitudeOnly), new DrawingOptions { IdPrefix = "warm" });
        }
        catch (ArgumentException)
        {
            // A fly that cannot be built is shown so where it stands in the course.
        }
    }

    private void ReadAClass()
    {
        if (store.Classes.All() is not [var room, ..] || course.Current.Exercises.FirstOrDefault() is not { } exercise) return;
        new ExerciseAcross(course, store.Accounts, store.Attempts).Of(room, exercise.Id);
    }
}
