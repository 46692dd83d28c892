using System.Text.RegularExpressions;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Exercises;

/// <summary>Runs Specs/exercise-format.md: every case reads well, or gives exactly the errors listed.</summary>
public sealed partial class ExerciseFormatTests
{
    public static TheoryData<string> Cases() => [.. All().Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Read_Case_GivesTheErrorsListed(string name)
    {
        (_, string body, string[] expected) = All().Single(c => c.Name == name);

        LessonResult result = Repo.Fence("exercise", body);

        string[] found = [.. result.Errors.Select(e => $"{e.Line - Repo.LinesBeforeFence}:{e.Column}: {e.Text}")];
        Assert.True(expected.Length == found.Length, "Found:\n" + string.Join('\n', found));
        foreach (string error in expected)
        {
            string place = error[..(error.IndexOf(": ", StringComparison.Ordinal) + 2)], text = error[place.Length..];
            Assert.True(found.Any(f => f.StartsWith(place, StringComparison.Ordinal) && f.Contains(text, StringComparison.Ordinal)),
                $"No error like\n{error}\namong\n{string.Join('\n', found)}");
        }

        Assert.Equal(expected.Length == 0, result.Lesson is not null);
    }

    [Fact]
    public void Spec_Cases_AreManyAndNamedApart()
    {
        string[] names = [.. All().Select(c => c.Name)];

        Assert.True(names.Length >= 30);
        Assert.Equal(names.Length, names.Distinct().Count());
    }

    private static IEnumerable<(string Name, string Body, string[] Errors)> All() =>
        Case().Matches(Repo.Spec("exercise-format.md").ReplaceLineEndings("\n")).Select(m => (
            m.Groups["name"].Value,
            m.Groups["body"].Value,
            m.Groups["errors"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries)));

    [GeneratedRegex(@"^## (?<name>.+)\n```exercise\n(?<body>(?:.*\n)*?)```\n(?:```errors\n(?<errors>(?:.*\n)*?)```)?", RegexOptions.Multiline)]
    private static partial Regex Case();
}
