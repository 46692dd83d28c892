using System.Text.RegularExpressions;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>
/// What a lesson says of people in general, of waters and of trade goods carries its source, or says that it has none. This finds the passages that generalize
/// ("many tyers", "makers", "some waters"); a claim in other words it cannot know for one.
/// </summary>
public sealed partial class SourceMarksTests
{
    public static TheoryData<string> Lessons => [.. Directory.EnumerateFiles(Repo.Lessons, "*.md").Select(Path.GetFileName).OfType<string>().Order()];

    [Theory]
    [MemberData(nameof(Lessons))]
    public void Passage_ThatGeneralizes_NamesItsSourceOrSaysItHasNone(string file)
    {
        string[] passages = [.. Passages(file)];

        string[] bare = [.. passages.Where((p, i) => General().IsMatch(p) && !Mark().IsMatch(Listed().IsMatch(p) && i > 0 ? passages[i - 1] + p : p))];

        Assert.True(bare.Length == 0, $"{file} says of the world, without a source or “common practice, no source”:\n" + string.Join("\n\n", bare));
    }

    [Theory]
    [MemberData(nameof(Lessons))]
    public void Footnote_ThatNamesASource_IsPointedToFromTheText(string file)
    {
        string prose = string.Join("\n\n", Passages(file));
        foreach (Match note in Note().Matches(prose))
            Assert.True(Regex.Count(prose, Regex.Escape(note.Groups[1].Value)) > 1, $"{file}: nothing points to {note.Value}");
    }

    // A list belongs to the passage before it, which says where all of it comes from.
    private static IEnumerable<string> Passages(string file)
    {
        string text = File.ReadAllText(Path.Combine(Repo.Lessons, file)).ReplaceLineEndings("\n");
        string body = Fence().Replace(text[(text.IndexOf("\n---\n", StringComparison.Ordinal) + 5)..], "\n");
        return body.Split("\n\n", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(p => !p.StartsWith('#'));
    }

    [GeneratedRegex(
        @"\b(?:many|most|some|good|experienced)\s+(?:tyers|anglers|casters|members|people|waters|makers)\b|\bmany\s+fish\b"
            + @"|\b(?:beginners\s+\w+|sailors|makers|packets)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex General();

    [GeneratedRegex(@"common\s+practice|no\s+source|from\s+memory|\[\^|estimate|house\s+rule|handbook|textbook|with\s+sources", RegexOptions.IgnoreCase)]
    private static partial Regex Mark();

    [GeneratedRegex(@"^(?:\*|\||1\.)")]
    private static partial Regex Listed();

    [GeneratedRegex(@"^(\[\^\w+\]):", RegexOptions.Multiline)]
    private static partial Regex Note();

    [GeneratedRegex("```.*?```", RegexOptions.Singleline)]
    private static partial Regex Fence();
}
