using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Prose;

namespace TyingClass.Web.Evenings;

/// <summary>One row of an evening's plan: how long, and what.</summary>
/// <param name="What">Plain words: the marks of Markdown are taken off.</param>
public sealed partial record PlanRow(int Minutes, string What)
{
    /// <summary>The first clause, to stand large.</summary>
    public string Title => FirstClause().Match(What).Value;

    /// <summary>The rows of a plan's table; a plan written as plain text has none.</summary>
    public static ImmutableArray<PlanRow> Of(string plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. NoteTable.Rows(plan).Select(Read).OfType<PlanRow>()];
    }

    /// <summary>Whether the row speaks of one of these, as words begin.</summary>
    public bool Says(params ReadOnlySpan<string> beginnings)
    {
        foreach (string beginning in beginnings)
            if (Regex.IsMatch(What, $@"\b{Regex.Escape(beginning)}", RegexOptions.IgnoreCase)) return true;
        return false;
    }

    private static PlanRow? Read(ImmutableArray<string> cells) => cells.Length > 1
        && int.TryParse(cells[0], NumberStyles.None, CultureInfo.InvariantCulture, out int minutes)
            ? new PlanRow(minutes, string.Join(", ", cells.Skip(1).Where(c => c.Length > 0)))
            : null;

    [GeneratedRegex(@"^.+?(?=\s\(|[.:;,](\s|$)|$)")]
    private static partial Regex FirstClause();
}
