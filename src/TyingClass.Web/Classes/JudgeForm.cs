using System.Globalization;

namespace TyingClass.Web.Classes;

/// <summary>A judgment as it was typed; kept on the page when it could not be saved.</summary>
/// <param name="Expected">How many judgments the attempt had on the page it was typed on.</param>
public sealed record TypedJudgment(string? AttemptId, int Expected, bool? Accept, string? Reason);

/// <summary>All boxes of a page on which attempts are read: one form, so that no button loses what was typed for another.</summary>
/// <param name="Action">"accept", "return" or "comment".</param>
/// <param name="AttemptId">Which box's button was pressed.</param>
/// <param name="Reasons">By attempt.</param>
public sealed record JudgeForm(string Action, string AttemptId, IReadOnlyDictionary<string, string> Reasons, string Comment)
{
    private const string ReasonPrefix = "reason-";
    private const string ExpectedPrefix = "expected-";

    private IReadOnlyDictionary<string, int> Expected { get; init; } = new Dictionary<string, int>();

    public static JudgeForm Blank { get; } = new("", "", new Dictionary<string, string>(), "");

    public static string ReasonField(string attemptId) => ReasonPrefix + attemptId;

    public static string ExpectedField(string attemptId) => ExpectedPrefix + attemptId;

    public static JudgeForm Read(IFormCollection form)
    {
        ArgumentNullException.ThrowIfNull(form);
        string[] action = form["do"].ToString().Split(':', 2);
        return new JudgeForm(
            action[0], action.Length == 2 ? action[1] : "",
            form.Keys.Where(k => k.StartsWith(ReasonPrefix, StringComparison.Ordinal) && !k.EndsWith("-phrase", StringComparison.Ordinal))
                .ToDictionary(k => k[ReasonPrefix.Length..], k => TickedPhrases.With(form, k)),
            TickedPhrases.With(form, "comment"))
        {
            Expected = form.Keys.Where(k => k.StartsWith(ExpectedPrefix, StringComparison.Ordinal)).ToDictionary(
                k => k[ExpectedPrefix.Length..],
                k => int.TryParse(form[k], CultureInfo.InvariantCulture, out int count) ? count : -1),
        };
    }

    public string ReasonOf(string attemptId) => Reasons.GetValueOrDefault(attemptId, "");

    public TypedJudgment Judgment => new(
        AttemptId.Length == 0 ? null : AttemptId, Expected.GetValueOrDefault(AttemptId, -1),
        Action switch { "accept" => true, "return" => false, _ => null }, ReasonOf(AttemptId));

    /// <summary>The same once the button pressed has done its work.</summary>
    public JudgeForm Rest => Action == "comment" ? this with { Comment = "" } : this with { Reasons = Reasons.Where(r => r.Key != AttemptId).ToDictionary() };

    /// <summary>Nothing would be lost by opening the page anew.</summary>
    public bool IsBlank => string.IsNullOrWhiteSpace(Comment) && Reasons.Values.All(string.IsNullOrWhiteSpace);
}
