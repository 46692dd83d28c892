using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Storage.Evenings;
using TyingClass.Telling.Figures;
using TyingClass.Web.Calendar;

namespace TyingClass.Web.Evenings;

/// <summary>What was typed about an evening, whatever it is.</summary>
public sealed record EveningForm(string Starts, string Plan, string Demonstrations, string Students, ImmutableArray<FlyRow> Flies, int Version)
{
    public const int MostStudents = 200;
    public const int MostFlies = 50;

    /// <summary>How an evening of two hours goes when nobody planned it otherwise. Common practice, no source.</summary>
    public const string UsualPlan = """
        | minutes | what |
        | ---: | --- |
        | 10 | Cautions of the evening. Two wrong answers from the homework that many shared, without names. |
        | 15 | Opening problem: show the two flies, take a vote, **then** put them in the water |
        | 15 | Explanation with the drawings on the wall; one worked sum at the board |
        | 35 | Tying |
        | 10 | Break. Hands washed, hooks counted, vises away from the water |
        | 20 | Tub, in pairs: predict, test, write down |
        | 10 | One exercise together, each answering alone first |
        | 5 | What we saw; homework. Hooks counted again |
        """;

    public static EveningForm Of(EveningView evening)
    {
        ArgumentNullException.ThrowIfNull(evening);
        EveningPlan plan = evening.Plan;
        return new EveningForm(
            ClassClock.Write(plan.StartsLocal),
            evening.ShownPlan,
            evening.ShownDemonstrations,
            plan.Students?.ToString(CultureInfo.InvariantCulture) ?? "",
            [.. evening.Flies.Select((f, i) => new FlyRow(i, f.Name, Halves(f.Each), Whole(f.Shown)))],
            plan.Version);
    }

    public static EveningForm Posted(IFormCollection form, EveningView evening)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(evening);
        return new EveningForm(
            form["starts"].ToString().Trim(),
            form["plan"].ToString().ReplaceLineEndings("\n"),
            form["demonstrations"].ToString().ReplaceLineEndings("\n"),
            form["students"].ToString().Trim(),
            [.. evening.Flies.Select((f, i) => new FlyRow(i, f.Name, form[$"each-{i}"].ToString().Trim(), form[$"shown-{i}"].ToString().Trim()))],
            int.TryParse(form["version"], CultureInfo.InvariantCulture, out int version) ? version : 0);
    }

    /// <summary>By field; none when all can be kept.</summary>
    public IEnumerable<(string Field, string Text)> Errors()
    {
        if (!ClassClock.TryRead(Starts, out _))
            yield return ("starts", $"“{Starts}” is not a date with a time. Write it as 2026-01-14 19:00, or leave it empty.");
        if (Plan.Length > EveningPlan.MostNoteLength) yield return ("plan", TooLong("plan", Plan));
        if (Demonstrations.Length > EveningPlan.MostNoteLength) yield return ("demonstrations", TooLong("notes", Demonstrations));
        if (Students.Length > 0 && !IsWhole(Students, MostStudents))
            yield return ("students", $"Students: write a whole number up to {MostStudents}, or leave it empty for everyone in the class.");
        foreach (FlyRow fly in Flies)
        {
            if (ReadHalves(fly.Each) is null)
                yield return (fly.EachField, $"{fly.Name}, each student ties: write a number from 0 to {MostFlies}, or 0.5 for one between two neighbors.");
            if (!IsWhole(fly.Shown, MostFlies)) yield return (fly.ShownField, $"{fly.Name}, you tie to show: write a whole number from 0 to {MostFlies}.");
        }
    }

    /// <summary>Only of a form without errors.</summary>
    public EveningPlan ToPlan(string classId, int number) => new(classId, number)
    {
        StartsLocal = ClassClock.TryRead(Starts, out DateTime? starts) ? starts : null,
        Plan = Plan,
        Demonstrations = Demonstrations,
        Students = Students.Length == 0 ? null : int.Parse(Students, CultureInfo.InvariantCulture),
        Flies = [.. Flies.Select(f => new FlyCount(f.Name, ReadHalves(f.Each) ?? 0, int.Parse(f.Shown, CultureInfo.InvariantCulture)))],
        Version = Version,
    };

    /// <summary>"1", or "0.5" for one that two neighbors tie between them.</summary>
    public static string Halves(double each) => Numbers.Write(each, 1);

    private static string TooLong(string what, string text) =>
        FormattableString.Invariant($"The {what} may hold {EveningPlan.MostNoteLength} characters; this is {text.Length}. Shorten it.");

    // Whole or a half: one that two neighbors tie between them.
    private static double? ReadHalves(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double n) && n <= MostFlies && 2 * n % 1 == 0 ? n : null;

    private static bool IsWhole(string text, int most) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n <= most;

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);
}

public sealed record FlyRow(int Index, string Name, string Each, string Shown)
{
    public string EachField => FormattableString.Invariant($"each-{Index}");

    public string ShownField => FormattableString.Invariant($"shown-{Index}");
}
