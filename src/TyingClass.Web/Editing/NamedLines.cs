namespace TyingClass.Web.Editing;

/// <summary>An answer of several named values, as graders read it: "name: value", one to a line.</summary>
internal static class NamedLines
{
    public static string Join(IEnumerable<(string Name, string Value)> values) =>
        string.Join('\n', values.Where(n => !string.IsNullOrWhiteSpace(n.Value)).Select(n => $"{n.Name}: {n.Value.ReplaceLineEndings(" ").Trim()}"));

    public static string Find(string text, string name) => text.Split('\n')
        .Where(line => line.StartsWith(name + ":", StringComparison.Ordinal))
        .Select(line => line[(name.Length + 1)..].Trim()).FirstOrDefault("");
}
