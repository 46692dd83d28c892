using System.Globalization;
using TyingClass.Recipes.Text;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Bench;

/// <summary>The bench's form as posted.</summary>
/// <param name="Was">What stood there before; null when it came unreadable.</param>
/// <param name="Form">The fields as posted; null where no form was shown.</param>
/// <param name="Text">As posted.</param>
/// <param name="Action">The button pressed, "" for none.</param>
/// <param name="Argument">What stands after its colon.</param>
/// <param name="Gesture">The field being worked on, named by the script; empty without one.</param>
/// <param name="IsLive">True when a script asks for the parts of the page that change.</param>
/// <param name="IsBrief">True when it asks for what must follow the hand: verdict, drawing, ledger. The rest comes when the hand rests.</param>
public sealed record BenchPost(
    Versions? Was, RecipeDraft? Form, string Text, Func<string, string?> Field, string? Beside,
    string Action, string Argument, string AddKind, string Gesture, bool IsLive, bool IsBrief)
{
    public const string Live = "live";

    private const string Doubt = "doubt";

    public static BenchPost Read(IFormCollection form)
    {
        ArgumentNullException.ThrowIfNull(form);
        string[] action = form["do"].ToString().Split(':', 2);
        KeyValuePair<string, string>[] fields = [.. form
            .Where(f => f.Key.StartsWith(AnswerPost.FieldPrefix, StringComparison.Ordinal))
            .Select(f => KeyValuePair.Create(f.Key[AnswerPost.FieldPrefix.Length..], f.Value.ToString()))];
        return new BenchPost(
            Versions.Unpack(form["h"]),
            fields.Length > 0 ? RecipeDraft.FromFields(fields) : null,
            RecipePaste.Read(form["text"]),
            name => form.TryGetValue(name, out Microsoft.Extensions.Primitives.StringValues value) ? value.ToString() : null,
            Packed.TryUnpack(form["k"], AnswerLimit.MostBytes, out string? beside) ? beside : null,
            action[0], action.Length == 2 ? action[1] : "",
            form["add-kind"].ToString(), form["gesture"].ToString(), form[Live].Count > 0, form[Live] == "brief" || form[Live] == Doubt);
    }

    /// <summary>True when a script asks for the one figure that takes longer than all the others, and for nothing else.</summary>
    public bool AsksDoubt => Field(Live) == Doubt;

    /// <summary>The page somebody's fly came from.</summary>
    public string? From => Field("from");

    public int Index => int.TryParse(Argument, NumberStyles.None, CultureInfo.InvariantCulture, out int index) ? index : -1;

    /// <summary>A field that holds a number, such as the time in the water.</summary>
    public double? Number(string name) =>
        double.TryParse(Field(name), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;
}
