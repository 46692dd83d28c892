using SkiaSharp;

namespace TyingClass.Storage.Photos;

/// <summary>
/// A photo as it was sent, made safe to keep: decoded and written anew, so that nothing but the picture is left (no place, no time, no camera).
/// </summary>
public static class PhotoReader
{
    public const int MostBytes = 6 << 20;

    /// <summary>Longest side as kept, px.</summary>
    public const int MostSidePx = 1600;

    // A small file can unfold to a picture that fills the memory.
    private const long MostPixels = 50_000_000;
    private const int JpegQuality = 82;

    // Unfolding one photo takes up to 200 MB for a moment: one at a time.
    private static readonly Lock OneAtATime = new();

    /// <param name="sent">JPEG, PNG or WebP.</param>
    /// <param name="jpeg">Upright, at most <see cref="MostSidePx"/> px, without metadata.</param>
    /// <param name="error">For the person who sent it: what is wrong and what to do.</param>
    public static bool TryRead(byte[] sent, out byte[] jpeg, out string error)
    {
        ArgumentNullException.ThrowIfNull(sent);
        lock (OneAtATime)
        {
            jpeg = [];
            error = Check(sent, out SKCodec? codec);
            using (codec)
            {
                if (error.Length > 0 || codec is null) return false;
                using SKBitmap? upright = Decode(codec);
                using SKData? encoded = upright?.Encode(SKEncodedImageFormat.Jpeg, JpegQuality);
                if (encoded is null)
                {
                    error = "This photo is damaged: it could not be read to its end. Take it anew, or send another.";
                    return false;
                }

                jpeg = encoded.ToArray();
                return true;
            }
        }
    }

    private static string Check(byte[] sent, out SKCodec? codec)
    {
        codec = null;
        if (sent.Length == 0) return "Choose a photo first.";
        if (sent.Length > MostBytes)
            return $"This photo is over {MostBytes >> 20} MB. Send a smaller one: most phones can, in the camera’s settings or when sharing.";
        codec = SKCodec.Create(new MemoryStream(sent, writable: false));
        if (codec?.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png or SKEncodedImageFormat.Webp))
            return "This is not a photo that can be read here. Send a JPEG, PNG or WebP file; a phone that takes HEIC can be set to “most compatible”, "
                + "which is JPEG.";
        return (long)codec.Info.Width * codec.Info.Height > MostPixels ? "This photo has too many pixels. Send one of at most 50 megapixels." : "";
    }

    private static SKBitmap? Decode(SKCodec codec)
    {
        // A JPEG can be read at some eighths of its size: the smallest that is still large enough. The rest is scaled below.
        int wanted = Math.Min(MostSidePx, Math.Max(codec.Info.Width, codec.Info.Height));
        SKSizeI near = Enumerable.Range(1, 8).Select(n => codec.GetScaledDimensions(n / 8f)).First(size => Math.Max(size.Width, size.Height) >= wanted);
        using SKBitmap raw = new(new SKImageInfo(near.Width, near.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (codec.GetPixels(raw.Info, raw.GetPixels()) != SKCodecResult.Success) return null;
        float scale = Math.Min(1f, (float)MostSidePx / Math.Max(raw.Width, raw.Height));
        int width = Math.Max(1, (int)MathF.Round(raw.Width * scale)), height = Math.Max(1, (int)MathF.Round(raw.Height * scale));
        bool lying = codec.EncodedOrigin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        SKBitmap upright = new(lying ? height : width, lying ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using SKCanvas canvas = new(upright);
        canvas.Clear(SKColors.White);
        canvas.SetMatrix(Turn(codec.EncodedOrigin, width, height));
        using SKImage image = SKImage.FromBitmap(raw);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return upright;
    }

    // Exif orientation, which is lost with the rest of the metadata, as x' = ax + by + tx (Exif 2.32, tag 274).
    private static SKMatrix Turn(SKEncodedOrigin origin, float w, float h) => origin switch
    {
        SKEncodedOrigin.TopRight => Matrix(-1, 0, w, 0, 1, 0),
        SKEncodedOrigin.BottomRight => Matrix(-1, 0, w, 0, -1, h),
        SKEncodedOrigin.BottomLeft => Matrix(1, 0, 0, 0, -1, h),
        SKEncodedOrigin.LeftTop => Matrix(0, 1, 0, 1, 0, 0),
        SKEncodedOrigin.RightTop => Matrix(0, -1, h, 1, 0, 0),
        SKEncodedOrigin.RightBottom => Matrix(0, -1, h, -1, 0, w),
        SKEncodedOrigin.LeftBottom => Matrix(0, 1, 0, -1, 0, w),
        _ => SKMatrix.Identity,
    };

    private static SKMatrix Matrix(float a, float b, float tx, float c, float d, float ty) => new(a, b, tx, c, d, ty, 0, 0, 1);
}
