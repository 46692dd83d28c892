namespace TyingClass.Web.Editing;

/// <summary>What a tub test saw, as the grader reads it: "name: value", one to a line.</summary>
internal static class TubNotes
{
    public static string Join(IEnumerable<(string Name, string Value)> notes) =>
        string.Join('\n', notes.Where(n => !string.IsNullOrWhiteSpace(n.Value)).Select(n => $"{n.Name}: {n.Value.ReplaceLineEndings(" ").Trim()}"));

    public static string Find(string text, string name) => text.Split('\n')
        .Where(line => line.StartsWith(name + ":", StringComparison.Ordinal))
        .Select(line => line[(name.Length + 1)..].Trim()).FirstOrDefault("");
}
