using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Lessons.Courses;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Once the server listens: has what the first pages need compiled before someone waits for it, by drawing a few flies and reading a class once.
/// </summary>
internal sealed class WarmUp(ICourseSource course, ClassStore store, IHostApplicationLifetime lifetime) : BackgroundService
{
    // Different flies, because each material is drawn by code of its own.
    private const int Flies = 8;

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        TaskCompletionSource started = new(TaskCreationOptions.RunContinuationsAsynchronously);
        await using CancellationTokenRegistration listening = lifetime.ApplicationStarted.Register(started.SetResult);
        await started.Task.WaitAsync(stoppingToken);
        foreach (string text in course.Current.Exercises.Select(e => e.RecipeText).OfType<string>().Distinct().Take(Flies))
        {
            if (stoppingToken.IsCancellationRequested) return;
            Draw(text);
        }

        if (!stoppingToken.IsCancellationRequested) ReadAClass();
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
        try
        {
            if (store.Classes.All() is not [var room, ..] || course.Current.Exercises.FirstOrDefault() is not { } exercise) return;
            new ExerciseAcross(course, store.Accounts, store.Attempts).Of(room, exercise.Id);
        }
        catch (Exception e) when (e is StorageException or ObjectDisposedException)
        {
            // Whoever opens a page is told what is wrong with the disk; a server that stops meanwhile needs no warming.
        }
    }
}
