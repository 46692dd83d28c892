using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Storage.People;

namespace TyingClass.Web.Exchange;

/// <param name="Line">Of the file, from 1.</param>
public sealed record RosterLine(long Line, string Name, Role Role);

/// <param name="Problems">When any: nobody is to be added.</param>
public sealed record Roster(ImmutableArray<RosterLine> Lines, ImmutableArray<string> Problems);

/// <summary>A list of names for a class: one a line, or a table with the columns "name" and "role".</summary>
public static partial class RosterCsv
{
    public const int MostPeople = 300;

    public static Roster Read(byte[] bytes)
    {
        (ImmutableArray<CsvRow> rows, string? problem) = CsvText.Read(bytes);
        if (problem is not null) return new Roster([], [problem]);
        if (LeavesAQuoteOpen(bytes)) return new Roster([], ["A quote (\") is opened and never closed, so it cannot be told where one name ends and the next begins. Close it or take it out."]);
        (int name, int role, bool header) = Columns(rows);
        CsvRow[] people = [.. rows.Skip(header ? 1 : 0).Where(r => r.Fields.Any(f => f.Length > 0))];
        if (people.Length == 0) return new Roster([], ["There is no name in it. Write one name a line, or a table with the columns name and role."]);
        if (people.Length > MostPeople) return new Roster([], [$"These are {people.Length} people; at most {MostPeople} can be added at once."]);
        List<string> problems = [];
        List<RosterLine> lines = [];
        foreach (CsvRow row in people)
        {
            if (row.Fields.Any(f => f.AsSpan().IndexOfAny('\r', '\n') >= 0)) problems.Add($"Line {row.Line}: an entry runs on over the end of its line. A quote (\") that begins a name must also end it.");
            else if (RoleOf(role < 0 ? "" : row[role]) is not { } as_) problems.Add($"Line {row.Line}: “{row[role]}” is not a role. Write student or mentor, or leave it empty for a student.");
            else if (Clean(row[name]) is not { } cleaned) problems.Add($"Line {row.Line}: the name is missing.");
            else if (cleaned.Length > PersonStore.MostNameLength) problems.Add($"Line {row.Line}: a name may have {PersonStore.MostNameLength} characters; this has {cleaned.Length}.");
            else if (lines.FirstOrDefault(l => string.Equals(l.Name, cleaned, StringComparison.OrdinalIgnoreCase)) is { } twin) problems.Add($"Line {row.Line}: “{cleaned}” stands in line {twin.Line} already. Names tell people apart: add something to one of them.");
            else lines.Add(new RosterLine(row.Line, cleaned, as_));
        }

        return new Roster([.. lines], [.. problems]);
    }

    // A quote counts where it begins an entry, after RFC 4180; inside a name it is a letter like any other.
    private static bool LeavesAQuoteOpen(byte[] bytes) =>
        CsvText.TryDecode(bytes, out string text) && QuotedEntry().IsMatch(text) && text.Count(c => c == '"') % 2 != 0;

    [GeneratedRegex("(^|[,;\\t])[ ]*\"", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex QuotedEntry();

    private static (int Name, int Role, bool Header) Columns(ImmutableArray<CsvRow> rows)
    {
        if (rows.IsEmpty) return (0, -1, false);
        int name = Find(rows[0], "name");
        return name >= 0 ? (name, Find(rows[0], "role"), true) : (0, rows.Any(r => r.Fields.Length > 1) ? 1 : -1, false);
    }

    private static int Find(CsvRow row, string head)
    {
        for (int i = 0; i < row.Fields.Length; i++)
        {
            if (row.Fields[i].Equals(head, StringComparison.OrdinalIgnoreCase)) return i;
        }

        return -1;
    }

    private static Role? RoleOf(string word) => word.ToLowerInvariant() switch
    {
        "" or "student" => Role.Student,
        "mentor" => Role.Mentor,
        _ => null,
    };

    private static string? Clean(string name) => string.Concat(name.Where(c => !char.IsControl(c))).Trim() is { Length: > 0 } cleaned ? cleaned : null;
}
