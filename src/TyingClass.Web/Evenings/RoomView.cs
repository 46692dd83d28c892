using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Evenings;
using TyingClass.Telling.Reasons;

namespace TyingClass.Web.Evenings;

/// <param name="Share">Of all answers, 0 to 100; 0 when there is none.</param>
/// <param name="Right">True for the engine's answer, once revealed.</param>
public sealed record TallyLine(string Choice, int Count, int Share, bool Right, bool Mine);

/// <summary>A question to the room as it stands now.</summary>
/// <param name="PromptHtml">Sanitized; empty for a question about a recipe.</param>
/// <param name="Mine">The choice of whoever looks; null when they have not answered.</param>
/// <param name="Members">Students of the class.</param>
public sealed record RoomView(RoomQuestion Question, string PromptHtml, ImmutableArray<string> Recipes, RoomTally Tally, int? Mine, int Members)
{
    /// <summary>What is asked above the choices.</summary>
    public string Prompt { get; init; } = "";

    /// <summary>Why it comes out so, as the course says it; null before it is revealed, and where it gives no reason.</summary>
    public string? Because { get; init; }

    /// <summary>How its flies are drawn once it is revealed, and of which exercise; null before, and where no one picture shows it.</summary>
    public (Exercise Exercise, AskedPicture Picture)? Asked { get; init; }

    public IEnumerable<TallyLine> Lines => Question.Choices.Select((choice, i) => new TallyLine(
        choice, Tally.Counts[i], Tally.Total == 0 ? 0 : (int)Math.Round(100.0 * Tally.Counts[i] / Tally.Total), choice == Question.Answer?.Choice, i == Mine));

    /// <summary>Changes when the page around the tally would be another one.</summary>
    public string State => $"{Question.Id}{(Question.Answer is null ? "" : "/revealed")}";

    /// <summary>How many have answered, in a sentence. Mentors and deputies answer too, and are no students.</summary>
    public string Answered => Tally.Total switch
    {
        0 => "Nobody has answered yet.",
        1 when Members == 1 => "The one student of the class has answered.",
        var all when all == Members => $"All {all} have answered.",
        var more when more > Members => $"{more} have answered.",
        1 => $"1 of {Members} has answered.",
        var some => $"{some} of {Members} have answered.",
    };

    // As many letters as are taken in at a glance; the whole choice stands beside its count.
    private const int Glance = 48;

    // Letters of all choices together, from which they are set smaller on a wall.
    private const int Many = 220;

    public static bool IsWordy(IEnumerable<string> choices) => choices.Sum(c => c.Length) > Many;

    /// <summary>A choice as a heading or a sentence names it.</summary>
    public static string Short(string choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        if (choice.Length <= Glance) return choice;
        int end = choice.LastIndexOf(' ', Glance);
        return choice[..(end < 1 ? Glance : end)].TrimEnd('.', ',', ';') + " …";
    }

    /// <summary>What the room said, in a sentence.</summary>
    public string RoomSaid
    {
        get
        {
            if (Tally.Total == 0) return "Nobody has answered.";
            int most = Tally.Counts.Max();
            string[] tops = [.. Lines.Where(l => l.Count == most).Select(l => $"“{Short(l.Choice)}”")];
            if (Tally.Total == 1) return $"One has answered: {tops[0]}.";
            if (most == Tally.Total) return $"All {Tally.Total} who answered said {tops[0]}.";
            return tops.Length == 1 && most * 2 > Tally.Total ? $"Most of the room said {tops[0]}: {most} of {Tally.Total}."
                : tops.Length == 1 ? $"The commonest answer was {tops[0]}: {most} of {Tally.Total}."
                : $"The room is split between {string.Join(" and ", tops)}: {most} each of {Tally.Total}.";
        }
    }
}
