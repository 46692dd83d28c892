using System.Collections.Immutable;
using TyingClass.Storage.People;

namespace TyingClass.Web.Exchange;

/// <summary>Which column of a list means what.</summary>
/// <param name="Columns">Of each column, in the order of the list.</param>
/// <param name="Heading">True when the first row says so itself, and names nobody.</param>
/// <param name="Titles">Heads of the columns; "column 2" where there is none.</param>
/// <param name="Picked">True when somebody said so, and nothing was guessed.</param>
public sealed record RosterHeads(ImmutableArray<RosterColumn> Columns, bool Heading, ImmutableArray<string> Titles, bool Picked = false)
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
    public bool AreGuessed => !Heading && !Picked && AreTwo;

    /// <summary>Heads of columns nothing is taken from.</summary>
    public IEnumerable<string> Unused => Titles.Where((t, i) => Columns[i] == RosterColumn.Unused && t.Length > 0);

    /// <summary>-1 for a column that is not there.</summary>
    public int Role => Columns.IndexOf(RosterColumn.Role);

    /// <summary>What is wrong with what somebody picked; null when names can be made of it.</summary>
    public string? Trouble
    {
        get
        {
            if (Columns.Where(c => c != RosterColumn.Unused).GroupBy(c => c).FirstOrDefault(g => g.Count() > 1) is { } twice)
                return $"Two columns are said to hold “{RosterPick.Say(twice.Key)}”. Choose one of them.";
            return Columns.Any(c => c is not (RosterColumn.Unused or RosterColumn.Role)) ? null : "No column is said to hold a name. Choose the one that does.";
        }
    }

    private int First => Columns.IndexOf(RosterColumn.First);

    private int Last => Columns.IndexOf(RosterColumn.Last);

    private int Whole => Columns.IndexOf(RosterColumn.Name);

    private int Turned => Columns.IndexOf(RosterColumn.LastThenFirst);

    /// <param name="lastNameFirst">How two columns without heads are meant.</param>
    /// <param name="pick">Counts when it has as many columns as the list.</param>
    public static RosterHeads Of(ImmutableArray<CsvRow> rows, bool lastNameFirst, RosterPick? pick = null)
    {
        if (rows.IsEmpty) return new RosterHeads([RosterColumn.Name], false, ["column 1"]);
        int columns = Math.Max(1, rows.Max(r => r.Fields.Length));
        if (pick is { } said && said.Columns.Length == columns)
            return new RosterHeads(said.Columns, said.Heading, Titled(rows[0], columns, said.Heading), Picked: true);
        RosterColumn[] found = new RosterColumn[columns];
        bool heading = ByHeading(rows[0], found);
        if (!heading) ByContent(rows, lastNameFirst, found);
        return new RosterHeads([.. found], heading, Titled(rows[0], columns, heading));
    }

    /// <summary>The whole name of a row, its parts joined.</summary>
    public string NameOf(CsvRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        string joined = AreTwo ? $"{row[First]} {row[Last]}".Trim() : "";
        if (joined.Length > 0) return joined;
        if (Turned >= 0) return TurnedRound(row[Turned]);
        int only = new[] { Whole, First, Last }.FirstOrDefault(i => i >= 0, -1);
        return only >= 0 ? row[only] : "";
    }

    /// <summary>"Wren Alder" of "Alder, Wren".</summary>
    public static string TurnedRound(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Split(',', 2, StringSplitOptions.TrimEntries) is [{ Length: > 0 } last, { Length: > 0 } first] ? $"{first} {last}" : name;
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

    private static bool ByHeading(CsvRow row, RosterColumn[] found)
    {
        string[] heads = [.. row.Fields.Select(Plain)];
        int name = Array.FindIndex(heads, NameHeads.Contains), first = Array.FindIndex(heads, FirstHeads.Contains),
            last = Array.FindIndex(heads, LastHeads.Contains);
        int role = Array.FindIndex(heads, RoleHeads.Contains);
        if (name < 0 && first < 0 && last < 0 && heads.Length > 0 && LooseNameHeads.Contains(heads[0]) && (heads.Length == 1 || role > 0)) name = 0;
        // "Name, First name": the name is the last one.
        if (first >= 0 && last < 0 && name >= 0) (last, name) = (name, -1);
        if (name < 0 && first < 0 && last < 0) return false;
        foreach ((int at, RosterColumn column) in new[] { (name, RosterColumn.Name), (first, RosterColumn.First), (last, RosterColumn.Last),
            (role, RosterColumn.Role) }) if (at >= 0) found[at] = column;
        return true;
    }

    private static void ByContent(ImmutableArray<CsvRow> rows, bool lastNameFirst, RosterColumn[] found)
    {
        int[] others = [.. Enumerable.Range(1, found.Length - 1).Where(i => rows.Any(r => r[i].Length > 0))];
        int role = others.FirstOrDefault(i => rows.Any(r => r[i].Length > 0 && RoleOf(r[i]) is not null), -1);
        int second = others.FirstOrDefault(i => i != role && !rows.Any(r => r[i].Contains('@', StringComparison.Ordinal)), -1);
        found[0] = second < 0 ? RosterColumn.Name : lastNameFirst ? RosterColumn.Last : RosterColumn.First;
        if (second >= 0) found[second] = lastNameFirst ? RosterColumn.First : RosterColumn.Last;
        if (role >= 0) found[role] = RosterColumn.Role;
    }

    private static ImmutableArray<string> Titled(CsvRow row, int columns, bool heading) =>
        [.. Enumerable.Range(0, columns).Select(i => heading ? row[i] : FormattableString.Invariant($"column {i + 1}"))];

    // "First_Name", "first name" and "FIRSTNAME" are one head.
    private static string Plain(string head) => string.Concat(head.Where(char.IsLetter)).ToLowerInvariant();
}
