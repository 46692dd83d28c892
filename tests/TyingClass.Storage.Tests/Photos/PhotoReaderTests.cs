using System.Text;
using SkiaSharp;
using TyingClass.Storage.Photos;
using Xunit;

namespace TyingClass.Storage.Tests.Photos;

public sealed class PhotoReaderTests
{
    private const string Place = "51.4779 N 0.0015 W";

    [Fact]
    public void TryRead_WithExif_KeepsThePictureAndNothingElse()
    {
        byte[] sent = WithExif(RedLeftBlueRight(80, 40), orientation: 1);
        Assert.Contains(Place, Encoding.ASCII.GetString(sent), StringComparison.Ordinal);
        Assert.True(PhotoReader.TryRead(sent, out byte[] jpeg, out _));
        Assert.DoesNotContain(Place, Encoding.ASCII.GetString(jpeg), StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", Encoding.ASCII.GetString(jpeg), StringComparison.Ordinal);
        using SKBitmap kept = SKBitmap.Decode(jpeg);
        Assert.Equal((80, 40), (kept.Width, kept.Height));
        Assert.True(IsRed(kept.GetPixel(10, 20)) && !IsRed(kept.GetPixel(70, 20)));
    }

    // Exif 2.32, tag 274. 6: the 0th column is the visual top. 8: the 0th column is the visual bottom. 3: both the other way about. 2: mirrored.
    [Theory]
    [InlineData(6, 40, 80, 20, 10)]
    [InlineData(8, 40, 80, 20, 70)]
    [InlineData(3, 80, 40, 70, 20)]
    [InlineData(2, 80, 40, 70, 20)]
    public void TryRead_TurnedByItsOrientation_StandsUpright(int orientation, int width, int height, int redX, int redY)
    {
        Assert.True(PhotoReader.TryRead(WithExif(RedLeftBlueRight(80, 40), orientation), out byte[] jpeg, out _));
        using SKBitmap kept = SKBitmap.Decode(jpeg);
        Assert.Equal((width, height), (kept.Width, kept.Height));
        Assert.True(IsRed(kept.GetPixel(redX, redY)));
        Assert.False(IsRed(kept.GetPixel(width - redX - 1, height - redY - 1)));
    }

    [Theory]
    [InlineData(3000, 1200, 1600, 640)]
    [InlineData(900, 3200, 450, 1600)]
    public void TryRead_Large_IsMadeSmaller(int width, int height, int keptWidth, int keptHeight)
    {
        Assert.True(PhotoReader.TryRead(RedLeftBlueRight(width, height), out byte[] jpeg, out _));
        using SKBitmap kept = SKBitmap.Decode(jpeg);
        Assert.Equal((keptWidth, keptHeight), (kept.Width, kept.Height));
    }

    [Theory]
    [InlineData("")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>")]
    [InlineData("GIF89a not really")]
    public void TryRead_NoPhoto_SaysWhatToDo(string sent)
    {
        Assert.False(PhotoReader.TryRead(Encoding.UTF8.GetBytes(sent), out byte[] jpeg, out string error));
        Assert.Empty(jpeg);
        Assert.NotEmpty(error);
    }

    [Fact]
    public void TryRead_OverTheLimit_IsRefusedUnread()
    {
        Assert.False(PhotoReader.TryRead(new byte[PhotoReader.MostBytes + 1], out _, out string error));
        Assert.Contains("6 MB", error, StringComparison.Ordinal);
    }

    // The decoder is not ours and works on bare memory: what it is handed by a stranger must end in a picture or in words.
    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg), InlineData(SKEncodedImageFormat.Png), InlineData(SKEncodedImageFormat.Webp)]
    public void TryRead_Mangled_IsAPictureOrRefusedInWords(SKEncodedImageFormat format)
    {
        Random random = new(19);
        byte[] whole = Encoded(format);
        int read = 0, refused = 0;
        for (int i = 0; i < 200; i++)
        {
            byte[] mangled = whole[..(random.Next(3) == 0 ? random.Next(1, whole.Length) : whole.Length)];
            for (int k = random.Next(1, 8); k > 0; k--)
            {
                // Half of them in the head, where sizes and kinds stand.
                int within = random.Next(2) == 0 ? Math.Min(64, mangled.Length) : mangled.Length;
                mangled[random.Next(within)] = (byte)random.Next(256);
            }

            if (PhotoReader.TryRead(mangled, out byte[] jpeg, out string error))
            {
                using SKBitmap kept = SKBitmap.Decode(jpeg);
                Assert.InRange(Math.Max(kept.Width, kept.Height), 1, PhotoReader.MostSidePx);
                read++;
            }
            else
            {
                Assert.NotEmpty(error);
                Assert.Empty(jpeg);
                refused++;
            }
        }

        Assert.True(read > 0 && refused > 0, $"{read} read, {refused} refused: one of the two was not tried.");
    }

    private static byte[] Encoded(SKEncodedImageFormat format)
    {
        using SKBitmap picture = SKBitmap.Decode(RedLeftBlueRight(80, 40));
        using SKData data = picture.Encode(format, 90);
        return data.ToArray();
    }

    private static bool IsRed(SKColor color) => color.Red > 180 && color.Blue < 90;

    private static byte[] RedLeftBlueRight(int width, int height)
    {
        using SKBitmap bitmap = new(width, height);
        using SKCanvas canvas = new(bitmap);
        canvas.Clear(SKColors.Blue);
        using SKPaint red = new() { Color = SKColors.Red };
        canvas.DrawRect(0, 0, width / 2f, height, red);
        canvas.Flush();
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);
        return data.ToArray();
    }

    // A big-endian TIFF header with two entries, orientation (274) and image description (270), right after the start of the image.
    private static byte[] WithExif(byte[] jpeg, int orientation)
    {
        byte[] text = Encoding.ASCII.GetBytes(Place + "\0");
        byte[] exif =
        [
            .. "Exif\0\0MM\0*"u8, 0, 0, 0, 8, 0, 2,
            0x01, 0x0E, 0, 2, 0, 0, 0, (byte)text.Length, 0, 0, 0, 38,
            0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0,
            0, 0, 0, 0, .. text,
        ];
        int length = exif.Length + 2;
        return [jpeg[0], jpeg[1], 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. exif, .. jpeg[2..]];
    }
}
