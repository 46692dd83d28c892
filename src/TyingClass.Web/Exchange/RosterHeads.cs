using System.Collections.Immutable;
using TyingClass.Storage.People;

namespace TyingClass.Web.Exchange;

/// <summary>Which column of a list means what; -1 for a column that is not there.</summary>
/// <param name="Heading">True when the first row says so itself, and names nobody.</param>
/// <param name="Unused">Heads of columns nothing is taken from.</param>
public sealed record RosterHeads(int Name, int First, int Last, int Role, bool Heading, ImmutableArray<string> Unused)
{
    private static readonly string[] NameHeads = ["name", "fullname", "displayname", "studentname", "participantname"];

    // A cell that says "student" is more often a role than a head: these count only where the first column begins.
    private static readonly string[] LooseNameHeads = ["student", "students", "participant", "participants", "member", "members", "person", "who"];

    private static readonly string[] FirstHeads = ["firstname", "first", "givenname", "given", "forename", "fname", "preferredname"];

    private static readonly string[] LastHeads = ["lastname", "last", "surname", "familyname", "family", "lname"];

    private static readonly string[] RoleHeads = ["role"];

    /// <summary>Two columns of names, to be joined.</summary>
    public bool AreTwo => First >= 0 && Last >= 0;

    /// <summary>True when nothing but the order tells first name from last.</summary>
    public bool AreGuessed => !Heading && AreTwo;

    /// <param name="lastNameFirst">How two columns without heads are meant.</param>
    public static RosterHeads Of(ImmutableArray<CsvRow> rows, bool lastNameFirst)
    {
        if (rows.IsEmpty) return new RosterHeads(0, -1, -1, -1, false, []);
        return ByHeading(rows[0]) ?? ByContent(rows, lastNameFirst);
    }

    /// <summary>The whole name of a row, its parts joined.</summary>
    public string NameOf(CsvRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        string joined = AreTwo ? $"{row[First]} {row[Last]}".Trim() : "";
        return joined.Length == 0 && Name >= 0 ? row[Name] : joined;
    }

    /// <summary>Blank for a student.</summary>
    public static Role? RoleOf(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return word.ToLowerInvariant() switch
        {
            "" or "student" or "students" => Storage.People.Role.Student,
            "mentor" or "mentors" => Storage.People.Role.Mentor,
            _ => null,
        };
    }

    private static RosterHeads? ByHeading(CsvRow row)
    {
        string[] heads = [.. row.Fields.Select(Plain)];
        int name = Array.FindIndex(heads, NameHeads.Contains), first = Array.FindIndex(heads, FirstHeads.Contains),
            last = Array.FindIndex(heads, LastHeads.Contains);
        int role = Array.FindIndex(heads, RoleHeads.Contains);
        if (name < 0 && first < 0 && last < 0 && heads.Length > 0 && LooseNameHeads.Contains(heads[0]) && (heads.Length == 1 || role > 0)) name = 0;
        // "Name, First name": the name is the last one.
        if (first >= 0 && last < 0 && name >= 0) (last, name) = (name, -1);
        if (name < 0 && first < 0 && last < 0) return null;
        if (first < 0 || last < 0) name = new[] { name, first, last }.First(i => i >= 0);
        int[] used = [name, first, last, role];
        return new RosterHeads(name, first, last, role, true, [.. row.Fields.Where((f, i) => f.Length > 0 && !used.Contains(i))]);
    }

    private static RosterHeads ByContent(ImmutableArray<CsvRow> rows, bool lastNameFirst)
    {
        int columns = rows.Max(r => r.Fields.Length);
        int role = Enumerable.Range(1, Math.Max(0, columns - 1)).FirstOrDefault(i => rows.Any(r => r[i].Length > 0 && RoleOf(r[i]) is not null), -1);
        int second = Enumerable.Range(1, Math.Max(0, columns - 1)).FirstOrDefault(i => i != role && rows.Any(r => r[i].Length > 0)
            && !rows.Any(r => r[i].Contains('@', StringComparison.Ordinal)), -1);
        ImmutableArray<string> unused = [.. Enumerable.Range(1, Math.Max(0, columns - 1)).Where(i => i != role && i != second).Select(i =>
            FormattableString.Invariant($"column {i + 1}"))];
        return second < 0 ? new RosterHeads(0, -1, -1, role, false, unused)
            : lastNameFirst ? new RosterHeads(0, second, 0, role, false, unused)
            : new RosterHeads(0, 0, second, role, false, unused);
    }

    // "First_Name", "first name" and "FIRSTNAME" are one head.
    private static string Plain(string head) => string.Concat(head.Where(char.IsLetter)).ToLowerInvariant();
}
