using System.IO.Compression;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Exchange;

/// <summary>
/// export-1.json.gz is three people of the invented class as the program of 28 November 2026 (commit 03ceed2, engine 2) exported it, with every third exercise.
/// </summary>
public sealed class OldExportTests : IDisposable
{
    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public async Task Import_OfAnExportOfTheFirstEdition_KeepsPeopleAttemptsPatternsAndWhatWasSaid()
    {
        ClassExport export = await ReadAsync();
        Person teacher = _temp.Store.Instructors.Claim(_temp.Store.Instructors.NewCode(), "Plover", "hash")!;
        ImportOutcome outcome = _temp.Store.Exchange.Import(export, teacher.Id, [.. Enumerable.Range(0, 3).Select(i => new HandedOut($"pass-{i}", "hash"))]);

        Assert.Empty(outcome.Problems);
        string[] people = [.. outcome.People.Select(p => p.Person.Id)];
        Assert.Equal(103, people.Sum(p => _temp.Store.Attempts.AllOf(p).Length));
        Assert.Equal(103, _temp.Store.Attempts.StandingsOf(people).Sum(s => s.Attempts));
        Assert.All(people.SelectMany(p => _temp.Store.Attempts.AllOf(p)), a => Assert.Equal("2", a.EngineVersion));
        Pattern[] patterns = [.. people.SelectMany(p => _temp.Store.Patterns.Of(p))];
        Assert.Equal((2, 6), (patterns.Length, patterns.Sum(p => _temp.Store.Patterns.Revisions(p.Id).Length)));
        ClassExport again = _temp.Store.Exchange.Export(outcome.Room!.Id)!;
        Assert.Equal(
            (2, 1, 5, 16, 2), (again.Reviews.Length, again.ReviewComments.Length, again.BenchLog.Length, again.Dates.Length, again.RoomQuestions.Length));
    }

    [Fact]
    public async Task Recipe_OfTheFirstEdition_StillReads()
    {
        ClassExport export = await ReadAsync();
        string[] recipes =
        [
            .. export.PatternRevisions.Select(r => r.RecipeText), .. export.BenchLog.Select(b => b.Fly.RecipeText),
            .. export.Attempts.Where(a => a.EngineVersion.Length > 0 && a.AnswerText.StartsWith("recipe:", StringComparison.Ordinal)).Select(a => a.AnswerText),
        ];

        Assert.True(recipes.Length > 30, $"{recipes.Length}");
        Assert.All(recipes, text => Assert.Empty(RecipeParser.Parse(text).Errors));
    }

    private static async Task<ClassExport> ReadAsync()
    {
        await using FileStream file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Exchange", "export-1.json.gz"));
        await using GZipStream text = new(file, CompressionMode.Decompress);
        // Left open: the attempts are read from it later.
        MemoryStream whole = new();
        await text.CopyToAsync(whole, TestContext.Current.CancellationToken);
        whole.Position = 0;
        (ClassExport? export, string? problem) = await ExportJson.ReadAsync(whole, TestContext.Current.CancellationToken);
        Assert.Null(problem);
        return export!;
    }
}
