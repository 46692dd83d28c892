using TyingClass.Storage;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.CommandLine.Tests;

/// <summary>What cannot be done is said on the error stream in words, with the place, and ends with 2; nothing is left half done.</summary>
public sealed class RefusalTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass");

    private DataFolder Data => DataFolder.At(In("data"));

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Restore_NoSuchFile_IsRefusedAndMakesNoFolder()
    {
        AssertRefused("winter.zip:1:1: There is no such file.", "restore", "winter.zip", "--data", "data");

        Assert.False(Directory.Exists(In("data")));
    }

    [Fact]
    public void Restore_ServerThatRuns_IsRefusedAndKeepsItsClass()
    {
        using ClassStore store = new(Data, TimeProvider.System);
        store.Backup(In("winter.zip"));
        store.People.AddGuest("Wren");

        AssertRefused("is in use by another TyingClass", "restore", "winter.zip", "--data", "data");

        Assert.Equal(["Wren"], store.People.All().Select(p => p.Name));
        Assert.DoesNotContain(Directory.GetFileSystemEntries(In("data")), d => Path.GetFileName(d).StartsWith("before-restore", StringComparison.Ordinal));
    }

    [Fact]
    public void Backup_PlaceThatIsAFolder_IsRefused()
    {
        new ClassStore(Data, TimeProvider.System).Dispose();
        Directory.CreateDirectory(In("winter.zip"));

        AssertRefused("winter.zip:1:1: ", "backup", "winter.zip", "--data", "data");

        Assert.Empty(Directory.GetFileSystemEntries(In("winter.zip")));
    }

    [Fact]
    public void Export_PlaceThatIsAFile_IsRefusedAndTheFileStays()
    {
        new ClassStore(Data, TimeProvider.System).Dispose();
        File.WriteAllText(In("out"), "mine");

        AssertRefused("out:1:1: ", "export", "out", "--data", "data");

        Assert.Equal("mine", File.ReadAllText(In("out")));
    }

    [Theory]
    [InlineData("export", "out")]
    [InlineData("backup", "out.zip")]
    public void NoDataNamedAndNoneBeside_SaysWhereToNameIt(string verb, string place)
    {
        AssertRefused("There is no class kept here. Say where the server's data folder is with --data DIR", verb, place);

        Assert.False(Path.Exists(In(place)));
    }

    // As someone who works in a copy of the source has it: the server's own folder is found from anywhere inside.
    [Fact]
    public void Backup_InsideTheSource_FindsTheServersFolder()
    {
        new ClassStore(DataFolder.At(In(Path.Combine("src", "TyingClass.Web", "data"))), TimeProvider.System).Dispose();

        CommandRun run = CommandRun.Of(_folder.CreateSubdirectory("lessons"), "backup", "winter.zip");

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.True(File.Exists(In(Path.Combine("lessons", "winter.zip"))));
    }

    [Fact]
    public void Balance_FileThatIsNoUtf8_SaysHowToSaveIt()
    {
        File.WriteAllBytes(In("old.fly.yaml"), [.. "recipe: Caf"u8, 0xE9, (byte)'\n']);

        AssertRefused("old.fly.yaml:1:1: This file is not UTF-8 text. Save it as UTF-8 and try again.", "balance", "old.fly.yaml");
    }

    [Fact]
    public void Grade_NoLessonsHereOrAbove_SaysHowToNameThem()
    {
        File.WriteAllText(In("answer.txt"), "up");

        AssertRefused("lessons:1:1: There is no folder of lessons here or above. Say where it is with --lessons.", "grade", "x-1", "answer.txt");
    }

    [Fact]
    public void Grade_LessonWithTheExerciseDoesNotRead_TellsWhatIsWrongWithIt()
    {
        Lesson("minutes: four", "```exercise\nid: x-1\nkind: explain\n```\n");
        File.WriteAllText(In("answer.txt"), "up");

        CommandRun run = AssertRefused("There is no exercise “x-1” in these lessons.", "grade", "x-1", "answer.txt");

        Assert.Contains("01-a.md:5:10: ", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void ContactSheet_PlaceThatIsAFile_IsRefused()
    {
        File.WriteAllText(In("sheets"), "mine");

        AssertRefused("cannot be written to: ", "contact-sheet", "sheets");

        Assert.Equal("mine", File.ReadAllText(In("sheets")));
    }

    // It reads well, and yet there is nothing to draw: a fly that floats does not sink.
    [Fact]
    public void CheckLessons_FigureThatCannotBeDrawn_ExitsOneWithItsLine()
    {
        Lesson("minutes: 4", """
            ```figure
            kind: pull and push
            recipe: |
              recipe: Cork
              intent: point down
              hook:
                size: 8
              parts:
                - part: foam
                  material: closed-cell foam
                  diameter: 8 mm
                  at: 1 mm
                  to: 9 mm
            caption: Nothing pushes back at it.
            ```

            """);

        CommandRun run = CommandRun.Of(_folder, "check-lessons");

        Assert.Equal((1, ""), (run.ExitCode, run.Errors));
        Assert.Contains($"{Path.Combine("lessons", "01-a.md")}:10:1: This figure cannot be drawn: Cork does not sink", run.Output, StringComparison.Ordinal);
        Assert.Contains(" to mend.", run.Output, StringComparison.Ordinal);
    }

    private CommandRun AssertRefused(string said, params string[] arguments)
    {
        CommandRun run = CommandRun.Of(_folder, arguments);
        Assert.Contains(said, run.Errors, StringComparison.Ordinal);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.DoesNotContain("   at ", run.Errors, StringComparison.Ordinal);
        return run;
    }

    private void Lesson(string minutes, string body)
    {
        Directory.CreateDirectory(In("lessons"));
        File.WriteAllText(In(Path.Combine("lessons", "01-a.md")),
            $"---\ntitle: T\nsummary: S\nconcepts: [keel side]\n{minutes}\n---\n\n## Words\n\n{body}");
    }

    private string In(string name) => Path.Combine(_folder.FullName, name);
}
