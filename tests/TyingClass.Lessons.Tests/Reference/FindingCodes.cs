using System.Text.RegularExpressions;
using TyingClass.Balance.Reports;

namespace TyingClass.Lessons.Tests.Reference;

/// <summary>Every code the engine can give, read from the engine: a list typed here would pass with a code that stands in no document.</summary>
internal static class FindingCodes
{
    public static string[] OfTheEngine { get; } = [.. Enum.GetValues<FindingKind>().Select(Finding.CodeOf)];

    /// <summary>The codes of the table in docs/formulas.md.</summary>
    public static string[] InTheDocument { get; } =
    [
        .. Regex.Matches(
                Regex.Match(File.ReadAllText(Path.Combine(Repo.Root, "docs", "formulas.md")), @"^## Findings$(?<text>.*?)^## ",
                    RegexOptions.Multiline | RegexOptions.Singleline).Groups["text"].Value,
                @"^\| (?<codes>[^|-][^|]*) \|",
                RegexOptions.Multiline)
            .SelectMany(row => row.Groups["codes"].Value.Split(", "))
            .Except(["code"]),
    ];
}
