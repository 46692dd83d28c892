using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Html;
using QRCoder;

namespace TyingClass.Web.Network;

/// <summary>
/// A square code for a phone's camera. The library reckons the squares; they are drawn here as one path, sharp at any size, dark on a
/// light ground of its own in light and dark alike, since many cameras read no light code on a dark ground.
/// </summary>
public static class QrPicture
{
    // ISO/IEC 18004 asks for four squares of empty ground around the code; the library's matrix has them.
    private const QRCodeGenerator.ECCLevel Repair = QRCodeGenerator.ECCLevel.M;

    /// <param name="words">What the code does, for whoever cannot see it.</param>
    public static IHtmlContent Draw(string address, string words)
    {
        using QRCodeData code = QRCodeGenerator.GenerateQrCode(address, Repair);
        int size = code.ModuleMatrix.Count;
        StringBuilder path = new();
        for (int y = 0; y < size; y++)
        {
            for (int x = 0; x < size; x++)
            {
                int from = x;
                while (x < size && code.ModuleMatrix[y][x]) x++;
                if (x > from) path.Append(CultureInfo.InvariantCulture, $"M{from} {y}h{x - from}v1h-{x - from}z");
            }
        }

        return new HtmlContentBuilder()
            .AppendHtml(
            string.Create(CultureInfo.InvariantCulture,
                $"<svg class=\"qr\" viewBox=\"0 0 {size} {size}\" role=\"img\" shape-rendering=\"crispEdges\" aria-label=\""))
            .Append(words)
            .AppendHtml(
            string.Create(CultureInfo.InvariantCulture,
                $"\"><rect width=\"{size}\" height=\"{size}\" fill=\"#fff\"/><path d=\"{path}\" fill=\"#000\"/></svg>"));
    }
}
