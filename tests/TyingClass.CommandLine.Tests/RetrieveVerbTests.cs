using System.Text.Json;
using Xunit;

namespace TyingClass.CommandLine.Tests;

public sealed class RetrieveVerbTests : IDisposable
{
    private const string Jig = """
        recipe: Dam Jig
        intent: point up
        hook:
          size: 8
          eye: jig 60°
        parts:
          - part: bead
            material: tungsten
            size: 4 mm
            at: 0 mm
        fishing:
          speed: 0.4 m/s
          retrieve:
            - strip: 30 cm
              in: 0.5 s
            - pause: 1.5 s
          repeat: 3
          count down: 3 s
        """;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tyingclass");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Retrieve_Json_HasEveryFieldThatWasPromised()
    {
        CommandRun run = CommandRun.Of(_folder, "retrieve", Write(Jig), "--json");

        Assert.Equal(0, run.ExitCode);
        JsonElement root = JsonDocument.Parse(run.Output).RootElement;
        foreach (string field in (string[])["deepestM", "shallowestM", "hopM", "divePitchDeg", "uprightShare", "settleS", "touchesBottom"])
            Assert.True(root.TryGetProperty(field, out _), field);
        JsonElement[] path = [.. root.GetProperty("path").EnumerateArray()];
        foreach (string field in (string[])["timeS", "alongM", "depthM", "pitchDeg", "leanDeg", "tensionMN"])
            Assert.Equal(JsonValueKind.Number, path[^1].GetProperty(field).ValueKind);
        Assert.Equal(9, path[^1].GetProperty("timeS").GetDouble(), 0.06);
        Assert.InRange(root.GetProperty("hopM").GetDouble(), 0.02, 0.3);
    }

    [Fact]
    public void Retrieve_Text_TellsHopAndNose()
    {
        CommandRun run = CommandRun.Of(_folder, "retrieve", Write(Jig));

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("A strip lifts it by", run.Output, StringComparison.Ordinal);
        Assert.Contains("Assumed, because the recipe does not say: line, line out, leader length, rod tip.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Retrieve_TooLong_ExitsOneAndSaysWhy()
    {
        CommandRun run = CommandRun.Of(_folder, "retrieve", Write(Jig.Replace("repeat: 3", "repeat: 200", StringComparison.Ordinal)
            .Replace("strip: 30 cm", "strip: 1 cm", StringComparison.Ordinal).Replace("pause: 1.5 s", "pause: 60 s", StringComparison.Ordinal)));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("which is not followed", run.Output, StringComparison.Ordinal);
    }

    private string Write(string text)
    {
        string file = Path.Combine(_folder.FullName, "fly.fly.yaml");
        File.WriteAllText(file, text);
        return file;
    }
}
