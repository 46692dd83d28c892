using System.Text.Json.Nodes;
using TyingClass.Storage.Exchange;
using Xunit;

namespace TyingClass.Storage.Tests.Exchange;

public sealed class ExportSchemaTests
{
    [Fact]
    public void Schema_InDocs_IsTheOneOfTheProgram()
    {
        string path = Path.Combine(Root(), "docs", ExportJson.SchemaId);
        if (Environment.GetEnvironmentVariable("WRITE_SCHEMA") is not null) File.WriteAllText(path, ExportJson.Schema());
        Assert.True(File.Exists(path) && File.ReadAllText(path).ReplaceLineEndings("\n") == ExportJson.Schema(),
            $"docs/{ExportJson.SchemaId} is out of date: run this test with WRITE_SCHEMA=1.");
    }

    [Fact]
    public void Schema_Required_NamesWhatAFileMustHave() =>
        Assert.Equal(
            ["format", "exportedAt", "class", "people", "attempts"],
            JsonNode.Parse(ExportJson.Schema())!["required"]!.AsArray().Select(n => n!.GetValue<string>()));

    private static string Root()
    {
        for (DirectoryInfo? at = new(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "TyingClass.sln"))) return at.FullName;
        }

        throw new DirectoryNotFoundException("The repository was not found above the tests.");
    }
}
