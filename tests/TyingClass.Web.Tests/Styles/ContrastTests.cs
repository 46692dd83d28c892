using System.Globalization;
using System.Text.RegularExpressions;
using Xunit;

namespace TyingClass.Web.Tests.Styles;

/// <summary>docs/look.md states how far colors stand apart; here the style sheets are asked.</summary>
public sealed partial class ContrastTests
{
    private static readonly Dictionary<string, string> Light = Colors("src/TyingClass.Web/wwwroot/css/tokens.css", "color-scheme: light;");
    private static readonly Dictionary<string, string> Dark = Colors("src/TyingClass.Web/wwwroot/css/tokens.css", ":root[data-theme=\"dark\"] {");

    // WCAG 2.2, success criterion 1.4.3 and the definitions of contrast ratio and relative luminance: text 4.5; 1.4.11: edges and marks 3.
    [Theory]
    [InlineData("ink", 4.5), InlineData("quiet", 4.5), InlineData("river", 4.5), InlineData("thread", 4.5), InlineData("good", 4.5), InlineData("warn", 4.5),
        InlineData("bad", 4.5), InlineData("edge", 3.0)]
    public void Token_OnPaperSheetAndSunk_StandsOutAsMuchAsItMust(string name, double least)
    {
        foreach (Dictionary<string, string> theme in (Dictionary<string, string>[])[Light, Dark])
        {
            foreach (string ground in (string[])["paper", "sheet", "sunk"])
                Assert.True(Contrast(theme[name], theme[ground]) >= least, $"{name} {theme[name]} on {ground}: {Contrast(theme[name], theme[ground]):F2}");
        }
    }

    [Fact]
    public void LookDocument_PageColors_AreTheStyleSheetsAndTheirContrastIsRight()
    {
        MatchCollection rows = PageRow().Matches(Read("docs/look.md"));
        Assert.True(rows.Count >= 8, $"{rows.Count} rows of colors");
        foreach (Match row in rows)
        {
            string name = row.Groups["name"].Value;
            Assert.Equal((Light[name], Dark[name]), (row.Groups["light"].Value, row.Groups["dark"].Value));
            Same(row, "lp", Contrast(Light[name], Light["paper"]));
            Same(row, "ls", Contrast(Light[name], Light["sheet"]));
            Same(row, "dp", Contrast(Dark[name], Dark["paper"]));
            Same(row, "ds", Contrast(Dark[name], Dark["sheet"]));
        }
    }

    [Fact]
    public void LookDocument_DrawingColors_AreTheStyleSheetsAndTheirContrastIsRight()
    {
        Dictionary<string, string> light = Colors("src/TyingClass.Drawing/drawing.css", ":root {"),
            dark = Colors("src/TyingClass.Drawing/drawing.css", ":root[data-theme=\"dark\"] {");
        MatchCollection rows = DrawingRow().Matches(Read("docs/look.md"));
        Assert.True(rows.Count >= 10, $"{rows.Count} rows of colors");
        foreach (Match row in rows)
        {
            string name = row.Groups["name"].Value;
            // Ink and paper of a drawing are tied to the page's.
            (string l, string d) = name switch
            {
                "ink" => (Light["ink"], Dark["ink"]),
                "paper" => (Light["sheet"], Dark["sheet"]),
                _ => (light["fly-" + name], dark["fly-" + name])
            };
            Assert.Equal((l, d), (row.Groups["light"].Value, row.Groups["dark"].Value));
            Same(row, "ls", name == "paper" ? Contrast(l, Light["ink"]) : Contrast(l, Light["sheet"]));
            Same(row, "ds", name == "paper" ? Contrast(d, Dark["ink"]) : Contrast(d, Dark["sheet"]));
        }
    }

    private static void Same(Match row, string group, double computed) =>
        Assert.True(row.Groups[group].Value == computed.ToString("F1", CultureInfo.InvariantCulture), $"{row.Value}: {computed:F2}");

    private static double Contrast(string a, string b)
    {
        double[] sorted = [.. new[] { Luminance(a), Luminance(b) }.OrderDescending()];
        return (sorted[0] + 0.05) / (sorted[1] + 0.05);
    }

    private static double Luminance(string hex)
    {
        double Linear(int at)
        {
            double value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return 0.2126 * Linear(1) + 0.7152 * Linear(3) + 0.0722 * Linear(5);
    }

    private static Dictionary<string, string> Colors(string path, string start)
    {
        string css = Read(path);
        int from = css.IndexOf(start, StringComparison.Ordinal);
        Assert.True(from >= 0, $"{path} has no {start}");
        return Token().Matches(css[from..css.IndexOf('}', from)]).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);
    }

    private static string Read(string path)
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "TyingClass.sln"))) folder = Path.GetDirectoryName(folder);
        return File.ReadAllText(Path.Combine(folder ?? throw new InvalidOperationException("TyingClass.sln is not above the tests."), path));
    }

    [GeneratedRegex("--([a-z-]+): (#[0-9a-f]{6})")]
    private static partial Regex Token();

    [GeneratedRegex(@"^\| (?<name>[a-z]+)[^|]*\| `(?<light>#\w+)` \| (?<lp>[\d.]+) \| (?<ls>[\d.]+) \| `(?<dark>#\w+)` \| (?<dp>[\d.]+) \| (?<ds>[\d.]+) \|",
        RegexOptions.Multiline)]
    private static partial Regex PageRow();

    [GeneratedRegex(@"^\| (?<name>[a-z]+)[^|]*\| `(?<light>#\w+)` \| (?<ls>[\d.]+) \| `(?<dark>#\w+)` \| (?<ds>[\d.]+) \|\s*$", RegexOptions.Multiline)]
    private static partial Regex DrawingRow();
}
