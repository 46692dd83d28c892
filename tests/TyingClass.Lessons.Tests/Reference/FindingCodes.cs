using System.Reflection;
using System.Text.RegularExpressions;
using TyingClass.Balance.Reports;

namespace TyingClass.Lessons.Tests.Reference;

/// <summary>Every code the engine can give, read from the engine: a list typed here would pass with a code that stands in no document.</summary>
internal static class FindingCodes
{
    public static string[] OfTheEngine { get; } = [.. (FromCatalogue() ?? FromRules()).Distinct()];

    /// <summary>The codes of the table in docs/formulas.md.</summary>
    public static string[] InTheDocument { get; } =
    [
        .. Regex.Matches(
                Regex.Match(File.ReadAllText(Path.Combine(Repo.Root, "docs", "formulas.md")), @"^## Findings$(?<text>.*?)^## ", RegexOptions.Multiline | RegexOptions.Singleline).Groups["text"].Value,
                @"^\| (?<codes>[^|-][^|]*) \|",
                RegexOptions.Multiline)
            .SelectMany(row => row.Groups["codes"].Value.Split(", "))
            .Except(["code"]),
    ];

    // Where findings have kinds, each kind has its code.
    private static IEnumerable<string>? FromCatalogue()
    {
        Type? kinds = typeof(Finding).Assembly.GetType("TyingClass.Balance.Reports.FindingKind");
        MethodInfo? codeOf = kinds is null ? null : typeof(Finding).GetMethod("CodeOf", [kinds]);
        return codeOf is null ? null : Enum.GetValues(kinds!).Cast<object>().Select(kind => (string)codeOf.Invoke(null, [kind])!);
    }

    // Where they are text, the rules' own source is read: some codes are given so rarely that no set of flies brings them all out.
    private static IEnumerable<string> FromRules()
    {
        string source = string.Concat(Directory.GetFiles(Path.Combine(Repo.Root, "src", "TyingClass.Balance", "Reports"), "*.cs").Select(File.ReadAllText));
        return Regex.Matches(source, "new (?:Finding)?\\(\\s*\"(?<code>[a-z ]+)\"|VerdictKind\\.\\w+ => \"(?<code>[a-z ]+)\"").Select(m => m.Groups["code"].Value).Except(["rides as intended", "point down", "point up"]);
    }
}
