using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TyingClass.Drawing.Tests.Support;

/// <summary>An SVG read back: what a test may say of a picture, it says of the text that a browser would get.</summary>
internal sealed partial class Picture
{
    public Picture(string svg) => Root = XDocument.Parse(svg).Root!;

    public XElement Root { get; }

    public string Title => Element("title").Value;

    public string Description => Element("desc").Value;

    public (double Left, double Top, double Width, double Height) ViewBox
    {
        get
        {
            double[] v = [.. ((string)Root.Attribute("viewBox")!).Split(' ').Select(Number)];
            return (v[0], v[1], v[2], v[3]);
        }
    }

    public IEnumerable<string> Labels => Root.Descendants().Where(e => e.Attribute("data-label") is not null).Select(e => e.Value);

    public static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    public static double Number(XElement element, string attribute) => Number((string)element.Attribute(attribute)!);

    public XElement Element(string name) => Root.Elements().Single(e => e.Name.LocalName == name);

    public IEnumerable<XElement> All(string name) => Root.Descendants().Where(e => e.Name.LocalName == name);

    public bool Has(string mark) => Root.Descendants().Any(e => (string?)e.Attribute("data-mark") == mark);

    public XElement Marked(string mark) => Root.Descendants().Single(e => (string?)e.Attribute("data-mark") == mark);

    /// <summary>Where a mark stands, mm from the tow point, y down.</summary>
    public (double X, double Y) Mark(string name)
    {
        Match at = Translation().Match((string)Marked(name).Attribute("transform")!);
        return (Number(at.Groups[1].Value), Number(at.Groups[2].Value));
    }

    public static (double X1, double Y1, double X2, double Y2) Line(XElement line) =>
        (Number(line, "x1"), Number(line, "y1"), Number(line, "x2"), Number(line, "y2"));

    /// <summary>The first stroke of each piece of the hook: shank, bend, spear, ring in whatever order they are laid down.</summary>
    public IEnumerable<IReadOnlyList<(double X, double Y)>> HookWires() => Root.Descendants()
        .Where(e => (string?)e.Attribute("data-part") == "hook")
        .Select(g =>
        Path((string)g.Elements().Last(e => ((string?)e.Attribute("class"))?.Contains("fly-wire", StringComparison.Ordinal) == true).Attribute("d")!));

    /// <summary>The corner points of a path of M, l, c and z.</summary>
    public static IReadOnlyList<(double X, double Y)> Path(string d)
    {
        List<(double X, double Y)> points = [];
        foreach (Match step in Steps().Matches(d))
        {
            double[] v = [.. Numbers().Matches(step.Groups[2].Value).Select(m => Number(m.Value))];
            (double x, double y) = points.Count > 0 ? points[^1] : (0, 0);
            if (step.Groups[1].Value == "M")
                points.Add((v[0], v[1]));
            else if (v.Length >= 2)
                points.Add((x + v[^2], y + v[^1]));
        }

        return points;
    }

    [GeneratedRegex(@"translate\((\S+) (\S+)\)")]
    private static partial Regex Translation();

    [GeneratedRegex("([Mlcz])([^Mlcz]*)")]
    private static partial Regex Steps();

    [GeneratedRegex(@"-?(\d+(\.\d+)?|\.\d+)")]
    private static partial Regex Numbers();
}
