using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Lessons.Courses;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Web.Tests.Voice;

/// <summary>Every page of the real course for a reader of inches and grains: no metric figure stands alone, none is told twice, none is nonsense.</summary>
public sealed partial class ImperialSweepTests
{
    [Fact]
    public async Task Course_ForAnImperialReader_IsInTheReadersUnits()
    {
        using ClassRoom room = new();
        using WebApplicationFactory<Program> course = room.WithWebHostBuilder(host => host.UseSetting("lessons", Lessons()));
        Browser reader = new(course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));
        await OneWayTests.ChooseAsync(reader, UnitSystem.Imperial);
        Course read = course.Services.GetRequiredService<ICourseSource>().Current;
        string[] pages =
        [
            "/", "/bench", "/glossary", "/safety", "/practice",
            .. read.Lessons.Select(l => $"/lessons/{l.Slug}"), .. read.Exercises.Select(e => $"/exercises/{e.Id}"),
        ];
        List<string> wrong = [];
        foreach (string page in pages)
        {
            string text = OneWayTests.Read(await reader.OpenAsync(page));
            wrong.AddRange(SaidFigures.MetricAlone(text).Concat(Doubled().Matches(text).Select(m => m.Value)).Concat(Tiny().Matches(text).Select(m => m.Value))
                .Select(found => $"{page}: {found}"));
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    private static string Lessons()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "TyingClass.sln"))) at = at.Parent;
        return Path.Combine(at!.FullName, "lessons");
    }

    // "27.9 gr (1.805 g) (27.9 grains)".
    [GeneratedRegex(@"[0-9][^()¶]{0,12}\([0-9./ \u00A0]+(?:mm|g|m/s|m)\) \([^()]*[0-9][^()]*\)")]
    private static partial Regex Doubled();

    [GeneratedRegex(@"\b0\.0000[0-9]+[ \u00A0][a-z]|\b0 in \(0")]
    private static partial Regex Tiny();
}
