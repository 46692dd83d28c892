using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Plates;

/// <summary>Finds places for the words of a film strip where they stand on no fly, no line and no other word.</summary>
/// <param name="within">Words stay inside, mm.</param>
/// <param name="letterMm">Height of the letters.</param>
/// <param name="levelsMm">Where the page is ruled across: words beside a fly had better not stand on a line, and may.</param>
internal sealed class FilmWords(Box within, double letterMm, IReadOnlyList<double> levelsMm)
{
    private const int Ways = 16, Rings = 9;

    private readonly List<(Point A, Point B)> _strokes = [];
    private readonly List<Box> _words = [];

    public void KeepOff(IEnumerable<IReadOnlyList<Point>> outlines)
    {
        foreach (IReadOnlyList<Point> outline in outlines)
        {
            for (int i = 0; i < outline.Count; i++) _strokes.Add((outline[Math.Max(0, i - 1)], outline[i]));
        }
    }

    /// <summary>The nearest free place beside a fly; where its words are to stand, in the middle of their line's foot.</summary>
    public Point Beside(string words, Box fly)
    {
        double wide = TextSize.WidthEm(words) * letterMm + 0.3 * letterMm, high = 1.05 * letterMm;
        (Box Box, double Cost) best = (default, double.MaxValue);
        for (int ring = 0; ring < Rings; ring++)
        {
            for (int way = 0; way < Ways; way++)
            {
                double turn = -Math.PI / 2 + 2 * Math.PI * way / Ways, out1 = 0.35 * letterMm * ring;
                Point toward = new(Math.Cos(turn), Math.Sin(turn));
                Point center = fly.Center + new Point(
                    toward.X * (fly.Width / 2 * Inside(ring) + wide / 2 + out1), toward.Y * (fly.Height / 2 * Inside(ring) + high / 2 + out1));
                Box box = Box.Around(center, wide, high);
                double cost = 100 * Met(box) + 4 * levelsMm.Count(y => y > box.Top && y < box.Bottom) + ring + 0.05 * way;
                if (cost < best.Cost) best = (box, cost);
            }

            // The next ring costs more than this at best.
            if (best.Cost <= ring + 1) break;
        }

        _words.Add(best.Box);
        return new Point(best.Box.Center.X, best.Box.Bottom - 0.28 * letterMm);
    }

    /// <summary>Above or below its line, at the left if it can be, at the right, or in between; null where there is no room.</summary>
    public Point? AtMargin(string words, double y)
    {
        double wide = TextSize.WidthEm(words) * letterMm, left = within.Left + 0.3 * letterMm, right = within.Right - 0.3 * letterMm - wide;
        foreach (double share in (ReadOnlySpan<double>)[0, 1, 0.15, 0.85, 0.3, 0.7, 0.45, 0.55])
        {
            foreach (double foot in (ReadOnlySpan<double>)[y - 0.25 * letterMm, y + letterMm])
            {
                double x = left + share * (right - left);
                Box box = new(x, foot - 0.9 * letterMm, x + wide, foot + 0.25 * letterMm);
                if (Met(box) > 0) continue;
                _words.Add(box);
                return new Point(x, foot);
            }
        }

        return null;
    }

    // A fly that lies aslant leaves the corners of its frame free: the first rings look there.
    private static double Inside(int ring) => ring switch { 0 => 0.3, 1 => 0.6, _ => 1 };

    private int Met(Box box) => (within.Holds(box) ? 0 : 20) + _words.Count(w => w.Meets(box)) * 5 + _strokes.Count(s => box.Meets(s.A, s.B));
}
