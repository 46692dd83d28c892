using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TyingClass.Web.Network;
using Xunit;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace TyingClass.Web.Tests.Network;

/// <summary>The drawn code, read back by another library than the one that made it.</summary>
public sealed partial class QrPictureTests
{
    private const int Scale = 4;

    [Theory]
    [InlineData("http://192.168.1.20:5080/join?code=reed-copper-lantern")]
    [InlineData("http://127.0.0.2:41234/tonight")]
    [InlineData("https://class.example/sign-in?name=Old%20Heron%20%C3%A9")]
    public void Draw_Address_IsReadBackAsItWas(string address) => Assert.Equal(address, Read(Svg(address)));

    [Fact]
    public void Draw_Words_AreForWhoeverCannotSeeIt()
    {
        IElement svg = Svg("http://a", "Join “Trout & Co”");
        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Equal("Join “Trout & Co”", svg.GetAttribute("aria-label"));
    }

    // ISO/IEC 18004 asks for a quiet zone four modules wide; from memory.
    [Fact]
    public void Draw_Border_IsFourSquaresOfLightGround()
    {
        IElement svg = Svg("http://127.0.0.2:41234/tonight");
        bool[,] dark = Squares(svg);
        int size = dark.GetLength(0);
        Assert.All(Enumerable.Range(0, size),
            i => Assert.All(Enumerable.Range(0, 4), j => Assert.False(dark[i, j] || dark[j, i] || dark[i, size - 1 - j] || dark[size - 1 - j, i])));
        Assert.Equal("#fff", svg.QuerySelector("rect")!.GetAttribute("fill"));
    }

    internal static string? Read(IElement svg)
    {
        bool[,] dark = Squares(svg);
        int size = dark.GetLength(0) * Scale;
        byte[] gray = new byte[size * size];
        for (int y = 0; y < size; y++)
            for (int x = 0; x < size; x++) gray[(y * size) + x] = dark[y / Scale, x / Scale] ? (byte)0 : (byte)255;
        RGBLuminanceSource source = new(gray, size, size, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text;
    }

    private static bool[,] Squares(IElement svg)
    {
        int size = int.Parse(svg.GetAttribute("viewBox")!.Split(' ')[2], CultureInfo.InvariantCulture);
        bool[,] dark = new bool[size, size];
        foreach (Match run in Run().Matches(svg.QuerySelector("path")!.GetAttribute("d")!))
        {
            int x = Number(run, 1), y = Number(run, 2), length = Number(run, 3);
            for (int i = 0; i < length; i++) dark[y, x + i] = true;
        }

        return dark;
    }

    private static int Number(Match run, int group) => int.Parse(run.Groups[group].Value, CultureInfo.InvariantCulture);

    private static IElement Svg(string address, string words = "code")
    {
        using StringWriter html = new();
        QrPicture.Draw(address, words).WriteTo(html, System.Text.Encodings.Web.HtmlEncoder.Default);
        return new HtmlParser().ParseDocument(html.ToString()).QuerySelector("svg")!;
    }

    [GeneratedRegex(@"M(\d+) (\d+)h(\d+)v1h-\d+z")]
    private static partial Regex Run();
}
