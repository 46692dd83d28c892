namespace TyingClass.Web.Bench;

/// <summary>What lies on an empty bench: a fly that rides as it is, and flips with eyes half the size.</summary>
internal static class BenchStart
{
    public const string Text = """
        recipe: Mill Loach
        intent: point up
        hook:
          size: 4
          shank: 3XL
          wire: 1XH
          eye: down 30°
        parts:
          - part: dumbbell eyes
            material: brass
            size: 3 mm
            at: 3 mm
            side: top
          - part: body
            material: fur dubbing
            diameter: 5 mm
            at: 8 mm
            to: 22 mm
          - part: wing
            material: fur strip
            length: 40 mm
            at: 7 mm
            side: under
        fishing:
          leader: 0.25 mm fluorocarbon
          knot: loop
          water: fresh 12 °C
          speed: 0.4 m/s

        """;
}
