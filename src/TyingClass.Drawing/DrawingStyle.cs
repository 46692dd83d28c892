namespace TyingClass.Drawing;

/// <summary>The style sheet that the pictures' classes refer to: light, dark and print. docs/look.md lists the classes.</summary>
public static class DrawingStyle
{
    /// <summary>The text of drawing.css.</summary>
    public static string Css { get; } = Read();

    private static string Read()
    {
        using Stream stream = typeof(DrawingStyle).Assembly.GetManifestResourceStream("drawing.css")
            ?? throw new InvalidOperationException("drawing.css is not in the assembly.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
