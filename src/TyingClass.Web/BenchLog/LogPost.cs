using TyingClass.Web.Editing;

namespace TyingClass.Web.BenchLog;

/// <summary>An observation as it was typed, right or wrong.</summary>
/// <param name="Fly">"pattern:ID:REVISION", "exercise:ID" or "text".</param>
public sealed record LogPost(string Fly, string Recipe, string Hang, string Way, string Mass, string SinkTime, string SinkDepth, string State, string Water,
    string Note)
{
    public string Hop { get; init; } = "";

    public string NoseDown { get; init; } = "";

    public static LogPost Empty { get; } = new("text", "", "", "", "", "", "", "soaked", "", "");

    public static LogPost Read(IFormCollection form)
    {
        ArgumentNullException.ThrowIfNull(form);
        string Get(string name) => form[name].ToString().Trim();
        return new LogPost(
            Get("fly"), RecipePaste.Read(form["recipe"]), Get("hang"), Get("way"), Get("mass"),
            Get("sink-time"), Get("sink-depth"), Get("state"), Get("water"), form["note"].ToString())
        {
            Hop = Get("hop"),
            NoseDown = Get("nose-down"),
        };
    }
}
