using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Storage.People;

namespace TyingClass.Web.Exchange;

/// <summary>What becomes of one line of a list.</summary>
/// <param name="Line">Of the file, from 1.</param>
/// <param name="Typed">The cells the name was made of, as they stand in the list.</param>
/// <param name="Problem">Why it cannot be added, and what to do; null when it can.</param>
public sealed record RosterLine(long Line, string Typed, string Name, Role Role, string? Problem = null);

/// <param name="All">Every line that is not empty, in order.</param>
/// <param name="Trouble">What is wrong with the list as a whole; null when its lines could be read.</param>
public sealed record Roster(ImmutableArray<RosterLine> All, RosterHeads? Heads, string? Trouble)
{
    /// <summary>When any: nobody is to be added.</summary>
    public ImmutableArray<string> Problems => Trouble is { } trouble ? [trouble]
        : [.. All.Where(l => l.Problem is not null).Select(l => string.Create(CultureInfo.InvariantCulture, $"Line {l.Line}: {l.Problem}"))];

    /// <summary>What its columns hold is worth asking: it was guessed, something is left out, or what was picked gives no names.</summary>
    public bool AsksColumns => Heads is { Columns.Length: > 1 } heads && (!heads.Heading || heads.Unused.Any() || heads.Trouble is not null);

    /// <summary>The first name that could be meant the other way about, as it is and turned; null when there is none.</summary>
    public (string Now, string Then)? MayBeTurned
    {
        get
        {
            if (Heads is not { } heads || (heads.Heading && heads.AreTwo && !heads.Picked)) return null;
            RosterHeads turned = heads with { Columns = new RosterPick(heads.Heading, heads.Columns).Turned().Columns };
            return Rows.Select(r => (Now: RosterCsv.Clean(heads.NameOf(r)), Then: RosterCsv.Clean(turned.NameOf(r))))
                .Where(n => n.Now != n.Then).Select(n => ((string, string)?)n).FirstOrDefault();
        }
    }

    /// <summary>As they stand in the list, headings left out.</summary>
    public ImmutableArray<CsvRow> Rows { get; init; } = [];

    public bool MayBeAdded => Trouble is null && !All.IsEmpty && All.All(l => l.Problem is null);
}

/// <summary>A list of names for a class: one a line, or a table with the columns of names that lists usually have, and perhaps a role.</summary>
public static partial class RosterCsv
{
    public const int MostPeople = 300;

    /// <param name="lastNameFirst">How two columns of names without heads are meant.</param>
    /// <param name="pick">What somebody said its columns hold.</param>
    public static Roster Read(byte[] bytes, bool lastNameFirst = false, RosterPick? pick = null)
    {
        (ImmutableArray<CsvRow> rows, string? problem) = CsvText.Read(bytes);
        if (problem is not null) return Refused(problem);
        if (LeavesAQuoteOpen(bytes))
            return Refused("A quote (\") is opened and never closed, so it cannot be told where one name ends and the next begins. Close it or take it out.");
        RosterHeads heads = RosterHeads.Of(rows, lastNameFirst, pick);
        CsvRow[] people = [.. rows.Skip(heads.Heading ? 1 : 0).Where(r => r.Fields.Any(f => f.Length > 0))];
        if (people.Length == 0) return Refused("There is no name in it. Write one name a line, or a table with the columns name and role.");
        if (heads.Trouble is { } wrong) return new Roster([], heads, wrong) { Rows = [.. people] };
        if (people.Length > MostPeople) return Refused($"These are {people.Length} people; at most {MostPeople} can be added at once.");
        Dictionary<string, RosterLine> seen = new(StringComparer.Ordinal);
        return new Roster([.. people.Select(row => Of(row, heads, seen))], heads, null) { Rows = [.. people] };
    }

    internal static string Twin(string name, long line) =>
        string.Create(CultureInfo.InvariantCulture, $"“{name}” stands in line {line} already. Names tell people apart: add something to one of them.");

    private static RosterLine Of(CsvRow row, RosterHeads heads, Dictionary<string, RosterLine> seen)
    {
        string role = heads.Role < 0 ? "" : row[heads.Role];
        RosterLine line = new(row.Line, string.Join(" | ", row.Fields.Where(f => f.Length > 0)), Clean(heads.NameOf(row)),
            RosterHeads.RoleOf(role) ?? Role.Student);
        if (row.Fields.Any(f => f.AsSpan().IndexOfAny('\r', '\n') >= 0))
            return line with { Problem = "an entry runs on over the end of its line. A quote (\") that begins a name must also end it." };
        if (RosterHeads.RoleOf(role) is null)
            return line with
            {
                Problem = $"“{role}” is not a role. Write student or mentor, or leave it empty for a student."
                    + (heads.Heading || row.Line > 1 ? "" : " If these are headings, say so under “Which column is what”."),
            };
        if (line.Name.Length == 0) return line with { Problem = "the name is missing." };
        if (!AccountStore.CanBeSeen(line.Name)) return line with { Problem = "nothing of this name can be seen. Type it anew." };
        if (line.Name.Length > PersonStore.MostNameLength)
            return line with { Problem = $"a name may have {PersonStore.MostNameLength} characters; this has {line.Name.Length}." };
        if (seen.TryGetValue(AccountStore.NameKey(line.Name), out RosterLine? twin))
            return line with { Problem = Twin(line.Name, twin.Line) };
        seen[AccountStore.NameKey(line.Name)] = line;
        return line;
    }

    private static Roster Refused(string trouble) => new([], null, trouble);

    // A quote counts where it begins an entry, after RFC 4180; inside a name it is a letter like any other.
    private static bool LeavesAQuoteOpen(byte[] bytes) =>
        CsvText.TryDecode(bytes, out string text) && QuotedEntry().IsMatch(text) && text.Count(c => c == '"') % 2 != 0;

    [GeneratedRegex("(^|[,;\\t])[ ]*\"", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex QuotedEntry();

    internal static string Clean(string name) =>
        string.Join(' ', string.Concat(name.Select(c => char.IsControl(c) ? ' ' : c)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
