namespace TyingClass.Web.Bench;

/// <summary>What lies on an empty bench.</summary>
internal static class BenchStart
{
    public const string Text = """
        recipe: Copper Loach
        intent: point up
        hook:
          size: 6
          shank: 4XL
          eye: down 25°
        parts:
          - part: dumbbell eyes
            material: brass
            size: 4 mm
            at: 3 mm
            side: top
          - part: wraps
            material: lead-free wire
            diameter: 0.6 mm
            turns: 14
            at: 8 mm
          - part: body
            material: fur dubbing
            diameter: 5 mm
            at: 8 mm
            to: 23 mm
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
