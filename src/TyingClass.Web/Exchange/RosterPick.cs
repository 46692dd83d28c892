using System.Collections.Immutable;

namespace TyingClass.Web.Exchange;

/// <summary>What a column of a list holds.</summary>
public enum RosterColumn
{
    Unused,
    Name,

    /// <summary>A whole name, written as "Alder, Wren".</summary>
    LastThenFirst,
    First,
    Last,
    Role,
}

/// <summary>What somebody said the columns of a list hold, where its headings did not.</summary>
/// <param name="Heading">The first line is headings and names nobody.</param>
public sealed record RosterPick(bool Heading, ImmutableArray<RosterColumn> Columns)
{
    private const string Headed = "headed";

    /// <summary>As it is kept: "headed last first role".</summary>
    public string Write() => string.Join(' ', Columns.Select(c => c.ToString().ToLowerInvariant()).Prepend(Heading ? Headed : "plain"));

    /// <summary>Null for what was not written by <see cref="Write"/>.</summary>
    public static RosterPick? Read(string? text)
    {
        string[] words = (text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length < 2 || words[0] is not (Headed or "plain") ? null : Of(words[0] == Headed, words[1..]);
    }

    /// <param name="columns">Names of <see cref="RosterColumn"/>, in the order of the list.</param>
    public static RosterPick? Of(bool heading, IReadOnlyCollection<string> columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return columns.Count == 0 ? null : new RosterPick(heading,
            [.. columns.Select(c => Enum.TryParse(c, ignoreCase: true, out RosterColumn column) && Enum.IsDefined(column) ? column : RosterColumn.Unused)]);
    }

    /// <summary>The same with first and last name changed about.</summary>
    public RosterPick Turned() => this with { Columns = [.. Columns.Select(Turn)] };

    /// <summary>For whoever chooses.</summary>
    public static string Say(RosterColumn column) => column switch
    {
        RosterColumn.Name => "the whole name",
        RosterColumn.LastThenFirst => "last name, first name",
        RosterColumn.First => "first name",
        RosterColumn.Last => "last name",
        RosterColumn.Role => "role: student or mentor",
        _ => "not used",
    };

    private static RosterColumn Turn(RosterColumn column) => column switch
    {
        RosterColumn.First => RosterColumn.Last,
        RosterColumn.Last => RosterColumn.First,
        RosterColumn.Name => RosterColumn.LastThenFirst,
        RosterColumn.LastThenFirst => RosterColumn.Name,
        _ => column,
    };
}
