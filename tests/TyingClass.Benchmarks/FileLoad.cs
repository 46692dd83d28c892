using System.Diagnostics;
using System.Globalization;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Benchmarks;

/// <summary>What opening and taking out a large class costs: time, memory, and how long others wait meanwhile.</summary>
internal static class FileLoad
{
    /// <param name="folder">As <see cref="ClassLoad"/> filled it.</param>
    public static async Task<int> RunAsync(string folder)
    {
        long start = Stopwatch.GetTimestamp();
        using ClassStore store = new(DataFolder.At(folder), TimeProvider.System);
        Console.WriteLine(Line($"opened in {Stopwatch.GetElapsedTime(start).TotalSeconds:0.00} s, {Memory()}"));
        ClassRoom room = store.Classes.All()[0];
        string path = Path.GetTempFileName();
        using CancellationTokenSource over = new();
        string person = store.Accounts.OfClass(room.Id)[0].Id;
        Task<double> waits = Task.Run(() => LongestWait(store, person, over.Token));
        await Task.Delay(200);
        start = Stopwatch.GetTimestamp();
        await ExportJson.WriteFileAsync(path, store.Exchange.Export(room.Id)!);
        double took = Stopwatch.GetElapsedTime(start).TotalSeconds;
        await over.CancelAsync();
        Console.WriteLine(Line($"taken out in {took:0.0} s, {new FileInfo(path).Length >> 20} MB; a reader waited {await waits:0} ms at most; {Memory()}"));
        start = Stopwatch.GetTimestamp();
        await using (FileStream file = File.OpenRead(path))
        {
            (ClassExport? export, string? problem) = await ExportJson.ReadAsync(file);
            Console.WriteLine(Line($"read in {Stopwatch.GetElapsedTime(start).TotalSeconds:0.0} s: {export?.Attempts.Count()} attempts {problem}; {Memory()}"));
            if (export is not null) await TakeInAsync(export);
        }

        File.Delete(path);
        return 0;
    }

    private static async Task TakeInAsync(ClassExport export)
    {
        string elsewhere = Directory.CreateTempSubdirectory("files-load").FullName;
        using (ClassStore store = new(DataFolder.At(elsewhere), TimeProvider.System))
        {
            long start = Stopwatch.GetTimestamp();
            Person teacher = store.Instructors.Claim(store.Instructors.NewCode(), "Dipper", "hash", "Winter class")!;
            using CancellationTokenSource over = new();
            Task<double> waits = Task.Run(() => LongestWait(store, teacher.Id, over.Token));
            ImportOutcome outcome = store.Exchange.Import(export, teacher.Id, [.. export.People.Select(p => new HandedOut("", "hash"))]);
            double took = Stopwatch.GetElapsedTime(start).TotalSeconds;
            await over.CancelAsync();
            double longest = await waits;
            Console.WriteLine(Line($"taken in, in {took:0.0} s: {outcome.People.Length} people, {outcome.Problems.Length} problems"));
            Console.WriteLine(Line($"a reader waited {longest:0} ms at most; {Memory()}"));
        }

        Directory.Delete(elsewhere, recursive: true);
    }

    private static double LongestWait(ClassStore store, string person, CancellationToken over)
    {
        double longest = 0;
        while (!over.IsCancellationRequested)
        {
            long start = Stopwatch.GetTimestamp();
            Standing found = store.Attempts.StandingOf(person, "keel-01");
            longest = Math.Max(longest, Stopwatch.GetElapsedTime(start).TotalMilliseconds + (0 * found.Attempts));
            Thread.Sleep(5);
        }

        return longest;
    }

    private static string Memory()
    {
        using Process self = Process.GetCurrentProcess();
        return Line($"working set {self.WorkingSet64 >> 20} MB, at most {self.PeakWorkingSet64 >> 20} MB");
    }

    private static string Line(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
}
