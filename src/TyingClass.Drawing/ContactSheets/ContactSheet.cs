using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.ContactSheets;

/// <summary>Many flies on one sheet, to be looked at: does each look like what it is, do words stay clear of one another?</summary>
public static class ContactSheet
{
    private const int Columns = 4;
    private const double CellPx = 390, GapPx = 16;

    /// <summary>Solves and draws the flies and writes <c>contact-sheet.svg</c>: side views, at the width of a phone each.</summary>
    /// <param name="folder">Made if missing; files of these names are replaced.</param>
    /// <param name="html">Also <c>contact-sheet.html</c>: side, front, hang and curves, light or dark as the reader's system is.</param>
    /// <returns>The paths written.</returns>
    public static IReadOnlyList<string> Write(string folder, bool html)
    {
        Directory.CreateDirectory(folder);
        SolvedFly[] flies = [.. SheetFlies.All.Select(r => SolvedFly.Solve(r))];
        string svg = Path.Combine(folder, "contact-sheet.svg"), page = Path.Combine(folder, "contact-sheet.html");
        File.WriteAllText(svg, Svg(flies) + "\n");
        if (!html)
            return [svg];
        File.WriteAllText(page, Html(flies));
        return [svg, page];
    }

    /// <summary>The side views as one SVG with its own light colors, four to a row.</summary>
    public static string Svg(IReadOnlyList<SolvedFly> flies)
    {
        SidePlate[] plates = [.. flies.Select((f, i) => new SidePlate(f, Options(i)))];
        double[] heights = [.. plates.Chunk(Columns).Select(row => row.Max(p => p.Window.Height * CellPx / p.Window.Width))];
        Box window = new(0, 0, Columns * (CellPx + GapPx) + GapPx, heights.Sum() + GapPx * (heights.Length + 1));
        using SvgCanvas canvas = new();
        Plate.Open(
            canvas, new DrawingOptions { IdPrefix = "sheet", WidthPx = (int)window.Width }, "sheet", window,
            $"Contact sheet of {flies.Count} flies",
            $"Side views, soaked, each at its own speed and scale: {string.Join(", ", flies.Select(f => f.Recipe.Name))}.");
        canvas.Element("rect", ("class", "fly-fill-paper"), ("width", SvgCanvas.N(window.Width)), ("height", SvgCanvas.N(window.Height)),
            ("fill", Flies.Tone.Paper.Color));
        double top = GapPx;
        for (int i = 0; i < plates.Length; i++)
        {
            double height = plates[i].Window.Height * CellPx / plates[i].Window.Width;
            canvas.Open("svg", ("x", SvgCanvas.N(GapPx + i % Columns * (CellPx + GapPx))), ("y", SvgCanvas.N(top)),
                ("width", SvgCanvas.N(CellPx)), ("height", SvgCanvas.N(height)), ("viewBox", Plate.ViewBox(plates[i].Window)));
            plates[i].DrawInside(canvas);
            canvas.Close();
            if (i % Columns == Columns - 1)
                top += heights[i / Columns] + GapPx;
        }

        canvas.Close();
        return canvas.Finish();
    }

    private static string Html(SolvedFly[] flies)
    {
        IEnumerable<string> cells = flies.SelectMany((f, i) => (string[])
        [
            FlyDrawing.Side(f, Options(i)), FlyDrawing.Front(f, Options(i, "front")), FlyDrawing.Hang(f, Options(i, "hang")),
        ]).Concat(Drawn(flies[0], 0)).Concat(Drawn(flies[^7], flies.Length));
        return $$"""
            <!DOCTYPE html>
            <html lang="en">
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width">
            <title>Contact sheet</title>
            <style>
            {{DrawingStyle.Css}}
            body { margin: 1rem; background: var(--fly-paper); display: grid; gap: 1rem; align-items: start;
              grid-template-columns: repeat(auto-fill, minmax(340px, 1fr)); }
            svg { width: 100%; }
            </style>
            {{string.Join("\n", cells)}}
            </html>

            """;
    }

    private static IEnumerable<string> Drawn(SolvedFly fly, int number) =>
    [
        Curves.PitchAgainstSpeed(fly, Options(number, "pitch")), Curves.KeelHeightAgainstSpeed(fly, Options(number, "keel")),
        Curves.Righting(fly, Options(number, "righting")),
        Curves.DepthInPause(fly, Options(number, "depth")), Curves.LeanHistogram(fly, Options(number, "lean")), Curves.Ledger(fly, Options(number, "ledger")),
    ];

    private static DrawingOptions Options(int number, string view = "side") => new() { IdPrefix = $"{view}-{number}", WidthPx = (int)CellPx };
}
