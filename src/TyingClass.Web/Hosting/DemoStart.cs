using System.Globalization;
using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Web.Demo;

namespace TyingClass.Web.Hosting;

/// <summary>Fills an empty data folder with an invented class, and says so.</summary>
internal static class DemoStart
{
    /// <exception cref="StorageException">The folder holds a real class.</exception>
    public static void Fill(ClassStore store, IServiceProvider services)
    {
        // A second start with --demo goes on with the class that was made up at the first.
        if (store.IsInvented) return;
        if (!store.IsEmpty)
            throw new StorageException(
                $"--demo fills an empty data folder only, and {services.GetRequiredService<ProgramFolders>().Data.Path} holds a class already. Give another "
                    + "one with --data DIR.");
        Console.WriteLine("Making up a class and grading six weeks of its answers; this takes a moment.");
        DemoCounts made = DemoClass.FillIfEmpty(store, services.GetRequiredService<ICourseSource>().Current, services.GetRequiredService<TimeProvider>())!;
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{made.Students} students and a mentor, {made.Attempts} attempts, {made.Waiting} waiting to be read, {made.Comments} "
                    + $"comments, {made.Patterns} patterns, {made.Drops} flies in the bench log; took {made.Took.TotalSeconds:0.0} s."));
    }

    /// <summary>How to come in.</summary>
    public static void Print()
    {
        Console.WriteLine();
        Console.WriteLine("This data folder holds an INVENTED class. Anyone can sign in: keep it off the club's network.");
        Console.WriteLine(
            $"At /sign-in: {DemoPeople.Instructor} (instructor), {DemoPeople.Mentor} (mentor), {DemoPeople.Students[0].Name} (student, as the others under "
                + "People).");
        Console.WriteLine($"Passphrase of all of them: {DemoPeople.Passphrase}");
    }
}
