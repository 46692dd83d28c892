using System.Collections.Immutable;
using System.Text;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Storage.Starts;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Exchange;

/// <summary>A list as it was typed, pasted or read from a file, and how its columns are meant.</summary>
/// <param name="LastNameFirst">Of lists begun before one could say what each column holds.</param>
/// <param name="Pick">Null while nobody said.</param>
public sealed record NamesTyped(string Text, bool LastNameFirst, RosterPick? Pick);

/// <summary>Adds the people of a list to the class that is open: looked at first, then all of them at once or nobody.</summary>
public sealed class NamesDesk(
    ClassStartStore starts, AccountStore accounts, ClassAccess access, Visitor visitor, AccountSignIn account, PassphraseSlips slips)
{
    private const int MostBytes = 1 << 20;

    public ClassRoom? Room => access.Current;

    /// <summary>What was typed here and not added yet, from whatever browser.</summary>
    public NamesTyped Kept => Room is { } room && starts.Of(room.Id) is var start
        ? new NamesTyped(start.Names, start.LastNameFirst, RosterPick.Read(start.Columns))
        : new NamesTyped("", false, null);

    /// <summary>Keeps what was typed and says what each line becomes. Adds nobody.</summary>
    public Roster Look(NamesTyped typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (Room is not { } room) return new Roster([], null, "You have no class yet. Make one under Setup first.");
        starts.KeepNames(room.Id, typed.Text, typed.LastNameFirst, typed.Pick?.Write() ?? "");
        return Read(typed);
    }

    /// <summary>What each line becomes; keeps nothing.</summary>
    public Roster Read(NamesTyped typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (Encoding.UTF8.GetByteCount(typed.Text) > MostBytes) return TooLarge;
        Roster roster = RosterCsv.Read(Encoding.UTF8.GetBytes(typed.Text), typed.LastNameFirst, typed.Pick);
        return roster with { All = [.. roster.All.Select(l => l.Problem is null && accounts.NameIsTaken(l.Name) ? Taken(l) : l)] };
    }

    /// <summary>As <see cref="Look"/>, and adds everyone when nothing is wrong.</summary>
    /// <returns>The ticket of the slips; null when nobody was added, and the list says why.</returns>
    public (string? Ticket, Roster Roster) Add(NamesTyped typed)
    {
        Roster roster = Look(typed);
        if (Room is not { } room || !roster.MayBeAdded) return (null, roster);
        // Hashing is slow on purpose: before the store is locked.
        (RosterLine Line, string Passphrase, string Hash)[] made =
            [.. roster.All.AsParallel().AsOrdered().Select(l => (l, HandedPassphrase.New())).Select(p => (p.l, p.Item2, account.Hash(p.Item2)))];
        string? ticket = null;
        AddedPeople outcome = accounts.AddAll(room.Id, [.. made.Select(m => new NewPerson(m.Line.Name, m.Line.Role, m.Hash))], added =>
        {
            SlipSheet sheet = new($"New in {room.Name}", [.. added.Zip(made, (p, m) => new Slip(p.Label, m.Passphrase))]);
            SealedSlips kept = slips.Seal(visitor.Person!.Id, sheet);
            ticket = kept.Ticket;
            return kept;
        });
        if (!outcome.Refused.IsEmpty) return (null, Refused(roster, outcome.Refused));
        starts.KeepNames(room.Id, "", lastNameFirst: false, "");
        return (outcome.Added.IsEmpty ? null : ticket, roster);
    }

    /// <summary>Text of a file.</summary>
    /// <returns>What is wrong with it, when it cannot be a list of names.</returns>
    public static (string Text, Roster? Wrong) Decode(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Length > MostBytes) return ("", TooLarge);
        return CsvText.TryDecode(file, out string text) ? (text, null) : ("", RosterCsv.Read(file));
    }

    private static Roster TooLarge => new([], null, "This list is larger than 1 MB: it is no list of names. Nobody was added.");

    private static RosterLine Taken(RosterLine line) =>
        line with { Problem = $"someone on this server is called “{line.Name}” already. Take the line out, or add something to the name." };

    // Someone joined between the look and the press of the button.
    private static Roster Refused(Roster roster, ImmutableArray<RefusedPerson> refused) => roster with
    {
        All = [.. roster.All.Select((line, i) => refused.FirstOrDefault(r => r.Index == i) is not { } no ? line
            : no.TwinIndex is { } twin ? line with { Problem = RosterCsv.Twin(line.Name, roster.All[twin].Line) }
            : no.Problem == JoinProblem.NoName ? line with { Problem = "the name is missing." }
            : no.Problem == JoinProblem.NoSuchClass ? line with { Problem = "the class is gone." }
            : Taken(line))],
    };
}
